import { vec } from '../../geometry/index.ts';
import type { Paper, PrintMeta } from '../api.ts';
import { firstLayout } from '../first-page/first-layout.ts';
import { GRAPHITE, HAIR, PALE, type Page, type PageItem, THIN } from '../page/ink.ts';
import { linesWithin, polyline, words, wordsWithin } from '../page/items.ts';
import type { BookChapter, PagePicture, ShopBook } from './api.ts';
import { setBlock } from './set-block.ts';
import type { Strip } from './strip.ts';

/** A page of the book with the drawings on it. */
export interface BookPage extends Page {
  readonly pictures: readonly PagePicture[];
}

/** mm: at the left room for a hole punch, as ISO 5457 leaves; a title block of ISO 7200 fits between them on A4. */
const MARGINS = { left: 20, right: 10, top: 20, bottom: 16 } as const;
const TITLE_HEIGHT = 16;

/** What a drawing can take of a page under the title of its chapter, mm. */
export function bookRoom(paper: Paper): { readonly width: number; readonly height: number } {
  const { box } = bookPage(paper);
  return { width: box.maxX - box.minX, height: box.maxY - box.minY - TITLE_HEIGHT };
}

interface Filled {
  readonly chapter: string;
  readonly items: PageItem[];
  readonly pictures: PagePicture[];
  left: number;
}

/**
 * The book laid on pages of the paper's own size, upright: chapters in order, strips one below another, a heading never at the foot of
 * a page, the head of a table again at the top of the next. Nothing is scaled by calibration but what is at full size.
 */
export function layBook(book: ShopBook, paper: Paper, meta: PrintMeta): readonly BookPage[] {
  const { page, box } = bookPage(paper);
  const width = box.maxX - box.minX;
  const height = box.maxY - box.minY;
  const pages: Filled[] = [];
  const open = (chapter: string): Filled => {
    const fresh = { chapter, items: [], pictures: [], left: height };
    pages.push(fresh);
    return fresh;
  };
  const put = (strip: Strip, on: Filled): void => {
    const { items, pictures = [] } = strip.draw(vec(box.minX, box.minY + on.left));
    on.items.push(...items);
    on.pictures.push(...pictures);
    on.left -= strip.height;
  };
  let current: Filled | undefined;
  for (const [at, chapter] of book.chapters.entries()) {
    const strips = stripsOf(chapter, at === 0 ? book : undefined, width, height);
    if (current === undefined || chapter.newPage || current.left < 0.3 * height)
      current = open(chapter.title);
    for (const [i, strip] of strips.entries()) {
      // What must stay with the next strip needs room for both, and a row that is last needs its own.
      let together = strip.height;
      for (let next = i; strips[next]?.staysWithNext === true && strips[next + 1] !== undefined; next++) {
        together += strips[next + 1]!.height;
      }
      const fits = current.left >= Math.min(together, height);
      if (!fits && current.left < height) {
        current = open(chapter.title);
        if (strip.repeated !== undefined && strips[i - 1] !== strip.repeated) put(strip.repeated, current);
      }
      put(strip, current);
    }
  }
  return pages.map((filled, at) => ({
    ...page,
    printable: box,
    label: `${at + 1}`,
    bookmark: `Page ${at + 1}`,
    chapter: filled.chapter,
    correction: vec(1, 1),
    items: [...borderItems(page, box, book, meta, filled.chapter, at + 1, pages.length), ...filled.items],
    pictures: filled.pictures,
  }));
}

function bookPage(paper: Paper) {
  const { page } = firstLayout(paper);
  const box = {
    minX: MARGINS.left,
    maxX: page.width - MARGINS.right,
    minY: MARGINS.bottom,
    maxY: page.height - MARGINS.top,
  };
  return { page, box };
}

function stripsOf(
  chapter: BookChapter,
  opening: ShopBook | undefined,
  width: number,
  height: number,
): readonly Strip[] {
  const title: Strip = {
    height: TITLE_HEIGHT,
    staysWithNext: true,
    draw: ({ x, y }) => ({
      items: [
        words(chapter.title, vec(x, y - 7), { height: 5, weight: 'semibold' }),
        polyline([vec(x, y - 10.5), vec(x + width, y - 10.5)], THIN, GRAPHITE),
      ],
    }),
  };
  const blocks = chapter.blocks.flatMap((block, at) => {
    const own = setBlock(block, width, height - TITLE_HEIGHT);
    // What is said right before a drawing is said of it.
    const isOfDrawing = block.kind === 'text' && chapter.blocks[at + 1]?.kind === 'drawing';
    return isOfDrawing ? own.map((strip) => ({ ...strip, staysWithNext: true })) : own;
  });
  return [...(opening === undefined ? [] : [openingStrip(opening, width)]), title, ...blocks];
}

/** The book's own title, above its first chapter. */
function openingStrip(book: ShopBook, width: number): Strip {
  const lines = linesWithin(book.about, width, 2.5, 'regular');
  return {
    height: 16 + 4.6 * lines.length,
    staysWithNext: true,
    draw: ({ x, y }) => ({
      items: [
        wordsWithin(book.title, vec(x, y - 8), width, { height: 7, weight: 'semibold' }),
        ...lines.map((line, at) => words(line, vec(x, y - 15 - 4.6 * at))),
      ],
    }),
  };
}

/** Above the text what it is of, below it where one is. */
function borderItems(
  page: { readonly width: number; readonly height: number },
  box: { readonly minX: number; readonly maxX: number },
  book: ShopBook,
  meta: PrintMeta,
  chapter: string,
  number: number,
  count: number,
): readonly PageItem[] {
  const top = page.height - 11;
  const small = { height: 1.8, ink: PALE } as const;
  return [
    wordsWithin(`${book.title} · ${chapter}`, vec(box.minX, top), (box.maxX - box.minX) * 0.55, small),
    words(`${meta.design} · revision ${meta.revision} · ${meta.date}`, vec(box.maxX, top), {
      ...small,
      align: 'right',
    }),
    polyline([vec(box.minX, top - 2.4), vec(box.maxX, top - 2.4)], HAIR, PALE),
    words(`page ${number} of ${count}`, vec(box.maxX, 9), { ...small, align: 'right' }),
    words(
      'Drawings in this book are not to be measured unless they say that they are at full size.',
      vec(box.minX, 9),
      small,
    ),
  ];
}
