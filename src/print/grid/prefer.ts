import type { Box, Vec } from '../../geometry/index.ts';
import type { Cell } from './cover.ts';
import { forcedCounts, leastForced, type Tile } from './forced.ts';
import { placingsAt } from './placings.ts';
import { cellsReached, leastToReachAnywhere } from './reached.ts';
import { type CellSeam, disturbance, type KeepOff, leastOfColumn, offCentre, seamsBetween } from './score.ts';
import type { TurnSource } from './turn-source.ts';

/** Places tried within each run of shifts in x. */
const TRIES_X = 6;
/** Disturbance smaller than this is none. */
const NOTHING = 1e-9;

/** What speaks against a grid. */
export interface Worth {
  readonly disturbance: number;
  readonly offCentre: number;
}

/** A grid of the fewest sheets with what speaks against it. */
export interface Preference extends Worth {
  readonly shift: Vec;
  readonly cells: readonly Cell[];
}

export interface PreferenceLimits {
  /** Sheets. */
  readonly most: number;
  /** Shifts in y to try besides the even steps. */
  readonly extra: readonly number[];
  /** Even steps in y over one period. */
  readonly tries: number;
  /** Only what is better than this is wanted. */
  readonly toBeat: Worth;
}

/**
 * Among all grids at one turn, by its index, that need no more than `most` sheets, the one whose seams disturb least, and then the
 * one in which the pattern lies most evenly on its sheets.
 */
export function preferredShift(
  source: TurnSource,
  index: number,
  keepOffAt: (turn: number) => KeepOff,
  tile: Tile,
  { most, extra, tries, toBeat }: PreferenceLimits,
): Preference | undefined {
  if (leastToReachAnywhere(source.extents[index]!, tile) > most) return undefined;
  const turn = source.turns[index]!;
  const some = source.someAt(turn);
  if (leastForced(forcedCounts(some, tile, 0, 0, tile.stepY / 2)) > most) return undefined;
  const content = source.at(turn);
  const { box } = content;
  const keepOff = keepOffAt(turn);
  let worst = toBeat;
  let best: Preference | undefined;
  for (const y of shiftsToTry(box.minY, box.maxY, tile.stepY, tries, extra)) {
    if (!isBetter(bestAt(keepOff, box, tile, y, most), worst)) continue;
    for (const { from, to, cells } of placingsAt(content, tile, y, () => most)) {
      const sheets = { cells, seams: seamsBetween(cells), reach: reachOf(cells) };
      for (const x of shiftsWithin(from, to, box, tile)) {
        const worth = worthOf(keepOff, box, tile, sheets, { x, y }, worst);
        if (!isBetter(worth, worst)) continue;
        best = { ...worth, shift: { x, y }, cells };
        worst = worth;
      }
    }
  }
  return best;
}

interface Sheets {
  readonly seams: readonly CellSeam[];
  /** The least and greatest column and row. */
  readonly reach: Box;
}

/** The disturbance is counted only as far as it can be better than `worst`. */
function worthOf(
  keepOff: KeepOff,
  box: Box,
  tile: Tile,
  { seams, reach }: Sheets,
  shift: Vec,
  worst: Worth,
): Worth {
  const away = offCentre(box, reach, tile, shift);
  const most = worst.disturbance + (away < worst.offCentre ? NOTHING : -NOTHING);
  return {
    disturbance: most < 0 ? Infinity : disturbance(keepOff, seams, tile, shift, most),
    offCentre: away,
  };
}

export function isBetter(a: Worth, b: Worth): boolean {
  if (Math.abs(a.disturbance - b.disturbance) > NOTHING) return a.disturbance < b.disturbance;
  return a.offCentre < b.offCentre - NOTHING;
}

/** No shift in x can be worth more than this for one shift in y. */
function bestAt(keepOff: KeepOff, box: Box, tile: Tile, shiftY: number, most: number): Worth {
  const place = ((box.minY + box.maxY) / 2 - shiftY) / tile.stepY;
  const reach = cellsReached(box, tile, 0, shiftY);
  // As many rows as sheets: one column.
  const isColumn = reach.maxY - reach.minY + 1 === most;
  return {
    disturbance: isColumn ? leastOfColumn(keepOff, box, reach, tile, shiftY) - NOTHING : 0,
    offCentre: Math.abs(place - Math.round(2 * place) / 2),
  };
}

function reachOf(cells: readonly Cell[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { column, row } of cells) {
    minX = Math.min(minX, column);
    maxX = Math.max(maxX, column);
    minY = Math.min(minY, row);
    maxY = Math.max(maxY, row);
  }
  return { minX, minY, maxX, maxY };
}

/** Even steps over one period, and the shifts that put the content in the middle of an even or odd run of sheets. */
function shiftsToTry(
  low: number,
  high: number,
  step: number,
  tries: number,
  extra: readonly number[],
): number[] {
  const middle = (low + high) / 2;
  const even = Array.from({ length: tries }, (_, i) => (i * step) / tries);
  return [middle, middle + step / 2, ...extra, ...even].map(
    (shift) => shift - step * Math.floor(shift / step),
  );
}

function shiftsWithin(from: number, to: number, box: Box, tile: Tile): number[] {
  const middle = (box.minX + box.maxX) / 2;
  const shifts = [middle, middle + tile.stepX / 2]
    .map((shift) => shift - tile.stepX * Math.floor(shift / tile.stepX))
    .filter((shift) => shift > from && shift < to);
  for (let i = 0; i < TRIES_X; i++) shifts.push(from + ((i + 0.5) / TRIES_X) * (to - from));
  return shifts;
}
