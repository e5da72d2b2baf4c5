import type { EdgeTag } from '../api.ts';
import { FAIRING_TOLERANCE } from '../tolerance.ts';
import { type ArcFit, arcsAlongCubic } from './arcs-along-cubic.ts';
import { type Cubic, directionOfCubic } from './cubic.ts';

/**
 * Few tangent-continuous arcs within a tolerance (mm) of a cubic Bézier curve. They start and end exactly at its ends and in
 * its own directions there, so that curves which join smoothly stay so. A kink within the curve (a cusp) stays a kink;
 * a curve of no size gives no edges. Throws a RangeError for numbers that are not finite.
 */
export function fitArcsToBezier(cubic: Cubic, tag: EdgeTag, tolerance: number = FAIRING_TOLERANCE): ArcFit {
  if (!(tolerance > 0)) throw new RangeError(`the tolerance of a fit must be positive, not ${tolerance}`);
  for (const { x, y } of [cubic.p0, cubic.p1, cubic.p2, cubic.p3]) {
    if (!Number.isFinite(x) || !Number.isFinite(y)) throw new RangeError(`(${x}, ${y}) is no control point`);
  }
  const ends = { leaving: directionOfCubic(cubic, 0), arriving: directionOfCubic(cubic, 1) };
  return arcsAlongCubic(cubic, ends, tolerance, tag);
}
