import { reals } from '../memory/lists.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { norm } from '../vec.ts';
import { type Pieces, SHAPE } from './pieces.ts';

/**
 * How far pieces reach across the direction in which most of them run: long slanting lines side by side have boxes that all lie upon each other, and are told
 * apart so.
 */
export interface Slabs {
  /** Least and greatest place of each piece across that direction, mm, a hair to the safe side; in a list that is released with the rest. */
  readonly slabs: Float64Array;
  /** How thick they are, added up, mm. */
  readonly thickness: number;
}

export function slabsOf(pieces: Pieces): Slabs {
  const { shape, turn, count } = pieces;
  // Directions doubled, so that to and fro are one.
  let x2 = 0;
  let y2 = 0;
  for (let i = 0, at = 0; i < count; i++, at += SHAPE) {
    const ux = shape[at + 2]! - shape[at]!;
    const uy = shape[at + 3]! - shape[at + 1]!;
    x2 += ux * ux - uy * uy;
    y2 += 2 * ux * uy;
  }
  const angle = Math.atan2(y2, x2) / 2;
  const nx = -Math.sin(angle);
  const ny = Math.cos(angle);
  const slabs = reals(2 * count);
  let thickness = 0;
  for (let i = 0, at = 0; i < count; i++, at += SHAPE) {
    const a = nx * shape[at]! + ny * shape[at + 1]!;
    const b = nx * shape[at + 2]! + ny * shape[at + 3]!;
    let hair = POSITION_TOLERANCE + 1e-12 * (Math.abs(a) + Math.abs(b));
    // Less than half a turn stands off its chord by no more than half of it.
    if (turn[i] !== 0)
      hair += POSITION_TOLERANCE + norm(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!) / 2;
    slabs[2 * i] = Math.min(a, b) - hair;
    slabs[2 * i + 1] = Math.max(a, b) + hair;
    thickness += slabs[2 * i + 1]! - slabs[2 * i]!;
  }
  return { slabs, thickness };
}
