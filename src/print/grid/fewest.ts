import type { Cell, Effort } from './cover.ts';
import { type ForcedRange, forcedCounts, leastForced, type Tile, TOUCH } from './forced.ts';
import { bandsAt, criticalShifts, sheetsAt } from './needs.ts';
import { criticalHeights, type TurnedContent } from './pieces.ts';

/**
 * The fewest sheets for a pattern, over every turn of a list and every shift of the grid.
 *
 * A box of the search is a run of neighbouring turns together with an interval of shifts in y; shifts in x are
 * solved exactly. The content is turned to the middle of the box and the part of each sheet that it shows alone is
 * shrunk by as much as anything in the box can move: sheets needed even then are needed throughout. A box that
 * cannot beat the best found is dropped, others are halved; single turns are also tried at the middle of their
 * interval. So no shift worth having is missed down to FINEST, and the turns and shifts of any coarser grid are
 * all spoken for. Where content ends exactly at a border only one shift may do: those are tried by name.
 */

/** Intervals of shifts in y are halved down to this, mm. */
const FINEST = 0.05;
/** Boxes in which nothing moves by more than this, mm, are worth the closer look at overlaps. */
const CLOSE = 8;
/** How often every piece of content is looked at to find the spans of all rows. */
const LOOKS = 4;
/** Work allowed, in pieces, spans and choices looked at: keeps a hostile pattern in bounded time (a few seconds). */
const MOST_WORK = 2e7;

export interface Placing {
  /** Index into the list of turns. */
  readonly turn: number;
  readonly shiftX: number;
  readonly shiftY: number;
  readonly cells: readonly Cell[];
}

export interface TurnSource {
  /** Turns, rad, rising. */
  readonly turns: readonly number[];
  readonly reach: number;
  /** The content at a turn, rad. */
  readonly at: (turn: number) => TurnedContent;
  /** Some of the content, so chosen that it alone often shows how many sheets are needed: a quicker lower bound. */
  readonly someAt: (turn: number) => TurnedContent;
}

/** How many sheets may be used, and what the search has cost so far. */
interface Bound {
  readonly most: number;
  readonly effort: Effort;
}

interface SearchBox {
  readonly first: number;
  readonly last: number;
  readonly low: number;
  readonly high: number;
}

/**
 * A placing of fewer than `below` sheets, the fewest there is; nothing when `below` − 1 cannot be reached.
 * Turns at the head of `favourites` (indices) are tried first, so that the search has a good figure to beat.
 */
export function fewestSheets(
  source: TurnSource,
  tile: Tile,
  below: number,
  favourites: readonly number[],
): Placing | undefined {
  let best: Placing | undefined;
  let most = below - 1;
  const effort: Effort = { spent: 0 };
  const open: SearchBox[] = [];
  const all = { first: 0, last: source.turns.length - 1, low: 0, high: tile.stepY };
  open.push(all, ...favourites.map((turn) => ({ ...all, first: turn, last: turn })).reverse());
  for (let box = open.pop(); box !== undefined && effort.spent < MOST_WORK; box = open.pop()) {
    const { first, last, low, high } = box;
    const middleTurn = (source.turns[first]! + source.turns[last]!) / 2;
    const turnSlack = source.reach * (source.turns[last]! - middleTurn);
    const shiftY = (low + high) / 2;
    const shiftSlack = (high - low) / 2;
    const some = source.someAt(middleTurn);
    effort.spent += some.count;
    if (leastForced(forcedCounts(some, tile, shiftY, turnSlack, turnSlack + shiftSlack)) > most) continue;
    const content = source.at(middleTurn);
    effort.spent += content.count;
    if (leastForced(forcedCounts(content, tile, shiftY, turnSlack, turnSlack + shiftSlack)) > most) continue;
    if (turnSlack + shiftSlack <= CLOSE) {
      if (isTooFew(content, tile, { shiftY, turnSlack, shiftSlack }, { most, effort })) continue;
    }
    if (first === last) {
      const found = placeIn(content, tile, box, { most, effort });
      if (found !== undefined) {
        best = { turn: first, ...found };
        most = found.cells.length - 1;
      }
    }
    open.push(...halves(box, turnSlack, shiftSlack));
  }
  return best;
}

/**
 * Can nothing in a box do with so few sheets? As the forced count, but with every overlap grown by what can move: what
 * lies in a grown overlap still needs one of its sheets.
 */
function isTooFew(
  content: TurnedContent,
  tile: Tile,
  { shiftY, turnSlack, shiftSlack }: { shiftY: number; turnSlack: number; shiftSlack: number },
  { most, effort }: Bound,
): boolean {
  const grown = { ...tile, halfX: tile.halfX + turnSlack, halfY: tile.halfY + turnSlack + shiftSlack };
  if (2 * grown.halfX >= tile.stepX || 2 * grown.halfY >= tile.stepY) return false;
  const ranges = forcedCounts(content, grown, shiftY, 0, 0).filter((range) => range.count <= most);
  const bands = bandsAt(content, grown, shiftY);
  effort.spent += LOOKS * content.count;
  for (const { middle } of runsBetween(criticalShifts(bands, grown), tile.stepX)) {
    if (!isIn(ranges, middle, most)) continue;
    if (effort.spent > MOST_WORK) return false;
    const { cells, isCertain } = sheetsAt(bands, grown, middle, most, effort);
    if (cells !== undefined || !isCertain) return false;
  }
  return true;
}

function halves(box: SearchBox, turnSlack: number, shiftSlack: number): SearchBox[] {
  const { first, last, low, high } = box;
  if (first < last && turnSlack >= shiftSlack / 2) {
    const middle = Math.floor((first + last) / 2);
    return [
      { ...box, first: middle + 1 },
      { ...box, last: middle },
    ];
  }
  if (high - low <= FINEST) return first < last ? halves(box, Infinity, 0) : [];
  const middle = (low + high) / 2;
  return [
    { ...box, low: middle },
    { ...box, high: middle },
  ];
}

/** Tries one turn at the middle of an interval of shifts, and where it is narrow at the critical ones inside it. */
function placeIn(
  content: TurnedContent,
  tile: Tile,
  box: SearchBox,
  { most, effort }: Bound,
): Omit<Placing, 'turn'> | undefined {
  const { low, high } = box;
  const tries = [(low + high) / 2];
  if (high - low >= tile.stepY) tries.push(...extremeShifts(content, tile));
  else if (high - low <= FINEST) {
    tries.push(...shiftsFor(criticalHeights(content), tile).filter((shift) => shift >= low && shift <= high));
  }
  let best: Omit<Placing, 'turn'> | undefined;
  for (const shiftY of tries) {
    const allowed = best === undefined ? most : best.cells.length - 1;
    const found = placeAt(content, tile, shiftY, { most: allowed, effort });
    if (found !== undefined) best = { shiftY, ...found };
  }
  return best;
}

/** Shifts at which the content ends exactly at the border of a window. */
function extremeShifts(content: TurnedContent, tile: Tile): number[] {
  return shiftsFor([content.box.minY, content.box.maxY], tile);
}

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
): { shiftX: number; cells: readonly Cell[] } | undefined {
  let best: { shiftX: number; cells: readonly Cell[] } | undefined;
  let allowed = most;
  for (const { shiftX, cells } of placingsAt(content, tile, shiftY, () => allowed, effort)) {
    best = { shiftX, cells };
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
  const ranges = forcedCounts(content, tile, shiftY, 0, 0).filter((range) => range.count <= most());
  effort.spent += content.count;
  if (ranges.length === 0) return;
  const bands = bandsAt(content, tile, shiftY);
  effort.spent += LOOKS * content.count;
  for (const { from, to, middle: shiftX } of runsBetween(criticalShifts(bands, tile), tile.stepX)) {
    if (!isIn(ranges, shiftX, most())) continue;
    const { cells } = sheetsAt(bands, tile, shiftX, most(), effort);
    if (cells !== undefined) yield { from, to, shiftX, cells };
  }
}

/** The runs between critical shifts over one period, those of no length left out. */
function runsBetween(
  critical: readonly number[],
  period: number,
): { readonly from: number; readonly to: number; readonly middle: number }[] {
  const stops = [0, ...critical, period];
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i]!;
    return to - from > TOUCH / 10 ? [{ from, to, middle: (from + to) / 2 }] : [];
  });
}

function isIn(ranges: readonly ForcedRange[], shiftX: number, most: number): boolean {
  return ranges.some((range) => range.count <= most && shiftX >= range.from && shiftX <= range.to);
}
