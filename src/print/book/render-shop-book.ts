import type { Paper, PrintFonts, PrintMeta } from '../api.ts';
import { writePdf } from '../pdf/write-pdf.ts';
import type { ShopBook } from './api.ts';
import { layBook } from './lay-book.ts';

/**
 * The shop book as a PDF on the maker's paper, with real text, bookmarks by chapter and page labels. Its drawings are the same SVG that
 * a screen shows. The same input gives the same bytes.
 */
export function renderShopBook(
  book: ShopBook,
  paper: Paper,
  meta: PrintMeta,
  fonts: PrintFonts,
): Promise<Uint8Array> {
  const pages = layBook(book, paper, meta);
  return writePdf(
    pages,
    { title: `${meta.design}: shop book`, subject: 'Shop book', date: meta.date },
    fonts,
  );
}
