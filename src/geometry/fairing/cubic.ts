import type { Vec } from '../api.ts';
import { between, cross, dot, length, scale, subtract, unit } from '../vec.ts';

/** A cubic Bézier curve: ends and the two control points between, mm. */
export interface Cubic {
  readonly p0: Vec;
  readonly p1: Vec;
  readonly p2: Vec;
  readonly p3: Vec;
}

/** Point at parameter u in [0, 1]; the ends are returned exactly. */
export function pointOfCubic({ p0, p1, p2, p3 }: Cubic, u: number): Vec {
  if (u === 0) return p0;
  if (u === 1) return p3;
  const v = 1 - u;
  const a = v * v * v;
  const b = 3 * v * v * u;
  const c = 3 * v * u * u;
  const d = u * u * u;
  return { x: a * p0.x + b * p1.x + c * p2.x + d * p3.x, y: a * p0.y + b * p1.y + c * p2.y + d * p3.y };
}

/** First derivative with respect to u. */
export function velocityOfCubic({ p0, p1, p2, p3 }: Cubic, u: number): Vec {
  const v = 1 - u;
  const a = 3 * v * v;
  const b = 6 * v * u;
  const c = 3 * u * u;
  return {
    x: a * (p1.x - p0.x) + b * (p2.x - p1.x) + c * (p3.x - p2.x),
    y: a * (p1.y - p0.y) + b * (p2.y - p1.y) + c * (p3.y - p2.y),
  };
}

/** Second derivative with respect to u. */
function accelerationOfCubic({ p0, p1, p2, p3 }: Cubic, u: number): Vec {
  const v = 1 - u;
  return {
    x: 6 * v * (p2.x - 2 * p1.x + p0.x) + 6 * u * (p3.x - 2 * p2.x + p1.x),
    y: 6 * v * (p2.y - 2 * p1.y + p0.y) + 6 * u * (p3.y - 2 * p2.y + p1.y),
  };
}

/** Unit direction of travel; where the curve stands still, the one it comes from or goes to. NaN for a mere point. */
export function directionOfCubic(cubic: Cubic, u: number): Vec {
  const size = extentOfCubic(cubic);
  const velocity = velocityOfCubic(cubic, u);
  if (length(velocity) > size * STANDSTILL) return unit(velocity);
  const forward = u < 0.5 ? 1 : -1;
  const acceleration = scale(accelerationOfCubic(cubic, u), forward);
  if (length(acceleration) > size * STANDSTILL) return unit(acceleration);
  return unit(subtract(cubic.p3, cubic.p0));
}

/** Signed curvature, 1/mm, positive turning left, and how it changes along the curve, 1/mm². */
export function curvatureOfCubic(
  cubic: Cubic,
  u: number,
): { readonly curvature: number; readonly change: number } {
  const first = velocityOfCubic(cubic, u);
  const second = accelerationOfCubic(cubic, u);
  const { p0, p1, p2, p3 } = cubic;
  const third = {
    x: 6 * (p3.x - 3 * p2.x + 3 * p1.x - p0.x),
    y: 6 * (p3.y - 3 * p2.y + 3 * p1.y - p0.y),
  };
  const speed = length(first);
  const turn = cross(first, second);
  const curvature = turn / speed ** 3;
  const change = cross(first, third) / speed ** 4 - (3 * turn * dot(first, second)) / speed ** 6;
  return { curvature, change };
}

/** The stretch of the curve between two parameters, as a cubic of its own. */
export function stretchOfCubic(cubic: Cubic, from: number, to: number): Cubic {
  const p0 = pointOfCubic(cubic, from);
  const p3 = pointOfCubic(cubic, to);
  const third = (to - from) / 3;
  const a = velocityOfCubic(cubic, from);
  const b = velocityOfCubic(cubic, to);
  return {
    p0,
    p1: { x: p0.x + third * a.x, y: p0.y + third * a.y },
    p2: { x: p3.x - third * b.x, y: p3.y - third * b.y },
    p3,
  };
}

/** Largest side of the box round the control points, mm: the curve is no larger. */
export function extentOfCubic({ p0, p1, p2, p3 }: Cubic): number {
  const width = Math.max(p0.x, p1.x, p2.x, p3.x) - Math.min(p0.x, p1.x, p2.x, p3.x);
  const height = Math.max(p0.y, p1.y, p2.y, p3.y) - Math.min(p0.y, p1.y, p2.y, p3.y);
  return Math.max(width, height);
}

/** A quadratic Bézier curve raised to the cubic that is the same curve. */
export function cubicOfQuadratic(p0: Vec, control: Vec, p3: Vec): Cubic {
  return { p0, p1: between(p0, control, 2 / 3), p2: between(p3, control, 2 / 3), p3 };
}

/** Speed below this share of the curve's size is rounding. */
const STANDSTILL = 1e-9;
