import type { Arc, Edge, Line, Vec } from '../api.ts';
import { ANGLE_TOLERANCE } from '../tolerance.ts';
import { add, cross, distance, dot, leftOf, length, scale, subtract } from '../vec.ts';

/** Where the whole line or circle of one edge meets that of another. */
export type CarrierMeeting =
  | { readonly kind: 'same' }
  | { readonly kind: 'tangent'; readonly points: readonly Vec[] }
  | { readonly kind: 'points'; readonly points: readonly Vec[] };

const SAME: CarrierMeeting = { kind: 'same' };
const NOWHERE: CarrierMeeting = { kind: 'points', points: [] };

/** Meeting of the carriers (endless line, whole circle) of two edges; touching within `tolerance` (mm) is tangent. */
export function meetCarriers(a: Edge, b: Edge, tolerance: number): CarrierMeeting {
  if (a.kind === 'line') {
    return b.kind === 'line' ? meetLines(a, b, tolerance) : meetLineAndCircle(a, b, tolerance);
  }
  return b.kind === 'line' ? meetLineAndCircle(b, a, tolerance) : meetCircles(a, b, tolerance);
}

/**
 * Two lines are the same when both ends of the shorter lie within tolerance of the longer: a comparison of
 * directions alone would call short edges parallel.
 */
function meetLines(a: Line, b: Line, tolerance: number): CarrierMeeting {
  const u = subtract(a.to, a.from);
  const v = subtract(b.to, b.from);
  const lengthA = length(u);
  const lengthB = length(v);
  if (lengthA === 0 || lengthB === 0) return NOWHERE;
  const [long, short, along] =
    lengthA >= lengthB ? [a, b, scale(u, 1 / lengthA)] : [b, a, scale(v, 1 / lengthB)];
  const start = cross(along, subtract(short.from, long.from));
  const end = cross(along, subtract(short.to, long.from));
  if (Math.abs(start) <= tolerance && Math.abs(end) <= tolerance) return SAME;
  const turned = cross(u, v);
  if (Math.abs(turned) <= ANGLE_TOLERANCE * 1e-4 * lengthA * lengthB) return NOWHERE;
  const t = start / (start - end);
  return { kind: 'points', points: [add(short.from, scale(subtract(short.to, short.from), t))] };
}

/** The half chord is √((r − h)(r + h)): the factored form keeps its digits where the line nearly touches. */
function meetLineAndCircle(a: Line, b: Arc, tolerance: number): CarrierMeeting {
  const u = subtract(a.to, a.from);
  const size = length(u);
  if (size === 0) return NOWHERE;
  const along = scale(u, 1 / size);
  const toCentre = subtract(b.centre, a.from);
  const h = cross(along, toCentre);
  const foot = subtract(b.centre, scale(leftOf(along), h));
  const depth = b.radius - Math.abs(h);
  if (depth < -tolerance) return NOWHERE;
  if (depth <= tolerance) return { kind: 'tangent', points: [foot] };
  const half = Math.sqrt(depth * (b.radius + Math.abs(h)));
  return { kind: 'points', points: [subtract(foot, scale(along, half)), add(foot, scale(along, half))] };
}

/** Along the line of centres, with the half chord as a product of differences (Heron's form). */
function meetCircles(a: Arc, b: Arc, tolerance: number): CarrierMeeting {
  const between = subtract(b.centre, a.centre);
  const d = length(between);
  const gap = a.radius - b.radius;
  if (d + Math.abs(gap) <= tolerance) return SAME;
  const outside = a.radius + b.radius - d;
  const inside = d - Math.abs(gap);
  if (outside < -tolerance || inside < -tolerance || d === 0) return NOWHERE;
  const along = scale(between, 1 / d);
  // Measured from the smaller circle's centre, where the rounding is smaller too.
  const small = a.radius <= b.radius ? a : b;
  const large = small === a ? b : a;
  const towards = small === a ? along : scale(along, -1);
  const reach = (d + ((small.radius - large.radius) * (small.radius + large.radius)) / d) / 2;
  const clamped = Math.max(-small.radius, Math.min(small.radius, reach));
  // A touch lies on the circle itself: where centres lie close together the foot may be far from it, the lens being long and thin.
  if (outside <= tolerance || inside <= tolerance) {
    return {
      kind: 'tangent',
      points: [add(small.centre, scale(towards, (reach < 0 ? -1 : 1) * small.radius))],
    };
  }
  const foot = add(small.centre, scale(towards, clamped));
  const half = Math.sqrt(inside * outside * (d + Math.abs(gap)) * (a.radius + b.radius + d)) / (2 * d);
  const side = scale(leftOf(towards), half);
  return { kind: 'points', points: [subtract(foot, side), add(foot, side)] };
}

/** Does a point of the edge's carrier lie within its sweep or span? Ends are judged by the caller. */
export function withinSpan(edge: Edge, p: Vec): boolean {
  if (edge.kind === 'line') {
    const u = subtract(edge.to, edge.from);
    const t = dot(u, subtract(p, edge.from));
    return t >= 0 && t <= dot(u, u);
  }
  const { from, to, centre, turn } = edge;
  if (from.x === to.x && from.y === to.y) return true;
  const a = subtract(from, centre);
  const b = subtract(to, centre);
  const q = subtract(p, centre);
  const afterStart = turn * cross(a, q) >= 0;
  const beforeEnd = turn * cross(q, b) >= 0;
  const half = turn * cross(a, b);
  if (half > 0) return afterStart && beforeEnd;
  if (half < 0) return afterStart || beforeEnd;
  // Exactly half a circle, or (ends in the same direction from the centre) next to nothing.
  return dot(a, b) < 0 ? afterStart : afterStart && beforeEnd && dot(a, q) > 0;
}

/** Distance from a point to the edge's carrier, mm. */
export function distanceToCarrier(edge: Edge, p: Vec): number {
  if (edge.kind === 'arc') return Math.abs(distance(p, edge.centre) - edge.radius);
  const u = subtract(edge.to, edge.from);
  const size = length(u);
  return size === 0 ? distance(p, edge.from) : Math.abs(cross(u, subtract(p, edge.from))) / size;
}
