import type { BoardPicturePlan, TruePhotograph } from '../../wood/index.ts';

/** What the page asks of the worker that decodes photographs; every ask is answered once. */
export type PhotoAsk =
  /** How large is it? Also says whether it can be read at all. */
  | { readonly kind: 'measure'; readonly photo: PhotoFile }
  /** One tile of one level, as the tile plan has it. */
  | {
      readonly kind: 'tile';
      readonly photo: PhotoFile;
      readonly level: number;
      readonly column: number;
      readonly row: number;
    }
  /** The photograph as a picture of its board, at most so many pixels. */
  | {
      readonly kind: 'lay';
      readonly photo: PhotoFile;
      readonly laid: TruePhotograph;
      readonly size: { readonly length: number; readonly width: number };
      readonly most?: number;
    };

export interface PhotoFile {
  /** The same for the same file: what was decoded last stays at hand. */
  readonly key: string;
  readonly blob: Blob;
}

/** A photograph true on its board: the picture in full and its halves. */
export interface BoardPicture {
  readonly plan: BoardPicturePlan;
  readonly levels: readonly ImageBitmap[];
}

export interface PhotoAnswers {
  readonly measure: { readonly width: number; readonly height: number };
  readonly tile: ImageBitmap;
  /** Undefined where the board is not on the photograph. */
  readonly lay: BoardPicture | undefined;
}

export type ToPhotoWorker = PhotoAsk & { readonly id: number };
export type FromPhotoWorker =
  | { readonly id: number; readonly answer: PhotoAnswers[keyof PhotoAnswers] }
  | { readonly id: number; readonly fault: string };
