import { once } from '../../core/index.ts';
import type { Cell, Effort } from './cover.ts';
import { type ForcedRange, type Tile, TOUCH } from './forced.ts';
import { bandsAt, criticalShifts, forcedIn, sheetsAt } from './needs.ts';
import { criticalHeights, type TurnedContent } from './pieces.ts';
import { cellsReached, leastToReach, leastToReachAt, straightLine } from './reached.ts';

/** Intervals of shifts in y are halved down to this, mm. */
export const FINEST = 0.05;
/** How often every piece of content is looked at to find the spans of all rows. */
export const LOOKS = 4;

/** How many sheets may be used, and what the search has cost so far. */
export interface Bound {
  readonly most: number;
  readonly effort: Effort;
}

/** Sheets for the content at one turn, and where their grid lies, mm. */
export interface PlacedAtTurn {
  readonly shiftX: number;
  readonly shiftY: number;
  readonly cells: readonly Cell[];
}

/** Tries one turn at the middle of an interval of shifts in y, and where it is narrow at the critical ones inside it. */
export function placeIn(
  content: TurnedContent,
  tile: Tile,
  { low, high }: { readonly low: number; readonly high: number },
  { most, effort }: Bound,
): PlacedAtTurn | undefined {
  const tries = [(low + high) / 2];
  if (high - low >= tile.stepY) tries.push(...shiftsFor([content.box.minY, content.box.maxY], tile));
  else if (high - low <= FINEST) {
    tries.push(...shiftsFor(criticalHeights(content), tile).filter((shift) => shift >= low && shift <= high));
  }
  let best: PlacedAtTurn | undefined;
  for (const shiftY of tries) {
    const allowed = best === undefined ? most : best.cells.length - 1;
    best = placeAt(content, tile, shiftY, { most: allowed, effort }) ?? best;
  }
  return best;
}

/** Shifts at which content of such heights ends exactly at the border of a window. */
function shiftsFor(heights: readonly number[], tile: Tile): number[] {
  return heights
    .flatMap((y) => [y - tile.halfY, y + tile.halfY])
    .map((shift) => shift - tile.stepY * Math.floor(shift / tile.stepY));
}

/** The fewest sheets over all shifts in x, exactly, for one shift in y. */
function placeAt(
  content: TurnedContent,
  tile: Tile,
  shiftY: number,
  { most, effort }: Bound,
): PlacedAtTurn | undefined {
  let best: PlacedAtTurn | undefined;
  let allowed = most;
  for (const { shiftX, cells } of placingsAt(content, tile, shiftY, () => allowed, effort)) {
    best = { shiftX, shiftY, cells };
    allowed = cells.length - 1;
  }
  return best;
}

/**
 * For one shift in y, every run of shifts in x between critical ones that needs no more than `most()` sheets,
 * with those sheets and the middle of the run.
 */
export function* placingsAt(
  content: TurnedContent,
  tile: Tile,
  shiftY: number,
  most: () => number,
  effort: Effort = { spent: 0 },
): Generator<{ from: number; to: number; shiftX: number; cells: Cell[] }> {
  if (leastToReachAt(content.box, tile, shiftY, 0) > most()) return;
  const bands = bandsAt(content, tile, shiftY);
  effort.spent += LOOKS * content.count;
  const ranges = once(() => forcedIn(bands, tile));
  for (const { from, to, middle: shiftX } of runsBetween(criticalShifts(bands, tile), tile.stepX)) {
    const reach = cellsReached(content.box, tile, shiftX, shiftY);
    if (leastToReach(reach) > most()) continue;
    const line = straightLine(reach);
    if (line === undefined && !isIn(ranges(), shiftX, most())) continue;
    const cells = line ?? sheetsAt(bands, tile, shiftX, most(), effort).cells;
    if (cells !== undefined) yield { from, to, shiftX, cells };
  }
}

interface Run {
  readonly from: number;
  readonly to: number;
  readonly middle: number;
}

/** The runs between critical shifts over one period, those of no length left out. */
export function runsBetween(critical: Float64Array, period: number): Run[] {
  const runs: Run[] = [];
  let from = 0;
  for (let i = 0; i <= critical.length; i++) {
    const to = critical[i] ?? period;
    if (to - from > TOUCH / 10) runs.push({ from, to, middle: (from + to) / 2 });
    from = to;
  }
  return runs;
}

export function isIn(ranges: readonly ForcedRange[], shiftX: number, most: number): boolean {
  return ranges.some((range) => range.count <= most && shiftX >= range.from && shiftX <= range.to);
}
