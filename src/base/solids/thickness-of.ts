import type { Manifold } from 'manifold-3d';
import { cross3, dot3, length3, scale3, subtract3, type Vec3 } from '../../geometry/index.ts';
import { facetsOf, type Triangle } from './facets.ts';
import { withScratch } from './scratch.ts';

/** Facets narrower than this share of their longest side have no sure direction. */
const SLIVER = 1e-6;

/** Directions whose cosine is nearer to 1 than this are one. */
const SAME_DIRECTION = 1e-9;

/** A body whose hull holds more than this many times its volume is a shell or bent, and has no one thickness. */
const BULKY = 1.5;

/**
 * How thick a body is, mm: the least distance between two planes parallel to one of its faces that hold it between them. Of a body bent so much that
 * such planes say nothing it is the mean thickness of its walls, twice the volume over the surface, where that is less.
 */
export function thicknessOf(body: Manifold): number {
  const facets = facetsOf(body);
  const corners = [...new Set(facets.flat())];
  const least = Math.min(...directionsOf(facets).map((out) => widthAlong(corners, out)));
  const full = withScratch((keep) => keep(body.hull()).volume());
  if (full <= BULKY * body.volume()) return least;
  return Math.min(least, (2 * body.volume()) / body.surfaceArea());
}

function widthAlong(corners: readonly Vec3[], out: Vec3): number {
  let [low, high] = [Infinity, -Infinity];
  for (const corner of corners) {
    const at = dot3(corner, out);
    if (at < low) low = at;
    if (at > high) high = at;
  }
  return high - low;
}

/** Directions of the faces, each once, opposite ones as one. */
function directionsOf(facets: readonly Triangle[]): readonly Vec3[] {
  const found: Vec3[] = [];
  for (const [a, b, c] of facets) {
    const [ab, ac] = [subtract3(b, a), subtract3(c, a)];
    const out = cross3(ab, ac);
    const size = length3(out);
    const long = Math.max(length3(ab), length3(ac), length3(subtract3(c, b)));
    if (size <= SLIVER * long * long) continue;
    const unit = scale3(out, 1 / size);
    if (!found.some((other) => Math.abs(dot3(other, unit)) > 1 - SAME_DIRECTION)) found.push(unit);
  }
  return found;
}
