import { INKS, LINE_STYLES, type Mark, type TextMark, TINT_STRENGTH } from '../../drawing/index.ts';
import type { Box, Edge, Vec } from '../../geometry/index.ts';

/** A colour and how strong it is, 0 to 1; laid on white paper. */
export interface Ink {
  readonly colour: string;
  readonly strength: number;
}

export const GRAPHITE: Ink = { colour: INKS.graphite, strength: 1 };
export const ACCENT: Ink = { colour: INKS.accent, strength: 1 };
/** For what may be overlooked: borders without a neighbour, guide lines. */
export const PALE: Ink = { colour: INKS.graphite, strength: 0.45 };

/** The paper itself: a ground for what must be read. */
export const WHITE: Ink = { colour: '#ffffff', strength: 1 };

/** Line widths, mm, ISO 128-2. */
export const THIN = 0.18;
export const HAIR = 0.13;

/** A stroked path on a page. All lengths in mm. */
interface StrokeItem {
  readonly kind: 'stroke';
  readonly edges: readonly Edge[];
  readonly closed: boolean;
  readonly width: number;
  readonly dash: readonly number[];
  readonly ink: Ink;
}

/** A filled closed path. */
interface FillItem {
  readonly kind: 'fill';
  readonly edges: readonly Edge[];
  readonly ink: Ink;
}

export interface TextItem extends Pick<TextMark, 'text' | 'at' | 'height' | 'angle' | 'align' | 'weight'> {
  readonly kind: 'text';
  readonly ink: Ink;
}

/** Items to be shown only inside a box. */
interface ClippedItems {
  readonly kind: 'clipped';
  readonly to: Box;
  readonly items: readonly PageItem[];
}

/** What a page is made of: mm from the page's lower left corner, y up, before any correction of scale. */
export type PageItem = StrokeItem | FillItem | TextItem | ClippedItems;

/** One page, ready to be written; drawn in the order of its items. */
export interface Page {
  readonly width: number;
  readonly height: number;
  /** Where a printer can put ink. */
  readonly printable: Box;
  /** Its page label in the PDF, and its bookmark under that of its pattern. */
  readonly label: string;
  readonly bookmark: string;
  /** The bookmark that this page's stands under. */
  readonly chapter: string;
  /** Bookmarks of chapters that begin on this page; absent where the page alone tells that. */
  readonly begins?: readonly string[];
  readonly items: readonly PageItem[];
  /** Factors of scale along the page's own x and y, about its centre. */
  readonly correction: Vec;
}

/** A mark of a drawing as it is drawn everywhere: width, dashes and ink by its role. */
export function itemOf(mark: Mark): PageItem {
  const style = LINE_STYLES[mark.role];
  const ink = style.ink === 'accent' ? ACCENT : GRAPHITE;
  if (mark.kind === 'text') {
    const { text, at, height, angle, align, weight } = mark;
    return { kind: 'text', text, at, height, angle, align, weight, ink };
  }
  const { edges, closed } = mark;
  if (mark.fill === undefined) {
    return { kind: 'stroke', edges, closed, width: style.width, dash: style.dash, ink };
  }
  return { kind: 'fill', edges, ink: { ...ink, strength: mark.fill === 'tint' ? TINT_STRENGTH : 1 } };
}
