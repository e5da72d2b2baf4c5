import { line, polygonOutline, type Vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { widthOfText } from '../lettering/metrics.ts';

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
}

/** mm. ISO 7200 gives the block 180 mm; it is drawn in two rows of 9 mm. */
export const TITLE_WIDTH = 180;
export const TITLE_HEIGHT = 18;
const ROW = 9;
const HEAD = 1.8;
const TEXT = 2.5;
const TAG = { id: 'title', role: 'left' } as const;

interface Cell {
  readonly head: string;
  readonly text: string;
  readonly width: number;
}

/** The block, its lower left corner at a point; narrower (`width`, mm) on small paper. Text too wide for its field is set in smaller letters. */
export function titleBlock(fields: TitleFields, at: Vec, width: number = TITLE_WIDTH): readonly Mark[] {
  const { title, documentType, number, revision, date, scale, sheet, owner } = fields;
  const rows: readonly (readonly Cell[])[] = [
    [
      { head: 'Title', text: title, width: 92 },
      { head: 'Document type', text: documentType, width: 52 },
      { head: 'Scale', text: scale, width: 18 },
      { head: 'Language', text: 'en', width: 18 },
    ],
    [
      { head: 'Owner', text: owner ?? '', width: 52 },
      { head: 'Identification number', text: number, width: 66 },
      { head: 'Rev.', text: revision, width: 14 },
      { head: 'Date of issue', text: date, width: 26 },
      { head: 'Sheet', text: sheet, width: 22 },
    ],
  ];
  const frame: Mark = {
    kind: 'path',
    role: 'border',
    closed: true,
    edges: polygonOutline(
      [
        at,
        { x: at.x + width, y: at.y },
        { x: at.x + width, y: at.y + TITLE_HEIGHT },
        { x: at.x, y: at.y + TITLE_HEIGHT },
      ],
      TAG,
    ).edges,
  };
  const middle: Mark = rule({ x: at.x, y: at.y + ROW }, { x: at.x + width, y: at.y + ROW });
  return [
    frame,
    middle,
    ...rows.flatMap((cells, row) =>
      rowMarks(cells, { x: at.x, y: at.y + ROW * (1 - row) }, width / TITLE_WIDTH),
    ),
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
      letters(text, { x: left + 1.5, y: at.y + 1.6 }, within(text, TEXT, 'semibold'), 'semibold'),
      ...(i < cells.length - 1 ? [rule({ x, y: at.y }, { x, y: at.y + ROW })] : []),
    ];
  });
}

const rule = (from: Vec, to: Vec): Mark => ({
  kind: 'path',
  role: 'thin',
  closed: false,
  edges: [line(from, to, TAG)],
});

const letters = (text: string, at: Vec, height: number, weight: 'regular' | 'semibold'): Mark => ({
  kind: 'text',
  text,
  at,
  height,
  angle: 0,
  align: 'left',
  weight,
  role: 'dimension',
});
