import type { Outline } from '../api.ts';
import { VERTEX_SNAP } from '../tolerance.ts';

/** Vertices are put in order along this direction, which no outline runs along. */
const ACROSS_X = Math.cos(0.4901);
const ACROSS_Y = Math.sin(0.4901);

/** Are no two vertices of loops nearer to each other than VERTEX_SNAP, unless they are one? */
export function verticesStandApart(loops: readonly Outline[]): boolean {
  const vertices = loops
    .flatMap(({ edges }) =>
      edges.map(({ from: { x, y } }) => ({ x, y, across: ACROSS_X * x + ACROSS_Y * y })),
    )
    .sort((a, b) => a.across - b.across);
  return vertices.every((a, i) => {
    for (let k = i + 1; k < vertices.length; k++) {
      const b = vertices[k]!;
      if (b.across - a.across > 1.01 * VERTEX_SNAP) break;
      const square = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
      if (square > 0 && square < VERTEX_SNAP * VERTEX_SNAP) return false;
    }
    return true;
  });
}
