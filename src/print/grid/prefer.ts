import type { Vec } from '../../geometry/index.ts';
import type { Cell } from './cover.ts';
import { placingsAt, type TurnSource } from './fewest.ts';
import { forcedCounts, leastForced, type Tile } from './forced.ts';
import type { TurnedContent } from './pieces.ts';
import { disturbance, type KeepOff, offCentre } from './score.ts';

/** Places tried within each run of shifts in x. */
const TRIES_X = 6;
/** Disturbance smaller than this is none. */
const NOTHING = 1e-9;

/** A grid of the fewest sheets with what speaks against it. */
export interface Preference {
  readonly shift: Vec;
  readonly cells: readonly Cell[];
  readonly disturbance: number;
  readonly offCentre: number;
}

export interface PreferenceLimits {
  /** Sheets. */
  readonly most: number;
  /** Shifts in y to try besides the even steps. */
  readonly extra: readonly number[];
  /** Even steps in y over one period. */
  readonly tries: number;
}

/**
 * Among all grids at one turn that need no more than `most` sheets, the one whose seams disturb least, and then the one
 * in which the pattern lies most evenly on its sheets.
 */
export function preferredShift(
  source: TurnSource,
  turn: number,
  keepOff: KeepOff,
  tile: Tile,
  { most, extra, tries }: PreferenceLimits,
): Preference | undefined {
  const some = source.someAt(turn);
  if (leastForced(forcedCounts(some, tile, 0, 0, tile.stepY / 2)) > most) return undefined;
  const content = source.at(turn);
  let best: Preference | undefined;
  for (const shiftY of shiftsToTry(content.box.minY, content.box.maxY, tile.stepY, tries, extra)) {
    if (leastForced(forcedCounts(some, tile, shiftY, 0, 0)) > most) continue;
    for (const { from, to, cells } of placingsAt(content, tile, shiftY, () => most)) {
      for (const shiftX of shiftsWithin(from, to, content, tile)) {
        const shift = { x: shiftX, y: shiftY };
        const worth = best === undefined ? Infinity : best.disturbance + NOTHING;
        const option = {
          shift,
          cells,
          disturbance: disturbance(keepOff, cells, tile, shift, worth),
          offCentre: offCentre(content, cells, tile, shift),
        };
        if (best === undefined || isBetter(option, best)) best = option;
      }
    }
  }
  return best;
}

export function isBetter(
  a: Pick<Preference, 'disturbance' | 'offCentre'>,
  b: Pick<Preference, 'disturbance' | 'offCentre'>,
): boolean {
  if (Math.abs(a.disturbance - b.disturbance) > NOTHING) return a.disturbance < b.disturbance;
  return a.offCentre < b.offCentre - NOTHING;
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

function shiftsWithin(from: number, to: number, content: TurnedContent, tile: Tile): number[] {
  const inside = Array.from({ length: TRIES_X }, (_, i) => from + ((i + 0.5) / TRIES_X) * (to - from));
  const middle = (content.box.minX + content.box.maxX) / 2;
  const centred = [middle, middle + tile.stepX / 2]
    .map((shift) => shift - tile.stepX * Math.floor(shift / tile.stepX))
    .filter((shift) => shift > from && shift < to);
  return [...centred, ...inside];
}
