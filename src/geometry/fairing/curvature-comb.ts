import type { Edge, Vec } from '../api.ts';
import { curvatureOf, directionAt, lengthOf, pointAt } from '../edge.ts';
import { leftOf } from '../vec.ts';

/** One tooth of a comb. */
export interface CombTooth {
  /** On the curve. */
  readonly foot: Vec;
  /** Off the curve on the outside of its bend, by curvature times scale. */
  readonly tip: Vec;
  /** 1/mm, positive where the curve turns left. */
  readonly curvature: number;
}

/**
 * Teeth square to a run of edges, as long as the curvature there times a scale (mm²), by which the eye judges whether it is
 * fair: tips of a fair curve rise and fall in few steps and cross it only where it is meant to turn the other way. Teeth stand
 * at both ends of every edge and between them no farther apart than `step` (mm, positive).
 */
export function curvatureComb(edges: readonly Edge[], scale: number, step: number): CombTooth[] {
  if (!(step > 0)) throw new RangeError(`teeth need a positive distance, not ${step}`);
  const teeth: CombTooth[] = [];
  for (const edge of edges) {
    const long = lengthOf(edge);
    if (long === 0) continue;
    const curvature = curvatureOf(edge);
    const gaps = Math.max(1, Math.ceil(long / step));
    for (let i = 0; i <= gaps; i++) {
      const foot = pointAt(edge, i / gaps);
      const out = leftOf(directionAt(edge, i / gaps));
      const high = -curvature * scale;
      teeth.push({ foot, tip: { x: foot.x + high * out.x, y: foot.y + high * out.y }, curvature });
    }
  }
  return teeth;
}
