import type { Edge, Vec } from '../api.ts';
import { distanceToCarrier } from '../intersect/carriers.ts';
import { intersectEdges } from '../intersect/intersect-edges.ts';
import type { Meeting } from '../intersect/outcome.ts';
import { CARRIER_TOLERANCE, POSITION_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import { add, distance, dot, length, middle, scale, subtract } from '../vec.ts';
import type { Fault } from './fault.ts';
import type { PlacedLoop } from './placed-loop.ts';
import { forTouchingEdges, type PlacedEdge } from './touching-edges.ts';

/** Well below what the kernel takes for a touch, so that what it keeps apart by a hair is not called one. */
const TOUCH = CARRIER_TOLERANCE / 10;

/** Places where a loop meets itself, or crosses or runs along another. */
export function findCrossings(loops: readonly PlacedLoop[]): Fault[] {
  const faults: Fault[] = [];
  forTouchingEdges(loops, (a, b) => {
    const fault = faultBetween(a, b);
    if (fault !== undefined) faults.push(fault);
  });
  return faults;
}

function faultBetween(a: PlacedEdge, b: PlacedEdge): Fault | undefined {
  const found = intersectEdges(a.edge, b.edge, TOUCH);
  const sameLoop = a.loop === b.loop;
  switch (found.kind) {
    case 'none':
      return undefined;
    case 'tangent':
      return sameLoop ? faultAt(a, b, found.at.point, 'touches') : undefined;
    case 'overlap': {
      const stretch = found.stretches[0]!;
      // Near a smooth joint two edges cannot be told apart for a little way.
      if (sameLoop && distance(stretch.from.point, stretch.to.point) <= POSITION_TOLERANCE) return undefined;
      return faultAt(a, b, stretch.from.point, 'runs along');
    }
    case 'points': {
      const wrong = sameLoop
        ? found.points.find((meeting) => !isJoint(a, b, meeting))
        : found.points.find((meeting, k) => isCrossing(a.edge, b.edge, meeting, found.points, k));
      return wrong && faultAt(a, b, wrong.point, 'crosses');
    }
    default:
      return found satisfies never;
  }
}

/**
 * Is the meeting where one edge hands over to the next? Edges that leave their joint in nearly one direction are not told
 * apart until they have parted.
 */
function isJoint(a: PlacedEdge, b: PlacedEdge, { point }: Meeting): boolean {
  const count = a.loop.edges.length;
  const near = (joint: Vec): boolean =>
    distance(joint, point) <= POSITION_TOLERANCE ||
    parted(a.edge, b.edge, middle(joint, point)) <= VERTEX_SNAP;
  if ((a.number + 1) % count === b.number && near(b.edge.from)) return true;
  return (b.number + 1) % count === a.number && near(a.edge.from);
}

/** How far the carriers of two edges lie apart at p, a place beside both, mm. */
function parted(a: Edge, b: Edge, p: Vec): number {
  return distance(footOn(a, p), footOn(b, p));
}

/** The place of an edge's whole line or circle that is nearest to p. */
function footOn(edge: Edge, p: Vec): Vec {
  if (edge.kind === 'arc') {
    const q = subtract(p, edge.centre);
    return add(edge.centre, scale(q, edge.radius / length(q)));
  }
  const u = subtract(edge.to, edge.from);
  return add(edge.from, scale(u, dot(u, subtract(p, edge.from)) / dot(u, u)));
}

/**
 * Do edges of different loops pass through each other at the k-th place they share? Not where one ends, nor between two such places, or the
 * end of one on the other and such a place, between which they have not parted: what overlaps by less than can be told touches, for
 * the booleans too, which make one vertex of it.
 */
function isCrossing(
  a: Edge,
  b: Edge,
  { point, onA, onB }: Meeting,
  all: readonly Meeting[],
  k: number,
): boolean {
  if (onA === 0 || onA === 1 || onB === 0 || onB === 1) return false;
  const oneTouch = (other: Meeting | undefined): boolean =>
    other !== undefined && parted(a, b, middle(other.point, point)) <= VERTEX_SNAP;
  if (oneTouch(all[k - 1]) || oneTouch(all[k + 1])) return false;
  const ends = [
    [a.from, b],
    [a.to, b],
    [b.from, a],
    [b.to, a],
  ] as const;
  return !ends.some(
    ([end, other]) =>
      distanceToCarrier(other, end) <= VERTEX_SNAP && parted(a, b, middle(end, point)) <= VERTEX_SNAP,
  );
}

function faultAt(a: PlacedEdge, b: PlacedEdge, at: Vec, how: string): Fault {
  const same = a.loop === b.loop;
  const other = same
    ? `edge ${b.number}`
    : `edge ${b.number} of loop ${b.loop.loop} of region ${b.loop.region}`;
  return {
    kind: same ? 'self-crossing' : 'crossing',
    at,
    region: a.loop.region,
    loop: a.loop.loop,
    edge: a.number,
    message: `edge ${a.number} of loop ${a.loop.loop} of region ${a.loop.region} ${how} ${other}`,
  };
}
