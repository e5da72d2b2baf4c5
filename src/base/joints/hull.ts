import { cross, subtract, type Vec } from '../../geometry/index.ts';

/** Corners of the convex hull of points, anticlockwise (Andrew's monotone chain). */
export function hullOf(points: readonly Vec[]): readonly Vec[] {
  const sorted = points.toSorted((p, q) => p.x - q.x || p.y - q.y);
  return [...halfHull(sorted), ...halfHull(sorted.toReversed())];
}

/** One side of the hull, without its last point. */
function halfHull(sorted: readonly Vec[]): readonly Vec[] {
  const chain: Vec[] = [];
  for (const p of sorted) {
    while (chain.length > 1) {
      const [before, last] = [chain.at(-2)!, chain.at(-1)!];
      if (cross(subtract(last, before), subtract(p, last)) > 0) break;
      chain.pop();
    }
    chain.push(p);
  }
  return chain.slice(0, -1);
}
