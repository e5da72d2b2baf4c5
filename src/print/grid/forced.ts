import type { TurnedContent } from './pieces.ts';
import { spansInRows } from './spans.ts';

/** Content that only touches a sheet's border within this, mm, is not on the sheet. */
export const TOUCH = 1e-6;

/** Sheets repeat every step; each shows half an overlap more on every side. All mm. */
export interface Tile {
  readonly stepX: number;
  readonly stepY: number;
  readonly halfX: number;
  readonly halfY: number;
}

/** Shifts of the grid in x for which at least `count` sheets are needed. */
export interface ForcedRange {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/**
 * For a grid whose row borders lie at y = `shiftY` + j · stepY: for every shift in x, in [0, stepX), how many sheets
 * show something that no neighbour shows as well. That many are needed at the least. With `slackX` and `slackY` (mm)
 * the counts hold for all shifts, and all content moved, by up to so much: a lower bound for all of them together.
 */
export function forcedCounts(
  content: TurnedContent,
  tile: Tile,
  shiftY: number,
  slackX: number,
  slackY: number,
): ForcedRange[] {
  const { stepX, stepY, halfX, halfY } = tile;
  const insetX = halfX + Math.max(slackX, TOUCH);
  const insetY = halfY + Math.max(slackY, TOUCH);
  const ownWidth = stepX - 2 * insetX;
  if (ownWidth <= 0 || stepY <= 2 * insetY) return [{ from: 0, to: stepX, count: 0 }];
  const first = Math.floor((content.box.minY - shiftY) / stepY);
  const last = Math.floor((content.box.maxY - shiftY) / stepY);
  const rows = {
    low: shiftY + first * stepY + insetY,
    height: stepY - 2 * insetY,
    step: stepY,
    count: last - first + 1,
  };
  return rangesOf(spansInRows(content, rows, ownWidth), stepX, insetX);
}

/** For spans that each lie in a row of its own, all of them farther apart than a sheet shows alone. */
export function rangesOf(rows: readonly (readonly number[])[], step: number, inset: number): ForcedRange[] {
  const starts: number[] = [];
  const ends: number[] = [];
  for (const spans of rows) {
    for (let k = 0; k < spans.length; k += 2) {
      addSpan(starts, ends, spans[k]!, spans[k + 1]!, step, inset);
    }
  }
  return sweep(Float64Array.from(starts).sort(), Float64Array.from(ends).sort(), step);
}

/** The sheet in column i shows the span exclusively for shifts in (from − (i + 1) step + inset, to − i step − inset). */
function addSpan(
  starts: number[],
  ends: number[],
  from: number,
  to: number,
  step: number,
  inset: number,
): void {
  const first = Math.floor((from + inset) / step) - 1;
  const last = Math.ceil((to - inset) / step);
  for (let column = first; column <= last; column++) {
    const start = Math.max(0, from - (column + 1) * step + inset);
    const end = Math.min(step, to - column * step - inset);
    if (start < end) {
      starts.push(start);
      ends.push(end);
    }
  }
}

function sweep(starts: Float64Array, ends: Float64Array, step: number): ForcedRange[] {
  const ranges: ForcedRange[] = [];
  let at = 0;
  let count = 0;
  let begun = 0;
  let ended = 0;
  while (ended < ends.length) {
    const begins = begun < starts.length && starts[begun]! < ends[ended]!;
    const place = begins ? starts[begun++]! : ends[ended++]!;
    if (place > at) {
      ranges.push({ from: at, to: place, count });
      at = place;
    }
    count += begins ? 1 : -1;
  }
  if (step > at) ranges.push({ from: at, to: step, count });
  return ranges;
}

/** Sheets needed at some place of the grid: close enough to the fewest to tell a pattern that is far too large. */
export function roughCount(content: TurnedContent, tile: Tile): number {
  return forcedCounts(content, tile, 0, 0, 0)[0]?.count ?? 0;
}

export function leastForced(ranges: readonly ForcedRange[]): number {
  let least = Infinity;
  for (const range of ranges) if (range.count < least) least = range.count;
  return least;
}
