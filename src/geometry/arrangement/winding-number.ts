import type { Edge, Vec } from '../api.ts';
import { orientation } from '../orient.ts';

/**
 * How often a closed chain of edges winds anticlockwise round a point. A point exactly on an edge falls to one side or
 * the other. Crossings of a ray to the right are decided by heights alone, so that corners count once.
 */
export function windingNumber(edges: readonly Edge[], p: Vec): number {
  let winding = 0;
  for (const edge of edges) winding += crossingsOf(edge, p);
  return winding;
}

function crossingsOf(edge: Edge, p: Vec): number {
  const { from, to } = edge;
  if (edge.kind === 'line') {
    if (from.y <= p.y === to.y <= p.y) return 0;
    const side = orientation(from, to, p);
    return from.y <= p.y ? (side > 0 ? 1 : 0) : side < 0 ? -1 : 0;
  }
  return edge.turn > 0
    ? crossingsOfArc(from, to, edge.centre, edge.radius, p)
    : -crossingsOfArc(to, from, edge.centre, edge.radius, p);
}

/** Net upward crossings of the ray by an anticlockwise arc, walked from one side of the circle to the other. */
function crossingsOfArc(from: Vec, to: Vec, centre: Vec, radius: number, p: Vec): number {
  const dx = p.x - centre.x;
  const dy = p.y - centre.y;
  if (
    Math.abs(dy) > radius * 1.000001 &&
    Math.abs(from.y - centre.y) < radius &&
    Math.abs(to.y - centre.y) < radius
  )
    return 0;
  const within = dx * dx + dy * dy < radius * radius;
  const beforeRight = dx < 0 || within ? 1 : 0;
  const beforeLeft = dx < 0 && !within ? 1 : 0;
  let right = isRight(from, centre);
  const endsRight = isRight(to, centre);
  let level = from.y <= p.y ? 1 : 0;
  const last = to.y <= p.y ? 1 : 0;
  let count = 0;
  // Within one half of the circle the end lies ahead when it is anticlockwise of the start: heights alone cannot tell
  // a short arc at the top from one that goes nearly all the way round.
  const turned = (from.x - centre.x) * (to.y - centre.y) - (from.y - centre.y) * (to.x - centre.x);
  const endsAhead = turned > 0 || (turned === 0 && (from.x !== to.x || from.y !== to.y));
  // Over the top or under the bottom until the half is reached in which the arc ends ahead.
  for (let halves = 0; halves < 3; halves++) {
    if (right === endsRight && (halves > 0 || endsAhead)) break;
    const extreme = (right ? centre.y + radius : centre.y - radius) <= p.y ? 1 : 0;
    count += (level - extreme) * (right ? beforeRight : beforeLeft);
    level = extreme;
    right = !right;
  }
  return count + (level - last) * (right ? beforeRight : beforeLeft);
}

function isRight(p: Vec, centre: Vec): boolean {
  return p.x > centre.x || (p.x === centre.x && p.y < centre.y);
}
