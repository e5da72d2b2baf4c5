import { add3, cross3, distance3, dot3, scale3, subtract3, type Vec3 } from '../../geometry/index.ts';
import type { Triangle } from './facets.ts';

/** Where two things come nearest to each other, mm. */
export interface Closest {
  readonly a: Vec3;
  readonly b: Vec3;
  readonly distance: number;
}

/**
 * Where two triangles that do not cut each other come nearest: at an end of one of them over the other, or between two of their sides
 * (Ericson, Real-Time Collision Detection, 2005, 5.1).
 */
export function closestOfTriangles(p: Triangle, q: Triangle): Closest {
  const found: Closest[] = [];
  const add = (a: Vec3, b: Vec3): void => void found.push({ a, b, distance: distance3(a, b) });
  for (const corner of p) add(corner, closestOnTriangle(corner, q));
  for (const corner of q) add(closestOnTriangle(corner, p), corner);
  for (const [a, b] of sidesOf(p)) for (const [c, d] of sidesOf(q)) add(...closestOfSegments(a, b, c, d));
  return found.reduce((best, each) => (each.distance < best.distance ? each : best));
}

const sidesOf = ([a, b, c]: Triangle): readonly (readonly [Vec3, Vec3])[] => [
  [a, b],
  [b, c],
  [c, a],
];

/** The point of a triangle nearest to a point: straight under it where that lies inside, otherwise on the nearest side. */
export function closestOnTriangle(p: Vec3, triangle: Triangle): Vec3 {
  const [a, b, c] = triangle;
  const out = cross3(subtract3(b, a), subtract3(c, a));
  const square = dot3(out, out);
  const isInside =
    square > 0 &&
    sidesOf(triangle).every(([from, to]) => dot3(cross3(subtract3(to, from), subtract3(p, from)), out) >= 0);
  if (isInside) return subtract3(p, scale3(out, dot3(subtract3(p, a), out) / square));
  return sidesOf(triangle)
    .map(([from, to]) => closestOnSegment(p, from, to))
    .reduce((best, each) => (distance3(p, each) < distance3(p, best) ? each : best));
}

function closestOnSegment(p: Vec3, from: Vec3, to: Vec3): Vec3 {
  const along = subtract3(to, from);
  const square = dot3(along, along);
  return square === 0 ? from : add3(from, scale3(along, clamp(dot3(subtract3(p, from), along) / square)));
}

function closestOfSegments(a: Vec3, b: Vec3, c: Vec3, d: Vec3): [Vec3, Vec3] {
  const [u, v, w] = [subtract3(b, a), subtract3(d, c), subtract3(a, c)];
  const [uu, uv, vv, uw, vw] = [dot3(u, u), dot3(u, v), dot3(v, v), dot3(u, w), dot3(v, w)];
  const across = uu * vv - uv * uv;
  // Of parallel ones the ends decide, which are tried apart from this.
  const s = across > 0 ? clamp((uv * vw - vv * uw) / across) : 0;
  const on = closestOnSegment(add3(a, scale3(u, s)), c, d);
  return [closestOnSegment(on, a, b), on];
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
