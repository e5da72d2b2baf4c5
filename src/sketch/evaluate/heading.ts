import { FIGURE_ROUNDING, polar, type Vec } from '../../geometry/index.ts';

/** Unit vector in a direction (rad), exact along the axes: 90° leads straight up, not 6e-17 aside. */
export function headingOf(angle: number): Vec {
  const { x, y } = polar(angle);
  if (Math.abs(x) < FIGURE_ROUNDING) return { x: 0, y: Math.sign(y) };
  if (Math.abs(y) < FIGURE_ROUNDING) return { x: Math.sign(x), y: 0 };
  return { x, y };
}
