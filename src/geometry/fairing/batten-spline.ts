import type { Vec } from '../api.ts';
import { distance } from '../vec.ts';
import type { EndDirections } from './arcs-along-cubic.ts';
import type { Cubic } from './cubic.ts';

/**
 * The C2 cubic spline through nails with chord length as parameter, one cubic from nail to nail: the shape of least
 * bending (to first order) of a thin batten. A free end has no curvature; a given end direction (unit) is held.
 * Needs two nails or more, neighbours apart.
 * Source: C. de Boor, A Practical Guide to Splines, chapter IV (equations for the slopes, from memory).
 */
export function battenSpline(nails: readonly Vec[], ends: EndDirections): Cubic[] {
  const chords = nails.slice(1).map((nail, i) => distance(nails[i]!, nail));
  const slopesX = slopesOf(
    nails.map(({ x }) => x),
    chords,
    ends.leaving?.x,
    ends.arriving?.x,
  );
  const slopesY = slopesOf(
    nails.map(({ y }) => y),
    chords,
    ends.leaving?.y,
    ends.arriving?.y,
  );
  return chords.map((chord, i) => {
    const p0 = nails[i]!;
    const p3 = nails[i + 1]!;
    const third = chord / 3;
    return {
      p0,
      p1: { x: p0.x + third * slopesX[i]!, y: p0.y + third * slopesY[i]! },
      p2: { x: p3.x - third * slopesX[i + 1]!, y: p3.y - third * slopesY[i + 1]! },
      p3,
    };
  });
}

/** Slopes of the interpolating spline of one coordinate: a tridiagonal, diagonally dominant system, solved in one pass. */
function slopesOf(
  values: readonly number[],
  chords: readonly number[],
  first?: number,
  last?: number,
): number[] {
  const end = chords.length;
  const rise = chords.map((chord, i) => (values[i + 1]! - values[i]!) / chord);
  const upper: number[] = [];
  const right: number[] = [];
  for (let i = 0; i <= end; i++) {
    let [below, centre, above, value] = [0, 1, 0, 0];
    if (i === 0) {
      if (first === undefined) [centre, above, value] = [2, 1, 3 * rise[0]!];
      else value = first;
    } else if (i === end) {
      if (last === undefined) [below, centre, value] = [1, 2, 3 * rise[end - 1]!];
      else value = last;
    } else {
      const before = chords[i - 1]!;
      const after = chords[i]!;
      [below, centre, above] = [after, 2 * (before + after), before];
      value = 3 * (after * rise[i - 1]! + before * rise[i]!);
    }
    const pivot = centre - below * (upper[i - 1] ?? 0);
    upper.push(above / pivot);
    right.push((value - below * (right[i - 1] ?? 0)) / pivot);
  }
  const slopes = [...right];
  for (let i = end - 1; i >= 0; i--) slopes[i] = right[i]! - upper[i]! * slopes[i + 1]!;
  return slopes;
}
