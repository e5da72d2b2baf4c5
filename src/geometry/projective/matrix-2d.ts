import type { Projection } from './api.ts';

/** The six numbers a b c d e f that a page's flat transforms want (x ↦ ax + cy + e, y ↦ bx + dy + f), of a projection that keeps parallels. */
export function matrix2d([a, b, c, d, e, f, , , i]: Projection): readonly [
  number,
  number,
  number,
  number,
  number,
  number,
] {
  return [a / i, d / i, b / i, e / i, c / i, f / i];
}
