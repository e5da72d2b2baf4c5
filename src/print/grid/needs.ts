import { type Cell, type Effort, type FewestCells, fewestCells } from './cover.ts';
import { type ForcedRange, rangesOf, type Tile, TOUCH } from './forced.ts';
import type { TurnedContent } from './pieces.ts';
import { joinSpans, spansInRows } from './spans.ts';

/** The spans of the content in each row's own band and in the overlap above it, for one shift in y. */
export interface Bands {
  readonly rows: readonly { readonly row: number; readonly own: number[]; readonly above: number[] }[];
}

export function bandsAt(content: TurnedContent, tile: Tile, shiftY: number): Bands {
  const { stepY: step, halfY: half } = tile;
  const first = Math.floor((content.box.minY - shiftY - half) / step) - 1;
  const count = Math.floor((content.box.maxY - shiftY + half) / step) - first + 1;
  const low = shiftY + first * step + half + TOUCH;
  const height = step - 2 * (half + TOUCH);
  const own = spansInRows(content, { low, height, step, count }, TOUCH);
  const above = spansInRows(content, { low: low + height, height: step - height, step, count }, TOUCH);
  return {
    rows: own.flatMap((spans, i) =>
      spans.length > 0 || above[i]!.length > 0 ? [{ row: first + i, own: spans, above: above[i]! }] : [],
    ),
  };
}

/** How many sheets are needed at the least, as `forcedCounts` says. */
export function forcedIn({ rows }: Bands, { stepX, halfX }: Tile): ForcedRange[] {
  const inset = halfX + TOUCH;
  const alone = rows.map(({ own }) => joinSpans(own, stepX - 2 * inset));
  return rangesOf(alone, stepX, inset);
}

/** Shifts in x, in [0, step), at which what the sheets must show changes. */
export function criticalShifts({ rows }: Bands, { stepX, halfX }: Tile): Float64Array {
  const shifts: number[] = [];
  const add = (place: number): void => {
    shifts.push(place - stepX * Math.floor(place / stepX));
  };
  for (const { own, above } of rows) {
    for (const spans of [own, above]) {
      for (const x of spans) {
        add(x - halfX);
        add(x + halfX);
      }
    }
  }
  return Float64Array.from(shifts).sort();
}

/** Rows and columns lie well within this of 0: a pattern of more sheets is refused long before. */
const MOST_AWAY = 2 ** 20;

/** One number for a cell and what else lies in the need it begins: itself, its right, its upper neighbour, or all four. */
function keyOf(column: number, row: number, kind: 0 | 1 | 2 | 3): number {
  return ((column + MOST_AWAY) * 2 * MOST_AWAY + (row + MOST_AWAY)) * 4 + kind;
}

/**
 * The fewest sheets that show all content, hanging together by seams, for one place of the grid; nothing when more
 * than `most` are needed. What lies in an overlap is on both its sheets, so that either will do.
 */
export function sheetsAt(
  bands: Bands,
  tile: Tile,
  shiftX: number,
  most: number,
  effort: Effort = { spent: 0 },
): FewestCells {
  const forced = new Map<number, Cell>();
  const wishes = new Map<number, readonly Cell[]>();
  for (const { row, own, above } of bands.rows) {
    eachZone(own, tile, shiftX, (column, isShared) => {
      const key = keyOf(column, row, isShared ? 1 : 0);
      if (!isShared) forced.set(key, { column, row });
      else if (!wishes.has(key)) wishes.set(key, cellsFrom(column, row, 1, 0));
    });
    eachZone(above, tile, shiftX, (column, isShared) => {
      const key = keyOf(column, row, isShared ? 3 : 2);
      if (!wishes.has(key)) wishes.set(key, cellsFrom(column, row, isShared ? 1 : 0, 1));
    });
    effort.spent += own.length + above.length;
    if (forced.size > most) return { cells: undefined, isCertain: true };
  }
  return fewestCells([...forced.values()], [...wishes.values()], most, effort);
}

/** A cell with its neighbours on the right and above, so far. */
function cellsFrom(column: number, row: number, right: 0 | 1, up: 0 | 1): readonly Cell[] {
  const cells: Cell[] = [];
  for (let c = column; c <= column + right; c++) {
    for (let r = row; r <= row + up; r++) cells.push({ column: c, row: r });
  }
  return cells;
}

/** Calls for each zone that a span enters: a column's own, or the one that it shares with the next. */
function eachZone(
  spans: readonly number[],
  tile: Tile,
  shiftX: number,
  visit: (column: number, isShared: boolean) => void,
): void {
  const { stepX, halfX: half } = tile;
  for (let k = 0; k < spans.length; k += 2) {
    const from = spans[k]! - shiftX;
    const to = spans[k + 1]! - shiftX;
    const first = Math.floor((from - half) / stepX);
    const last = Math.floor((to + half) / stepX);
    for (let column = first; column <= last; column++) {
      const left = column * stepX;
      const right = left + stepX;
      if (from < right - half - TOUCH && to > left + half + TOUCH) visit(column, false);
      if (from <= right + half + TOUCH && to >= right - half - TOUCH) visit(column, true);
    }
  }
}
