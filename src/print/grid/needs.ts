import { type Cell, type FewestCells, fewestCells } from './cover.ts';
import { type Tile, TOUCH } from './forced.ts';
import { spansBetween, type TurnedContent } from './pieces.ts';

/** The spans of the content in each row's own band and in the overlap above it, for one shift in y. */
export interface Bands {
  readonly rows: readonly { readonly row: number; readonly own: number[]; readonly above: number[] }[];
}

export function bandsAt(content: TurnedContent, tile: Tile, shiftY: number): Bands {
  const { stepY, halfY: half } = tile;
  const first = Math.floor((content.box.minY - shiftY - half) / stepY) - 1;
  const last = Math.floor((content.box.maxY - shiftY + half) / stepY);
  const rows = [];
  for (let row = first; row <= last; row++) {
    const low = shiftY + row * stepY;
    const own = spansBetween(content, low + half + TOUCH, low + stepY - half - TOUCH, TOUCH);
    const above = spansBetween(content, low + stepY - half - TOUCH, low + stepY + half + TOUCH, TOUCH);
    if (own.length > 0 || above.length > 0) rows.push({ row, own, above });
  }
  return { rows };
}

/** Shifts in x, in [0, step), at which what the sheets must show changes. */
export function criticalShifts(bands: Bands, tile: Tile): number[] {
  const shifts = new Set<number>();
  for (const { own, above } of bands.rows) {
    for (const x of [...own, ...above]) {
      for (const place of [x - tile.halfX, x + tile.halfX]) {
        shifts.add(place - tile.stepX * Math.floor(place / tile.stepX));
      }
    }
  }
  return [...shifts].sort((a, b) => a - b);
}

/**
 * The fewest sheets that show all content, hanging together by seams, for one place of the grid; nothing when more
 * than `most` are needed. What lies in an overlap is on both its sheets, so that either will do.
 */
export function sheetsAt(bands: Bands, tile: Tile, shiftX: number, most: number): FewestCells {
  const forced = new Map<string, Cell>();
  const wishes = new Map<string, Cell[]>();
  const need = (cells: Cell[]): void => {
    const key = cells.map((cell) => `${cell.column},${cell.row}`).join(' ');
    if (cells.length === 1) forced.set(key, cells[0]!);
    else wishes.set(key, cells);
  };
  for (const { row, own, above } of bands.rows) {
    eachZone(own, tile, shiftX, (columns) => need(columns.map((column) => ({ column, row }))));
    eachZone(above, tile, shiftX, (columns) =>
      need(
        columns.flatMap((column) => [
          { column, row },
          { column, row: row + 1 },
        ]),
      ),
    );
  }
  if (forced.size > most) return { cells: undefined, isCertain: true };
  return fewestCells([...forced.values()], [...wishes.values()], most);
}

/** Calls with the column, or with the two columns that overlap there, for each zone that a span enters. */
function eachZone(
  spans: readonly number[],
  tile: Tile,
  shiftX: number,
  visit: (columns: number[]) => void,
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
      if (from < right - half - TOUCH && to > left + half + TOUCH) visit([column]);
      if (from <= right + half + TOUCH && to >= right - half - TOUCH) visit([column, column + 1]);
    }
  }
}
