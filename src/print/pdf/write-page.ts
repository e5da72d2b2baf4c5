import { fontSizeOf, type TextMark } from '../../drawing/index.ts';
import { type Arc, type Edge, sweepOf, type Vec } from '../../geometry/index.ts';
import type { Ink, Page, PageItem, TextItem } from '../page/ink.ts';

export const POINTS_PER_MM = 72 / 25.4;
/** Arcs are written as cubics no longer than this: 2e-7 mm off at a radius of 1 m. */
const LONGEST_CUBIC = (7.5 * Math.PI) / 180;

type Document = PDFKit.PDFDocument;
type Place = (p: Vec) => Vec;

export const FONT_NAMES: Readonly<Record<TextMark['weight'], string>> = {
  regular: 'regular',
  semibold: 'semibold',
};

/** Writes the items of a page on the document's current page, corrected about the page's centre, in points. */
export function writePage(document: Document, page: Page): void {
  const { width, height, correction } = page;
  const place = ({ x, y }: Vec): Vec => ({
    x: (width / 2 + (x - width / 2) * correction.x) * POINTS_PER_MM,
    y: (height / 2 - (y - height / 2) * correction.y) * POINTS_PER_MM,
  });
  for (const item of page.items) writeItem(document, item, place);
}

function writeItem(document: Document, item: PageItem, place: Place): void {
  switch (item.kind) {
    case 'stroke': {
      trace(document, item.edges, item.closed, place);
      document
        .lineWidth(item.width * POINTS_PER_MM)
        // Dash lengths are meant for round caps; a continuous line ends where it ends.
        .lineCap(item.dash.length === 0 ? 'butt' : 'round')
        .lineJoin('round');
      if (item.dash.length === 0) document.undash();
      else document.dash(item.dash.map((part) => part * POINTS_PER_MM) as unknown as number, {});
      document.stroke(colourOf(item.ink));
      return;
    }
    case 'fill':
      trace(document, item.edges, true, place);
      document.fill(colourOf(item.ink));
      return;
    case 'text':
      writeText(document, item, place);
      return;
    case 'clipped': {
      const a = place({ x: item.to.minX, y: item.to.maxY });
      const b = place({ x: item.to.maxX, y: item.to.minY });
      document.save();
      document.rect(a.x, a.y, b.x - a.x, b.y - a.y).clip();
      for (const inner of item.items) writeItem(document, inner, place);
      document.restore();
      return;
    }
    default:
      item satisfies never;
  }
}

/** The colour as it looks on white paper: no transparency, which printers treat each in its own way. */
function colourOf({ colour, strength }: Ink): string {
  const channel = (at: number): string => {
    const full = Number.parseInt(colour.slice(at, at + 2), 16);
    return Math.round(255 - (255 - full) * strength)
      .toString(16)
      .padStart(2, '0');
  };
  return `#${channel(1)}${channel(3)}${channel(5)}`;
}

function trace(document: Document, edges: readonly Edge[], closed: boolean, place: Place): void {
  let end: Vec | undefined;
  for (const [i, edge] of edges.entries()) {
    if (end === undefined || end.x !== edge.from.x || end.y !== edge.from.y) {
      const start = place(edge.from);
      document.moveTo(start.x, start.y);
    }
    if (edge.kind === 'line') {
      // The last side of a loop is drawn by closing it.
      if (closed && i > 0 && i === edges.length - 1) break;
      const to = place(edge.to);
      document.lineTo(to.x, to.y);
    } else {
      for (const cubic of cubicsOf(edge)) {
        const [a, b, c] = cubic.map(place) as [Vec, Vec, Vec];
        document.bezierCurveTo(a.x, a.y, b.x, b.y, c.x, c.y);
      }
    }
    end = edge.to;
  }
  if (closed) document.closePath();
}

/** Control points and end of each cubic that stands for a part of an arc. */
function cubicsOf(edge: Arc): [Vec, Vec, Vec][] {
  const { centre, radius, turn, from, to } = edge;
  const sweep = sweepOf(edge);
  const count = Math.ceil(sweep / LONGEST_CUBIC);
  const part = (turn * sweep) / count;
  const reach = (4 / 3) * Math.tan(part / 4) * radius;
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const at = (angle: number): Vec => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  });
  return Array.from({ length: count }, (_, i) => {
    const a = start + i * part;
    const b = a + part;
    const p = i === 0 ? from : at(a);
    const q = i === count - 1 ? to : at(b);
    return [
      { x: p.x - reach * Math.sin(a), y: p.y + reach * Math.cos(a) },
      { x: q.x + reach * Math.sin(b), y: q.y - reach * Math.cos(b) },
      q,
    ];
  });
}

function writeText(document: Document, item: TextItem, place: Place): void {
  const text = item.text.replace(/[\p{Cc}\p{Cf}]/gu, ' ').trim();
  if (text === '') return;
  const at = place(item.at);
  document
    .font(FONT_NAMES[item.weight])
    .fontSize(fontSizeOf(item.height) * POINTS_PER_MM)
    .fillColor(colourOf(item.ink));
  const width = document.widthOfString(text);
  const start = item.align === 'left' ? 0 : item.align === 'middle' ? -width / 2 : -width;
  const options = { lineBreak: false, baseline: 'alphabetic' } as const;
  if (item.angle === 0) {
    document.text(text, at.x + start, at.y, options);
    return;
  }
  const c = Math.cos(item.angle);
  const s = Math.sin(item.angle);
  document.save();
  document.transform(c, -s, s, c, at.x, at.y);
  document.text(text, start, 0, options);
  document.restore();
}
