import type { Scene } from '../../drawing/index.ts';

/** A column of a table: its head, how its cells stand, and its share of the width (1 when absent). */
export interface BookColumn {
  readonly head: string;
  readonly align?: 'left' | 'right';
  readonly share?: number;
}

/** What a chapter of the shop book is made of, in the order in which it is read. */
export type BookBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly numbered: boolean }
  /** A cell of several lines has line breaks in it. A row whose first cell is the only one spans the table. */
  | {
      readonly kind: 'table';
      readonly columns: readonly BookColumn[];
      readonly rows: readonly (readonly string[])[];
    }
  /** A drawing whose millimetres are the paper's; drawn smaller only where it is larger than the page. */
  | { readonly kind: 'drawing'; readonly scene: Scene; readonly caption?: string }
  /** A drawing on a sheet of its own, frame and all: its box is the paper, which may lie on its long side. */
  | { readonly kind: 'plate'; readonly name: string; readonly scene: Scene }
  /** Every chapter with the page that it begins on. */
  | { readonly kind: 'contents' }
  /** A design's link as square codes, with words of what they are. */
  | { readonly kind: 'link'; readonly link: string; readonly design: string }
  /** Lines to write on. */
  | { readonly kind: 'room'; readonly lines: number };

export interface BookChapter {
  readonly title: string;
  readonly blocks: readonly BookBlock[];
  /** Begins on a page of its own. */
  readonly newPage: boolean;
}

/** The printed set that a base is built from, in the order of work. */
export interface ShopBook {
  readonly title: string;
  readonly about: string;
  /** Under the title, before the first chapter: a picture, the contents. */
  readonly opening?: readonly BookBlock[];
  readonly chapters: readonly BookChapter[];
}

/** A drawing as it lies on a page: SVG in the paper's millimetres, its upper left corner (mm, y up). */
export interface PagePicture {
  readonly svg: string;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}
