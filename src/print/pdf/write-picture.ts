import writeSvg from 'svg-to-pdfkit';
import type { PagePicture } from '../book/api.ts';
import { FONT_NAMES, POINTS_PER_MM } from './write-page.ts';

/** A drawing on the document's current page, `pageHeight` mm high. Throws on SVG that cannot be drawn as it is: drawings are our own. */
export function writePicture(document: PDFKit.PDFDocument, picture: PagePicture, pageHeight: number): void {
  const { svg, left, top, width, height } = picture;
  writeSvg(document, svg, left * POINTS_PER_MM, (pageHeight - top) * POINTS_PER_MM, {
    width: width * POINTS_PER_MM,
    height: height * POINTS_PER_MM,
    precision: 12,
    preserveAspectRatio: 'xMinYMin meet',
    fontCallback: (_family, bold) => (bold ? FONT_NAMES.semibold : FONT_NAMES.regular),
    warningCallback: (warning) => {
      throw new Error(`a drawing of the shop book cannot be drawn: ${warning}`);
    },
  });
}
