import type { Edge } from '../../src/geometry/index.ts';

/** Angle (rad) between the two longest sides of a wedge. */
export function measureLoop(edges: readonly Edge[]): number {
  const [a, b] = edges
    .map(({ from, to }) => ({ x: to.x - from.x, y: to.y - from.y }))
    .toSorted((p, q) => Math.hypot(q.x, q.y) - Math.hypot(p.x, p.y)) as [Vector, Vector];
  return Math.atan2(Math.abs(a.x * b.y - a.y * b.x), Math.abs(a.x * b.x + a.y * b.y));
}

interface Vector {
  readonly x: number;
  readonly y: number;
}
