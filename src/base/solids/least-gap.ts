import {
  add3,
  CONTACT_TOLERANCE,
  distance3,
  POSITION_TOLERANCE,
  scale3,
  type Vec3,
} from '../../geometry/index.ts';
import type { Box3, Solid } from './api.ts';
import { boundsOf, boxesApart } from './bounds-of.ts';
import { type Closest, closestOfTriangles, closestOnTriangle } from './closest-points.ts';
import { facetsOf, type Triangle } from './facets.ts';

/** How far two solids are apart, mm; 0 when they touch or share wood. Further than `within` counts as that. */
export function leastGap(a: Solid, b: Solid, within = Infinity): number {
  // The box round both holds every pair of their points.
  const [p, q] = [boundsOf(a.body), boundsOf(b.body)];
  const apart = boxesApart(p, q);
  if (apart >= within) return within;
  return a.body.minGap(b.body, Math.min(within, reachOf(p, q)));
}

/** The middle between two solids where they come nearest, in the world; where two faces are parallel, in the middle of what lies opposite. */
export function placeOfLeastGap(a: Solid, b: Solid): Vec3 {
  const gap = leastGap(a, b);
  const most = gap + CONTACT_TOLERANCE;
  const [p, q] = [nearFacets(a, boundsOf(b.body), most), nearFacets(b, boundsOf(a.body), most)];
  const found = p.flatMap((facet) =>
    q
      .filter((other) => boxesApart(facet.box, other.box) <= most)
      .map((other) => closestOfTriangles(facet.triangle, other.triangle))
      .filter(({ distance }) => distance <= most),
  );
  const middles = found.map(({ a: from, b: to }) => scale3(add3(from, to), 0.5));
  const mean = scale3(middles.reduce(add3, { x: 0, y: 0, z: 0 }), 1 / middles.length);
  const reach = (facets: readonly Facet[]): number =>
    Math.min(...facets.map(({ triangle }) => distance3(mean, closestOnTriangle(mean, triangle))));
  if (reach(p) + reach(q) <= most) return mean;
  const least = found.reduce<Closest>(
    (best, each) => (each.distance < best.distance ? each : best),
    found[0]!,
  );
  return scale3(add3(least.a, least.b), 0.5);
}

interface Facet {
  readonly triangle: Triangle;
  readonly box: Box3;
}

/** Those facets of a solid that may come near enough to a box. */
const nearFacets = ({ body }: Solid, to: Box3, most: number): readonly Facet[] =>
  facetsOf(body)
    .map((triangle) => ({ triangle, box: boxOf(triangle) }))
    .filter(({ box }) => boxesApart(box, to) <= most + POSITION_TOLERANCE);

function boxOf(corners: Triangle): Box3 {
  const ends = (pick: (p: Vec3) => number): readonly [number, number] => [
    Math.min(...corners.map(pick)),
    Math.max(...corners.map(pick)),
  ];
  const [x, y, z] = [ends((p) => p.x), ends((p) => p.y), ends((p) => p.z)];
  return { min: { x: x[0], y: y[0], z: z[0] }, max: { x: x[1], y: y[1], z: z[1] } };
}

function reachOf(p: Box3, q: Box3): number {
  const low = (axis: 'x' | 'y' | 'z'): number => Math.min(p.min[axis], q.min[axis]);
  const high = (axis: 'x' | 'y' | 'z'): number => Math.max(p.max[axis], q.max[axis]);
  return 1 + Math.hypot(high('x') - low('x'), high('y') - low('y'), high('z') - low('z'));
}
