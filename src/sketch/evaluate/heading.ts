import { polar, type Vec } from '../../geometry/index.ts';

/** Rounding of a quarter turn (rad) stays below this share of its sine. */
const NEARLY_NONE = 1e-15;

/** Unit vector in a direction (rad), exact along the axes: 90° leads straight up, not 6e-17 aside. */
export function headingOf(angle: number): Vec {
  const { x, y } = polar(angle);
  if (Math.abs(x) < NEARLY_NONE) return { x: 0, y: Math.sign(y) };
  if (Math.abs(y) < NEARLY_NONE) return { x: Math.sign(x), y: 0 };
  return { x, y };
}
