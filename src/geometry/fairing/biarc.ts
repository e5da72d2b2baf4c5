import type { Arc, Edge, EdgeTag, Line, Vec } from '../api.ts';
import { arc, line, reverseEdge } from '../edge.ts';
import { STRAIGHT_RADIUS } from '../tolerance.ts';
import { add, between, cross, dot, leftOf, scale, subtract, unit } from '../vec.ts';

/** Two edges that join two places at given directions without a kink. */
export interface Biarc {
  readonly first: Edge;
  readonly second: Edge;
  /** Direction of travel where they join. */
  readonly direction: Vec;
}

/**
 * The pair of arcs from `from`, leaving along the unit direction `leaving`, to `to`, arriving along `arriving`. The tangents
 * up to their joint are in the ratio given, first to second, and so nearly are the arcs. An arc flatter than STRAIGHT_RADIUS
 * becomes a line, and the other is made to touch it. Undefined when the places coincide or an arc would have to turn by a
 * quarter or more.
 * Source: K. M. Bolton, Biarc curves, Computer-Aided Design 7 (1975), 89–92 (formula from memory, checked by its tests).
 */
export function biarcBetween(
  from: Vec,
  leaving: Vec,
  to: Vec,
  arriving: Vec,
  ratio: number,
  tag: EdgeTag,
): Biarc | undefined {
  const chord = subtract(to, from);
  const spread = subtract(leaving, arriving);
  const b = 2 * (ratio * dot(chord, leaving) + dot(chord, arriving));
  const squared = dot(chord, chord);
  const root = Math.sqrt(b * b + 4 * ratio * dot(spread, spread) * squared);
  const reach = (2 * squared) / (b + root);
  if (!(b > 0) || !Number.isFinite(reach)) return undefined;
  const a = { x: from.x + ratio * reach * leaving.x, y: from.y + ratio * reach * leaving.y };
  const c = { x: to.x - reach * arriving.x, y: to.y - reach * arriving.y };
  const joint = between(a, c, ratio / (1 + ratio));
  const direction = unit(subtract(c, a));
  if (!(dot(leaving, direction) > 0 && dot(direction, arriving) > 0)) return undefined;
  const first = edgeLeaving(from, leaving, joint, tag);
  const second = edgeArriving(joint, to, arriving, tag);
  const isMixed = first.kind !== second.kind;
  const touching = isMixed && touchingPair(first.kind === 'line', from, leaving, to, arriving, tag);
  return touching || { first, second, direction };
}

/** A line and an arc without a kink; a line in place of an arc of any radius would leave one of half the arc's turn at both its ends. */
function touchingPair(
  lineFirst: boolean,
  from: Vec,
  leaving: Vec,
  to: Vec,
  arriving: Vec,
  tag: EdgeTag,
): Biarc | undefined {
  if (!lineFirst) {
    const back = touchingPair(true, to, scale(arriving, -1), from, scale(leaving, -1), tag);
    return back && { first: reverseEdge(back.second), second: reverseEdge(back.first), direction: arriving };
  }
  // The arc's chord halves the angle between the directions at its ends.
  const halving = add(leaving, arriving);
  const long = cross(subtract(to, from), halving) / cross(leaving, halving);
  if (!(long > 0)) return undefined;
  const joint = add(from, scale(leaving, long));
  if (!(dot(subtract(to, joint), halving) > 0)) return undefined;
  const second = edgeArriving(joint, to, arriving, tag);
  return { first: line(from, joint, tag), second, direction: leaving };
}

/** The arc (or line, when flat) that leaves `from` along a unit direction and ends at `to`. */
export function edgeLeaving(from: Vec, direction: Vec, to: Vec, tag: EdgeTag): Edge {
  return edgeTouching(from, to, from, direction, subtract(to, from), tag);
}

/** The arc (or line, when flat) from `from` that arrives at `to` along a unit direction. */
function edgeArriving(from: Vec, to: Vec, direction: Vec, tag: EdgeTag): Edge {
  return edgeTouching(from, to, to, direction, subtract(from, to), tag);
}

function edgeTouching(from: Vec, to: Vec, at: Vec, direction: Vec, chord: Vec, tag: EdgeTag): Arc | Line {
  const normal = leftOf(direction);
  const radius = dot(chord, chord) / (2 * dot(normal, chord));
  if (!(Math.abs(radius) < STRAIGHT_RADIUS)) return line(from, to, tag);
  const centre = { x: at.x + radius * normal.x, y: at.y + radius * normal.y };
  return arc(from, to, centre, radius > 0 ? 1 : -1, tag);
}
