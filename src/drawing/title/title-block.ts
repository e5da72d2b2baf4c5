import type { Vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { polygon, stroke } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import { projectionSymbol } from './projection-symbol.ts';

/** Data fields of a title block, after ISO 7200:2004: its mandatory ones and some that it leaves open. */
export interface TitleFields {
  readonly title: string;
  /** What kind of drawing it is: `General arrangement`. */
  readonly documentType: string;
  /** Identification number of the drawing. */
  readonly number: string;
  readonly revision: string;
  /** ISO 8601. */
  readonly date: string;
  readonly scale: string;
  readonly sheet: string;
  /** The maker, where the design names one. */
  readonly owner?: string;
  /** Are its views laid out by first-angle projection, so that its sign stands in the block? Yes when absent. */
  readonly projected?: boolean;
}

/** mm. ISO 7200 gives the block 180 mm; it is drawn in three rows of 9 mm, with the sign of projection at the right. */
export const TITLE_WIDTH = 180;
export const TITLE_HEIGHT = 27;
const ROW = 9;
const SIGN = 24;
const HEAD = 1.8;
const TEXT = 2.5;

interface Cell {
  readonly head: string;
  readonly text: string;
  readonly width: number;
}

/**
 * The block, its lower left corner at a point; narrower (`width`, mm) on small paper. Text too wide for its field is set in smaller letters. The
 * fields of who drew and who approved are left to the pen.
 */
export function titleBlock(fields: TitleFields, at: Vec, width: number = TITLE_WIDTH): readonly Mark[] {
  const { title, documentType, number, revision, date, scale, sheet, owner, projected = true } = fields;
  const share = width / TITLE_WIDTH;
  const rows: readonly (readonly Cell[])[] = [
    [
      { head: 'Title', text: title, width: 104 },
      { head: 'Document type', text: documentType, width: 52 },
    ],
    [
      { head: 'Created by', text: '', width: 60 },
      { head: 'Approved by', text: '', width: 60 },
      { head: 'Scale', text: scale, width: 18 },
      { head: 'Language', text: 'en', width: 18 },
    ],
    [
      { head: 'Owner', text: owner ?? '', width: 50 },
      { head: 'Identification number', text: number, width: 44 },
      { head: 'Rev.', text: revision, width: 14 },
      { head: 'Date of issue', text: date, width: 28 },
      { head: 'Sheet', text: sheet, width: 20 },
    ],
  ];
  const [right, top] = [at.x + width, at.y + TITLE_HEIGHT];
  const sign = right - SIGN * share;
  const frame = pathMark(
    'border',
    polygon([at, { x: right, y: at.y }, { x: right, y: top }, { x: at.x, y: top }]),
    true,
  );
  return [
    frame,
    rule({ x: at.x, y: at.y + ROW }, { x: sign, y: at.y + ROW }),
    rule({ x: at.x, y: at.y + 2 * ROW }, { x: sign, y: at.y + 2 * ROW }),
    rule({ x: sign, y: at.y }, { x: sign, y: top }),
    ...(projected
      ? projectionSymbol({ x: (sign + right) / 2, y: at.y + TITLE_HEIGHT / 2 }, TEXT * Math.min(1, share))
      : []),
    ...rows.flatMap((cells, row) => rowMarks(cells, { x: at.x, y: at.y + ROW * (2 - row) }, share)),
  ];
}

function rowMarks(cells: readonly Cell[], at: Vec, share: number): readonly Mark[] {
  let x = at.x;
  return cells.flatMap(({ head, text, width: whole }, i) => {
    const left = x;
    const width = whole * share;
    x += width;
    const within = (letters: string, height: number, weight: 'regular' | 'semibold'): number =>
      Math.min(height, (height * (width - 3)) / Math.max(widthOfText(letters, height, weight), 1));
    return [
      letters(head, { x: left + 1.5, y: at.y + ROW - 1 - HEAD }, within(head, HEAD, 'regular'), 'regular'),
      ...(text === ''
        ? []
        : [letters(text, { x: left + 1.5, y: at.y + 1.6 }, within(text, TEXT, 'semibold'), 'semibold')]),
      ...(i < cells.length - 1 ? [rule({ x, y: at.y }, { x, y: at.y + ROW })] : []),
    ];
  });
}

const rule = (from: Vec, to: Vec): Mark => pathMark('thin', [stroke(from, to)]);

const letters = (text: string, at: Vec, height: number, weight: 'regular' | 'semibold'): Mark =>
  textMark(text, at, { height, weight, role: 'dimension' });
