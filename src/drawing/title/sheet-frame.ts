import type { Box, Vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { polygon, stroke } from '../layout/strokes.ts';

/** The whole paper, mm. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
}

/**
 * mm, ISO 5457:1999 (from memory): 20 at the left, where sheets are filed, 10 elsewhere; the strip of the grid references 5 wide outside the
 * frame; centring marks from its outer side to 5 within the frame; fields of the grid 50 long, counted from the middles of the sides.
 */
const BORDER = { left: 20, other: 10 } as const;
const STRIP = 5;
const FIELD = 50;
const LETTER = 3.5;
/** Sheets no longer than this (A4, Letter) have grid references above and at the right alone, mm. */
const SMALL = 330;
/** Without I and O, which are read as figures. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** The room inside the frame of a sheet. */
export function insideOfFrame({ width, height }: PageSize): Box {
  return {
    minX: BORDER.left,
    maxX: width - BORDER.other,
    minY: BORDER.other,
    maxY: height - BORDER.other,
  };
}

/** Frame, centring marks and grid references of a drawing sheet after ISO 5457, from the paper's lower left corner. */
export function sheetFrame(page: PageSize): readonly Mark[] {
  const { minX, minY, maxX, maxY } = insideOfFrame(page);
  const outer: Box = { minX: minX - STRIP, minY: minY - STRIP, maxX: maxX + STRIP, maxY: maxY + STRIP };
  const corners = ({ minX, minY, maxX, maxY }: Box): readonly Vec[] => [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  return [
    pathMark('border', polygon(corners({ minX, minY, maxX, maxY })), true),
    pathMark('thin', polygon(corners(outer)), true),
    ...centringMarks(page),
    ...gridReferences(page),
  ];
}

/** At the middles of the paper's sides, so that a copy can be laid true. */
function centringMarks(page: PageSize): readonly Mark[] {
  const { minX, minY, maxX, maxY } = insideOfFrame(page);
  const middle = { x: page.width / 2, y: page.height / 2 };
  const lines: readonly (readonly [Vec, Vec])[] = [
    [
      { x: minX - STRIP, y: middle.y },
      { x: minX + STRIP, y: middle.y },
    ],
    [
      { x: maxX + STRIP, y: middle.y },
      { x: maxX - STRIP, y: middle.y },
    ],
    [
      { x: middle.x, y: minY - STRIP },
      { x: middle.x, y: minY + STRIP },
    ],
    [
      { x: middle.x, y: maxY + STRIP },
      { x: middle.x, y: maxY - STRIP },
    ],
  ];
  return lines.map(([from, to]) => pathMark('border', [stroke(from, to)]));
}

/** Letters from above downwards, figures from the left, both where a field has room for them. */
function gridReferences(page: PageSize): readonly Mark[] {
  const { minX, minY, maxX, maxY } = insideOfFrame(page);
  const isSmall = Math.max(page.width, page.height) <= SMALL;
  const across = fieldsBetween(minX, maxX, page.width / 2);
  const down = fieldsBetween(minY, maxY, page.height / 2).toReversed();
  const rows = isSmall ? [maxY] : [maxY, minY - STRIP];
  const columns = isSmall ? [maxX] : [maxX, minX - STRIP];
  return [
    ...rows.flatMap((y) =>
      across.flatMap(([from, to], at) => [
        ...(at === 0 ? [] : [pathMark('thin', [stroke({ x: from, y }, { x: from, y: y + STRIP })])]),
        reference(`${at + 1}`, { x: (from + to) / 2, y: y + STRIP / 2 }),
      ]),
    ),
    ...columns.flatMap((x) =>
      down.flatMap(([from, to], at) => [
        ...(at === 0 ? [] : [pathMark('thin', [stroke({ x, y: to }, { x: x + STRIP, y: to })])]),
        reference(LETTERS[at]!, { x: x + STRIP / 2, y: (from + to) / 2 }),
      ]),
    ),
  ];
}

const reference = (text: string, at: Vec): Mark =>
  textMark(text, { x: at.x, y: at.y - LETTER / 2 }, { height: LETTER, align: 'middle', role: 'dimension' });

/** Fields of 50 mm to both sides of the middle; what is left at a corner goes to the last field, where it is too short for one of its own. */
function fieldsBetween(from: number, to: number, middle: number): readonly (readonly [number, number])[] {
  const least = FIELD / 2;
  const after = Array.from(
    { length: Math.floor((to - middle - least) / FIELD) },
    (_, at) => middle + (at + 1) * FIELD,
  );
  const before = Array.from(
    { length: Math.floor((middle - from - least) / FIELD) },
    (_, at) => middle - (at + 1) * FIELD,
  ).toReversed();
  const borders = [from, ...before, middle, ...after, to];
  return borders.slice(1).map((end, at) => [borders[at]!, end]);
}
