import type { Edge, Region, Vec } from '../api.ts';
import { subtractRegions, uniteRegions } from '../boolean/booleans.ts';
import { loopsOf } from '../boolean/combine.ts';
import { directionAt, line } from '../edge.ts';
import { ANGLE_TOLERANCE } from '../tolerance.ts';
import { add, cross, dot, scale } from '../vec.ts';

/**
 * A round offset with its corners run out to points: to the round offset of `regions` by `by`, the kite between each corner, the
 * ends of its two parallels and the point where they would meet is added (or taken away, when shrinking).
 */
export function mitreRegions(
  regions: readonly Region[],
  round: readonly Region[],
  by: number,
  limit: number,
): Region[] {
  const kites: Region[] = [];
  for (const { edges } of loopsOf(regions)) {
    edges.forEach((edge, i) => {
      const kite = kiteAt(edge, edges[(i + 1) % edges.length]!, by, limit);
      if (kite !== undefined) kites.push(kite);
    });
  }
  if (kites.length === 0) return [...round];
  return by > 0 ? uniteRegions(round, kites) : subtractRegions(round, kites);
}

function kiteAt(before: Edge, after: Edge, by: number, limit: number): Region | undefined {
  const corner = before.to;
  const t = directionAt(before, 1);
  const u = directionAt(after, 0);
  const turned = cross(t, u) * Math.sign(by);
  const along = dot(t, u);
  // The point stands at |by| / cos(half the turn) from the corner.
  const halfCosine = Math.sqrt(Math.max(0, (1 + along) / 2));
  if (!(turned > ANGLE_TOLERANCE) || halfCosine * limit < 1) return undefined;
  const p = add(corner, rightOf(t, by));
  const q = add(corner, rightOf(u, by));
  const point = add(corner, scale(add(rightOf(t, by), rightOf(u, by)), 1 / (1 + along)));
  const loop = [
    line(corner, p, before.tag),
    line(p, point, before.tag),
    line(point, q, after.tag),
    line(q, corner, after.tag),
  ];
  const edges = by > 0 ? loop : loop.reverse().map((edge) => line(edge.to, edge.from, edge.tag));
  return { outer: { edges }, holes: [] };
}

function rightOf(t: Vec, by: number): Vec {
  return { x: t.y * by, y: -t.x * by };
}
