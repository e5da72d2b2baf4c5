import { shopBookOf } from '../../../design/index.ts';
import { type ScreenScene, sceneForScreen } from '../../../drawing/index.ts';
import type { BookBlock, BookChapter } from '../../../print/index.ts';
import type { Answering } from './answering.ts';

/** A block of the shop book with its drawing ready for the screen. */
export type ScreenBlock =
  | Exclude<BookBlock, { readonly kind: 'drawing' | 'plate' }>
  | { readonly kind: 'drawing' | 'plate'; readonly scene: ScreenScene; readonly caption?: string };

export interface ScreenBook {
  readonly title: string;
  readonly about: string;
  readonly chapters: readonly (Omit<BookChapter, 'blocks'> & { readonly blocks: readonly ScreenBlock[] })[];
}

/** The shop book as it is printed, chapter by chapter; nothing for parts that belong to no base. */
export function book({ computed }: Answering, _: undefined): ScreenBook | 'parts alone' | undefined {
  if (computed === undefined) return undefined;
  if (computed.base === undefined) return 'parts alone';
  const { title, about, chapters } = shopBookOf(computed);
  return {
    title,
    about,
    chapters: chapters.map((chapter) => ({ ...chapter, blocks: chapter.blocks.map(blockForScreen) })),
  };
}

/** A block with its drawing ready for the screen. */
export function blockForScreen(block: BookBlock): ScreenBlock {
  return block.kind === 'drawing' || block.kind === 'plate'
    ? { ...block, scene: sceneForScreen(block.scene) }
    : block;
}
