import type { Edge, Vec } from '../api.ts';
import { pointAt, sweepOf } from '../edge.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { cross, distance, dot, middle, norm, subtract } from '../vec.ts';
import { distanceToCarrier, meetCarriers, withinSpan } from './carriers.ts';
import type { EdgeIntersection, Meeting, SharedStretch } from './outcome.ts';

/**
 * Every place that two edges share, ordered along the first. Positions in mm; places along an edge as shares of its length.
 * An end within `tolerance` (mm) of the other edge is a meeting exactly at that end. A touch whose lens is no deeper than
 * the tolerance is one place. An edge of no length meets others at its point.
 */
export function intersectEdges(a: Edge, b: Edge, tolerance = POSITION_TOLERANCE): EdgeIntersection {
  if (surelyApart(a, b, tolerance)) return NOWHERE;
  const carriers = meetCarriers(a, b, tolerance);
  const points = endsOnOther(a, b, tolerance);
  const ends = points.length;
  if (carriers.kind !== 'same') {
    for (const p of carriers.points) {
      if (!withinSpan(a, p) || !withinSpan(b, p)) continue;
      const known = points.slice(0, ends).some((end) => onePlace(a, b, p, end, tolerance));
      if (!known) points.push(p);
    }
  }
  if (points.length === 0) return NOWHERE;
  const meetings = points.map((point) => ({ point, onA: shareAt(a, point), onB: shareAt(b, point) }));
  meetings.sort((p, q) => p.onA - q.onA);
  if (carriers.kind === 'same') return overlapOf(a, b, meetings, tolerance);
  const only = meetings[0];
  if (carriers.kind === 'tangent' && only && meetings.length === 1 && ends === 0) {
    return { kind: 'tangent', at: only };
  }
  return { kind: 'points', points: meetings };
}

const NOWHERE: EdgeIntersection = { kind: 'none' };

/** Do boxes that hold the edges lie farther apart than two places can and be one? Such edges need no closer look. */
function surelyApart(a: Edge, b: Edge, tolerance: number): boolean {
  const gap = 2 * tolerance;
  return (
    gapBetween(a.from.x, a.to.x, bulgeOf(a), b.from.x, b.to.x, bulgeOf(b)) > gap ||
    gapBetween(a.from.y, a.to.y, bulgeOf(a), b.from.y, b.to.y, bulgeOf(b)) > gap
  );
}

/** How far two stretches of an axis lie apart, each between two places in either order and wider by so much on both sides. */
function gapBetween(a0: number, a1: number, wider: number, b0: number, b1: number, other: number): number {
  const middles = Math.abs(a0 + a1 - b0 - b1) / 2;
  return middles - (Math.abs(a1 - a0) + Math.abs(b1 - b0)) / 2 - wider - other;
}

/** How far an arc may leave the box round its ends, mm: no farther than its chord is long unless it sweeps more than half a turn. */
function bulgeOf(edge: Edge): number {
  if (edge.kind === 'line') return 0;
  const { from, to, centre, radius, turn } = edge;
  const chord = norm(to.x - from.x, to.y - from.y);
  const side = turn * ((to.x - from.x) * (centre.y - from.y) - (to.y - from.y) * (centre.x - from.x));
  return side > 0 && chord > 0 ? Math.min(chord, 2 * radius) : 2 * radius;
}

/** Ends of either edge that lie on the other, each place once. */
function endsOnOther(a: Edge, b: Edge, tolerance: number): Vec[] {
  const found: Vec[] = [];
  const consider = (end: Vec, other: Edge): void => {
    if (found.some((p) => distance(p, end) <= tolerance)) return;
    const near = distance(end, other.from) <= tolerance || distance(end, other.to) <= tolerance;
    if (near || (distanceToCarrier(other, end) <= tolerance && withinSpan(other, end))) found.push(end);
  };
  consider(a.from, b);
  consider(a.to, b);
  consider(b.from, a);
  consider(b.to, a);
  return found;
}

/** Two shared places are one when the edges do not part between them by more than the tolerance. */
function onePlace(a: Edge, b: Edge, p: Vec, q: Vec, tolerance: number): boolean {
  if (distance(p, q) <= tolerance) return true;
  const m = middle(p, q);
  return distanceToCarrier(a, m) <= tolerance && distanceToCarrier(b, m) <= tolerance;
}

function overlapOf(a: Edge, b: Edge, meetings: readonly Meeting[], tolerance: number): EdgeIntersection {
  const stretches: SharedStretch[] = [];
  const bounds = [...meetings];
  const whole = a.kind === 'arc' && distance(a.from, a.to) === 0;
  const first = meetings[0];
  // A whole circle's seam is both its first and its last place.
  if (whole && first) {
    const seam = first.onA === 0 ? first : meetingAt(a, b, a.from);
    if (first.onA !== 0) bounds.unshift(seam);
    bounds.push({ ...seam, onA: 1 });
  }
  const sameWay = runSameWay(a, b);
  const used = new Set<Meeting>();
  for (let i = 0; i + 1 < bounds.length; i++) {
    const from = bounds[i]!;
    const to = bounds[i + 1]!;
    const mid = pointAt(a, (from.onA + to.onA) / 2);
    if (distance(mid, from.point) <= tolerance / 2 || !withinSpan(b, mid)) continue;
    stretches.push({ from, to, sameWay });
    used.add(from).add(to);
  }
  const points = meetings.filter((meeting) => !used.has(meeting));
  return stretches.length === 0 ? { kind: 'points', points } : { kind: 'overlap', stretches, points };
}

function meetingAt(a: Edge, b: Edge, point: Vec): Meeting {
  return { point, onA: shareAt(a, point), onB: shareAt(b, point) };
}

function runSameWay(a: Edge, b: Edge): boolean {
  if (a.kind === 'arc' && b.kind === 'arc') return a.turn === b.turn;
  return dot(subtract(a.to, a.from), subtract(b.to, b.from)) > 0;
}

/** Share of the edge's length at which a point of it lies; 0 for an edge of no length. */
function shareAt(edge: Edge, p: Vec): number {
  if (p === edge.from || (p.x === edge.from.x && p.y === edge.from.y)) return 0;
  if (p.x === edge.to.x && p.y === edge.to.y) return 1;
  if (edge.kind === 'line') {
    const u = subtract(edge.to, edge.from);
    const square = dot(u, u);
    return square === 0 ? 0 : Math.max(0, Math.min(1, dot(subtract(p, edge.from), u) / square));
  }
  const a = subtract(edge.from, edge.centre);
  const q = subtract(p, edge.centre);
  const turned = edge.turn * Math.atan2(cross(a, q), dot(a, q));
  const sweep = sweepOf(edge);
  const ahead = turned < 0 ? turned + 2 * Math.PI : turned;
  // A point a hair before the start would otherwise count a whole turn ahead.
  if (ahead > sweep) return ahead - sweep < 2 * Math.PI - ahead ? 1 : 0;
  return ahead / sweep;
}
