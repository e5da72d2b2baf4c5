import PDFDocument from 'pdfkit';
import { toBytes } from 'pdfkit/output';
import type { PrintFonts } from '../api.ts';
import type { PagePicture } from '../book/api.ts';
import type { Page } from '../page/ink.ts';
import { FONT_NAMES, POINTS_PER_MM, writePage } from './write-page.ts';
import { writePicture } from './write-picture.ts';

export interface PdfFacts {
  readonly title: string;
  readonly subject: string;
  /** ISO 8601 date: stands for the time of making, so that the same design gives the same bytes. */
  readonly date: string;
}

/** Bookmarks show the whole page; pdfkit's types do not know `fit`. */
const WHOLE_PAGE = { fit: true, expanded: true } as { expanded: boolean };

/** Parts of a document that pdfkit keeps to itself. */
interface DocumentRoot {
  readonly _root: { readonly data: Record<string, unknown> };
  ref(data: Record<string, unknown>): { end(): void };
}

/**
 * The pages as a PDF 1.7: real text in the fonts given (bytes of woff or ttf), bookmarks, page labels, page boxes, and
 * the wish not to be scaled. The same pages and facts give the same bytes.
 */
export async function writePdf(
  pages: readonly (Page & { readonly pictures?: readonly PagePicture[] })[],
  facts: PdfFacts,
  fonts: PrintFonts,
): Promise<Uint8Array> {
  const time = new Date(`${facts.date.slice(0, 10)}T00:00:00Z`);
  const made = Number.isNaN(time.getTime()) ? new Date(0) : time;
  const document = new PDFDocument({
    autoFirstPage: false,
    // Without a font of its own: the standard ones are files, which a browser does not have.
    font: '',
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    info: {
      Title: facts.title,
      Subject: facts.subject,
      Creator: 'Legwright',
      Producer: 'Legwright',
      CreationDate: made,
      ModDate: made,
    },
  });
  const bytes = toBytes(document);
  for (const weight of ['regular', 'semibold'] as const) {
    // pdfkit takes the bytes for a buffer of a font; its types know only Node's own kind.
    document.registerFont(FONT_NAMES[weight], fonts[weight] as unknown as ArrayBuffer);
  }
  addPages(document, pages);
  setViewing(document as unknown as DocumentRoot, pages);
  document.end();
  return bytes;
}

function addPages(
  document: PDFKit.PDFDocument,
  pages: readonly (Page & { readonly pictures?: readonly PagePicture[] })[],
): void {
  let chapter: { readonly name: string; readonly item: PDFKit.PDFOutline } | undefined;
  for (const page of pages) {
    const width = page.width * POINTS_PER_MM;
    const height = page.height * POINTS_PER_MM;
    document.addPage({ size: [width, height], margin: 0 });
    const box = [0, 0, width, height];
    const { data } = document.page.dictionary as unknown as { data: Record<string, unknown> };
    data.CropBox = box;
    data.BleedBox = box;
    data.TrimBox = box;
    writePage(document, page);
    for (const picture of page.pictures ?? []) writePicture(document, picture, page.height);
    const begins = page.begins ?? (chapter?.name === page.chapter ? [] : [page.chapter]);
    for (const name of begins) chapter = { name, item: document.outline.addItem(name, WHOLE_PAGE) };
    chapter?.item.addItem(page.bookmark, WHOLE_PAGE);
  }
}

/** Viewer preferences (ISO 32000-1, 12.2) and page labels (12.4.2). */
function setViewing(document: DocumentRoot, pages: readonly Page[]): void {
  const preferences = document.ref({ PrintScaling: 'None', PickTrayByPDFSize: true, DisplayDocTitle: true });
  preferences.end();
  document._root.data.ViewerPreferences = preferences;
  const labels = document.ref({
    // A String object is written as text, a plain string as a name.
    Nums: pages.flatMap((page, i) => [i, { P: new String(page.label) }]),
  });
  labels.end();
  document._root.data.PageLabels = labels;
}
