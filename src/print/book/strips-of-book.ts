import { vec } from '../../geometry/index.ts';
import { GRAPHITE, PALE, THIN } from '../page/ink.ts';
import { linesWithin, polyline, words, wordsWithin } from '../page/items.ts';
import type { BookBlock, BookChapter, ShopBook } from './api.ts';
import { setBlock } from './set-block.ts';
import type { Strip } from './strip.ts';

/** Over the text of a chapter, mm. */
export const CHAPTER_TITLE = 16;
/** Over a chapter that begins within a page, mm. */
const BEFORE_CHAPTER = 7;
const LEADING = 5.4;
/** So many lines are kept together with what they speak of. */
const SHORT = 4;

/** What pages are filled with, in order. */
export type BookStep =
  | { readonly kind: 'strip'; readonly strip: Strip }
  /** A page of its own. */
  | { readonly kind: 'plate'; readonly plate: Extract<BookBlock, { kind: 'plate' }> }
  /** Where a chapter begins: with what comes next. */
  | { readonly kind: 'chapter'; readonly title: string; readonly newPage: boolean };

/** Page numbers of chapters, known once all pages are filled. */
export type PageOfChapter = (title: string) => number | undefined;

/** The whole book as steps: its opening, then every chapter, the ones of plates alone without a title over them. */
export function stepsOfBook(
  book: ShopBook,
  width: number,
  height: number,
  pageOf: PageOfChapter,
): readonly BookStep[] {
  const strips = (all: readonly Strip[]): readonly BookStep[] =>
    all.map((strip) => ({ kind: 'strip', strip }));
  const opening = (book.opening ?? []).flatMap((block) =>
    block.kind === 'contents' ? contentsStrips(book, width, pageOf) : setBlock(block, width, height),
  );
  return [
    ...strips([openingStrip(book, width), ...opening]),
    ...book.chapters.flatMap((chapter): readonly BookStep[] => [
      { kind: 'chapter', title: chapter.title, newPage: chapter.newPage },
      ...(chapter.blocks[0]?.kind === 'plate' ? [] : strips([titleStrip(chapter.title, width)])),
      ...stepsOfChapter(chapter, width, height),
    ]),
  ];
}

function stepsOfChapter({ blocks }: BookChapter, width: number, height: number): readonly BookStep[] {
  return blocks.flatMap((block, at): readonly BookStep[] => {
    if (block.kind === 'plate') return [{ kind: 'plate', plate: block }];
    const own = setBlock(block, width, height - CHAPTER_TITLE);
    // What is said right before a drawing is said of it, as a few lines are before a table; what a chapter says first would look lost alone.
    const next = blocks[at + 1]?.kind;
    const isShort = own.length <= SHORT;
    const stays =
      block.kind === 'text' &&
      (next === 'drawing' || (isShort && (next === 'table' || (at === 0 && next === 'heading'))));
    return own.map((strip) => ({ kind: 'strip', strip: stays ? { ...strip, staysWithNext: true } : strip }));
  });
}

function titleStrip(title: string, width: number): Strip {
  return {
    height: CHAPTER_TITLE,
    above: BEFORE_CHAPTER,
    staysWithNext: true,
    draw: ({ x, y }) => ({
      items: [
        words(title, vec(x, y - 7), { height: 5, weight: 'semibold' }),
        polyline([vec(x, y - 10.5), vec(x + width, y - 10.5)], THIN, GRAPHITE),
      ],
    }),
  };
}

/** The book's own title, above everything. */
function openingStrip(book: ShopBook, width: number): Strip {
  const lines = linesWithin(book.about, width, 2.5, 'regular');
  return {
    height: 18 + 4.6 * lines.length,
    staysWithNext: true,
    draw: ({ x, y }) => ({
      items: [
        wordsWithin(book.title, vec(x, y - 8), width, { height: 7, weight: 'semibold' }),
        ...lines.map((line, at) => words(line, vec(x, y - 15 - 4.6 * at))),
      ],
    }),
  };
}

/** A line for each chapter, its page at the end. */
function contentsStrips({ chapters }: ShopBook, width: number, pageOf: PageOfChapter): readonly Strip[] {
  return chapters.map(
    ({ title }, at): Strip => ({
      height: LEADING,
      staysWithNext: at < chapters.length - 1,
      draw: ({ x, y }) => ({
        items: [
          words(title, vec(x, y - 3.6), {}),
          polyline([vec(x + 62, y - 3.6), vec(x + width - 12, y - 3.6)], THIN, PALE),
          words(`${pageOf(title) ?? ''}`, vec(x + width, y - 3.6), { align: 'right' }),
        ],
      }),
    }),
  );
}
