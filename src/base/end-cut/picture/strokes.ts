import { polar, type Vec, vec } from '../../../geometry/index.ts';
import type { Hand } from '../api.ts';
import type { PictureLine } from './api.ts';

export const handSign = (hand: Hand): 1 | -1 => (hand === 'right' ? 1 : -1);

export function line(
  what: PictureLine['what'],
  type: PictureLine['type'],
  points: readonly Vec[],
  closed = false,
): PictureLine {
  return { what, type, points, closed };
}

/** Chords of the arc that shows an angle. */
export function fan(from: number, turn: number, radius: number): readonly Vec[] {
  const steps = Math.max(2, Math.ceil(Math.abs(turn) / CHORD));
  return Array.from({ length: steps + 1 }, (_, i) => polar(from + (turn * i) / steps, radius));
}

/** rad: a chord of 3° strays from its arc by a three-thousandth of the radius. */
const CHORD = Math.PI / 60;

/** A zigzag where the work is broken off. */
export function breakLine(x: number, low: number, high: number, size: number): readonly Vec[] {
  const middle = (low + high) / 2;
  return [
    vec(x, low - size),
    vec(x, middle - size),
    vec(x - size, middle - size / 2),
    vec(x + size, middle + size / 2),
    vec(x, middle + size),
    vec(x, high + size),
  ];
}
