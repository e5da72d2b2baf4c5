import type { Edge, Region, Vec } from '../api.ts';
import { orientation } from '../orient.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { distance, middle } from '../vec.ts';
import { nearestOnEdge } from './nearest.ts';

/**
 * Where p lies: `edge` within POSITION_TOLERANCE of a boundary, otherwise `inside` (in a region, not in its
 * hole) or `outside`. Sides of chords are decided exactly.
 */
export function locate(regions: readonly Region[], p: Vec): 'inside' | 'outside' | 'edge' {
  let inside = false;
  for (const { outer, holes } of regions) {
    let winding = 0;
    for (const loop of [outer, ...holes]) {
      for (const edge of loop.edges) {
        if (isOn(edge, p)) return 'edge';
        winding += windingOfEdge(edge, p);
      }
    }
    if (winding > 0) inside = true;
  }
  return inside ? 'inside' : 'outside';
}

/**
 * What an edge adds to the number of times its loop winds round p, once added up over the loop: the crossing of its
 * chord by the ray to the right of p, and for an arc whether p lies between arc and chord. For p off the edge.
 */
export function windingOfEdge(edge: Edge, p: Vec): number {
  const { from, to } = edge;
  const isWhole = from.x === to.x && from.y === to.y;
  if (edge.kind === 'arc') {
    const within = distance(p, edge.centre) < edge.radius;
    if (isWhole) return within ? edge.turn : 0;
    // Between arc and chord means in the disc and on the arc's side of the chord, however far the arc sweeps.
    const bulges = edge.turn * sideOf(from, to, p) < 0;
    const inSegment = within && bulges && isNearSegment(edge, p);
    return crossingOf(from, to, p) + (inSegment ? edge.turn : 0);
  }
  return crossingOf(from, to, p);
}

/**
 * Up to half a turn, nothing between arc and chord is further from the chord's middle than its ends. Asked because an arc may end a hair beside
 * its circle: the direction of a chord as short as that means nothing further away.
 */
function isNearSegment(arc: Extract<Edge, { kind: 'arc' }>, p: Vec): boolean {
  const { from, to, centre, turn } = arc;
  if (turn * orientation(from, to, centre) <= 0) return true;
  return distance(p, middle(from, to)) <= distance(from, to) / 2 + POSITION_TOLERANCE;
}

function crossingOf(from: Vec, to: Vec, p: Vec): number {
  if (from.y <= p.y === to.y <= p.y) return 0;
  const side = sideOf(from, to, p);
  if (from.y <= p.y) return side > 0 ? 1 : 0;
  return side < 0 ? -1 : 0;
}

/** Side of the chord; a point exactly on it counts as moved a trifle to the right, and far less than that upwards. */
function sideOf(from: Vec, to: Vec, p: Vec): number {
  return orientation(from, to, p) || from.y - to.y || to.x - from.x;
}

function isOn(edge: Edge, p: Vec): boolean {
  if (edge.kind === 'arc') {
    if (Math.abs(distance(edge.centre, p) - edge.radius) > 2 * POSITION_TOLERANCE) return false;
  } else {
    const reach = POSITION_TOLERANCE;
    if (p.x < Math.min(edge.from.x, edge.to.x) - reach || p.x > Math.max(edge.from.x, edge.to.x) + reach) {
      return false;
    }
    if (p.y < Math.min(edge.from.y, edge.to.y) - reach || p.y > Math.max(edge.from.y, edge.to.y) + reach) {
      return false;
    }
  }
  return nearestOnEdge(edge, p).distance <= POSITION_TOLERANCE;
}
