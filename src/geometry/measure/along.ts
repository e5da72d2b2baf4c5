import type { Outline, Vec } from '../api.ts';
import { directionAt, lengthOf, pointAt } from '../edge.ts';
import { nearestOnEdges } from './nearest.ts';
import { perimeterOfOutline } from './perimeter.ts';

/** A place on an outline. */
export interface PlaceAlong {
  /** Which edge. */
  readonly index: number;
  /** Share of that edge's length, in [0, 1]. */
  readonly t: number;
  readonly point: Vec;
  /** Unit direction of travel. */
  readonly direction: Vec;
}

/**
 * The place a distance s (mm) along a loop from the start of its first edge, going round as often as needed
 * (backwards when negative). Throws a RangeError when the loop has no length or s is not finite.
 */
export function placeAlong(outline: Outline, s: number): PlaceAlong {
  const round = perimeterOfOutline(outline);
  if (!(round > 0) || !Number.isFinite(s))
    throw new RangeError(`no place ${s} mm along a loop of ${round} mm`);
  let left = s - round * Math.floor(s / round);
  let index = 0;
  let t = 1;
  for (const [at, edge] of outline.edges.entries()) {
    const long = lengthOf(edge);
    if (long === 0) continue;
    index = at;
    t = Math.min(1, left / long);
    if (left < long) break;
    left -= long;
  }
  const edge = outline.edges[index]!;
  return { index, t, point: pointAt(edge, t), direction: directionAt(edge, t) };
}

/** The point a distance s (mm) along a loop; see placeAlong. */
export function pointAlong(outline: Outline, s: number): Vec {
  return placeAlong(outline, s).point;
}

/** How far along the loop, mm from the start of its first edge, its nearest place to p lies: in [0, perimeter). */
export function distanceAlong(outline: Outline, p: Vec): number {
  const { index, t } = nearestOnEdges(outline.edges, p);
  let along = t * lengthOf(outline.edges[index]!);
  for (const edge of outline.edges.slice(0, index)) along += lengthOf(edge);
  return along;
}
