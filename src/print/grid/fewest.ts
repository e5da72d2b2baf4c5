import type { Effort } from './cover.ts';
import { forcedCounts, leastForced, type Tile } from './forced.ts';
import { bandsAt, criticalShifts, sheetsAt } from './needs.ts';
import type { TurnedContent } from './pieces.ts';
import { type Bound, FINEST, isIn, LOOKS, type PlacedAtTurn, placeIn, runsBetween } from './placings.ts';
import { leastToReachAt } from './reached.ts';
import type { TurnSource } from './turn-source.ts';

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

/** Boxes in which nothing moves by more than this, mm, are worth the closer look at overlaps. */
const CLOSE = 8;
/** Work allowed, in pieces, spans and choices looked at: keeps a hostile pattern in bounded time (a few seconds). */
const MOST_WORK = 2e7;

export interface Placing extends PlacedAtTurn {
  /** Index into the list of turns. */
  readonly turn: number;
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
    if (isTooWide(source, tile, box, most)) continue;
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

/** Does the content reach over more sheets than that at every turn of a box? */
function isTooWide({ extents }: TurnSource, tile: Tile, box: SearchBox, most: number): boolean {
  const shiftY = (box.low + box.high) / 2;
  const slack = (box.high - box.low) / 2;
  for (let turn = box.first; turn <= box.last; turn++) {
    if (leastToReachAt(extents[turn]!, tile, shiftY, slack) <= most) return false;
  }
  return true;
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
