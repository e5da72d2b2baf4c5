import { boundsOfMarks, type Scene, sceneToSvg } from '../../drawing/index.ts';
import { type Box, vec } from '../../geometry/index.ts';
import type { Paper, PrintMeta } from '../api.ts';
import { firstLayout } from '../first-page/first-layout.ts';
import { HAIR, PALE, type Page, type PageItem } from '../page/ink.ts';
import { polyline, words, wordsWithin } from '../page/items.ts';
import type { PagePicture, ShopBook } from './api.ts';
import { type FilledPage, fillPages } from './fill-pages.ts';
import { stepsOfBook } from './strips-of-book.ts';

/** A page of the book with the drawings on it. */
export interface BookPage extends Page {
  readonly pictures: readonly PagePicture[];
}

/** mm: at the left room for a hole punch, as ISO 5457 leaves. */
const MARGINS = { left: 20, right: 10, top: 20, bottom: 16 } as const;
/** What a plate is called stands so far within the frame's upper corners, mm. */
const IN_CORNER = { x: 2, y: 4.2, frame: 10 } as const;

/** The paper of the book as it stands upright, mm. */
export function bookPaper(paper: Paper): { readonly width: number; readonly height: number } {
  const { width, height } = firstLayout(paper).page;
  return { width, height };
}

interface Numbered {
  readonly page: FilledPage;
  readonly number: number;
  readonly count: number;
}

/**
 * The book laid on pages of the paper's own size: chapters in order, strips one below another, plates on pages of their own. Nothing is scaled by
 * calibration.
 */
export function layBook(book: ShopBook, paper: Paper, meta: PrintMeta): readonly BookPage[] {
  const page = bookPaper(paper);
  const box: Box = {
    minX: MARGINS.left,
    maxX: page.width - MARGINS.right,
    minY: MARGINS.bottom,
    maxY: page.height - MARGINS.top,
  };
  const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
  const pageOf = new Map<string, number>();
  const pages = fillPages(
    stepsOfBook(book, width, height, (title) => pageOf.get(title)),
    height,
  );
  for (const [at, { begins }] of pages.entries()) for (const title of begins) pageOf.set(title, at + 1);
  return pages.map((filled, at): BookPage => {
    const numbered = { page: filled, number: at + 1, count: pages.length };
    return filled.plate === undefined
      ? textPage(numbered, { page, box }, book, meta)
      : platePage(numbered, filled.plate, book);
  });
}

const commonOf = ({ page, number }: Numbered) =>
  ({
    label: `${number}`,
    bookmark: page.plate?.name ?? `Page ${number}`,
    chapter: page.chapter,
    begins: page.begins,
    correction: vec(1, 1),
  }) as const;

function textPage(
  numbered: Numbered,
  { page, box }: { readonly page: { readonly width: number; readonly height: number }; readonly box: Box },
  book: ShopBook,
  meta: PrintMeta,
): BookPage {
  const drawn = numbered.page.strips.map(({ strip, top }) => strip.draw(vec(box.minX, box.maxY - top)));
  return {
    ...page,
    ...commonOf(numbered),
    printable: box,
    items: [...runningLines(numbered, page.height, box, book, meta), ...drawn.flatMap(({ items }) => items)],
    pictures: drawn.flatMap(({ pictures = [] }) => pictures),
  };
}

/** The plate as it is, named in its upper corners. */
function platePage(
  numbered: Numbered,
  { scene }: NonNullable<FilledPage['plate']>,
  book: ShopBook,
): BookPage {
  const { maxX: width, maxY: height } = scene.box;
  const y = height - IN_CORNER.frame - IN_CORNER.y;
  const small = { height: 1.8, ink: PALE } as const;
  const left = MARGINS.left + IN_CORNER.x;
  const right = width - IN_CORNER.frame - IN_CORNER.x;
  return {
    width,
    height,
    ...commonOf(numbered),
    printable: scene.box,
    items: [
      wordsWithin(`${book.title} · ${numbered.page.chapter}`, vec(left, y), (right - left) * 0.7, small),
      words(`page ${numbered.number} of ${numbered.count}`, vec(right, y), { ...small, align: 'right' }),
    ],
    pictures: [pictureOf(scene)],
  };
}

/** The drawing at its own place and size: an SVG reaches as far as its marks, not as the paper. */
function pictureOf(scene: Scene): PagePicture {
  const { minX, maxX, minY, maxY } = boundsOfMarks(scene.marks);
  return {
    svg: sceneToSvg(scene, undefined, { margin: 0 }),
    left: minX,
    top: maxY,
    width: maxX - minX,
    height: maxY - minY,
  };
}

/** Above the text what it is of, below it where one is. */
function runningLines(
  { page, number, count }: Numbered,
  height: number,
  box: Box,
  book: ShopBook,
  meta: PrintMeta,
): readonly PageItem[] {
  const top = height - 11;
  const small = { height: 1.8, ink: PALE } as const;
  const chapter = page.chapter === '' ? '' : ` · ${page.chapter}`;
  return [
    wordsWithin(`${book.title}${chapter}`, vec(box.minX, top), (box.maxX - box.minX) * 0.55, small),
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
