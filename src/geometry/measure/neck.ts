import type { Box, Edge, EdgeTag, Region, Vec } from '../api.ts';
import { boundsOfEdge } from '../bounds.ts';
import { directionAt, pointAt, sweepOf } from '../edge.ts';
import { POSITION_TOLERANCE, SMOOTH_TURN } from '../tolerance.ts';
import { add, cross, distance, dot, leftOf, middle, norm, polar, scale, subtract } from '../vec.ts';
import { chordAlong } from './chord-along.ts';
import { nearestOnEdge } from './nearest.ts';

/** The narrowest place of a region. */
export interface Neck {
  /** mm, straight across from edge to edge. */
  readonly width: number;
  readonly from: Vec;
  readonly to: Vec;
  /** The edges on both sides. */
  readonly between: readonly [EdgeTag, EdgeTag];
}

/** Sides face each other when no more than this (rad) is missing for them to be parallel: so corners are no necks. */
const MOST_TAPER = Math.PI / 6;

/**
 * The least width of a region: the shortest way straight across the material between two places of its edges that face each
 * other, within 30° of parallel, on one outline or between an outline and a hole. Where a limb tapers to an end, that is the width
 * beside the end. Undefined when no two edges face each other (a triangle).
 */
export function neckOf(region: Region): Neck | undefined {
  const sides = [region.outer, ...region.holes].flatMap(({ edges }) => edges.map((_, i) => sideOf(edges, i)));
  let best: Neck | undefined;
  for (const [i, a] of sides.entries()) {
    for (let j = i; j < sides.length; j++) {
      const b = sides[j]!;
      const least = best?.width ?? Infinity;
      if (boxDistance(a.box, b.box) >= least) continue;
      const across = i === j ? acrossOwn(a.edge) : acrossBetween(a.edge, b.edge);
      for (const [from, to] of across) {
        const width = distance(from, to);
        if (!(width < (best?.width ?? Infinity)) || width === 0) continue;
        if (!isFacing(a, b, from, to) || !isThrough(region, from, to, width)) continue;
        best = { width, from, to, between: [a.edge.tag, b.edge.tag] };
      }
    }
  }
  return best;
}

interface Side {
  readonly edge: Edge;
  readonly before: Edge;
  readonly after: Edge;
  readonly box: Box;
}

function sideOf(edges: readonly Edge[], i: number): Side {
  const edge = edges[i]!;
  const before = edges[(i + edges.length - 1) % edges.length]!;
  return { edge, before, after: edges[(i + 1) % edges.length]!, box: boundsOfEdge(edge) };
}

/** Shortest ways across between two edges: at ends, or square to both. */
function acrossBetween(a: Edge, b: Edge): [Vec, Vec][] {
  const ways: [Vec, Vec][] = [];
  for (const p of [a.from, a.to]) ways.push([p, nearestOnEdge(b, p).point]);
  for (const p of [b.from, b.to]) ways.push([nearestOnEdge(a, p).point, p]);
  if (a.kind === 'arc' && b.kind === 'arc') {
    // Along the line of centres, each arc at its near or its far side.
    const apart = distance(a.centre, b.centre);
    // On one circle, straight through its centre.
    for (const p of [a.from, pointAt(a, 0.5), a.to]) {
      ways.push([p, nearestOnEdge(b, subtract(scale(a.centre, 2), p)).point]);
    }
    const way = apart === 0 ? { x: 1, y: 0 } : scale(subtract(b.centre, a.centre), 1 / apart);
    for (const s of [a.radius, -a.radius]) {
      for (const t of [b.radius, -b.radius]) {
        const p = nearestOnEdge(a, add(a.centre, scale(way, s))).point;
        const q = nearestOnEdge(b, add(b.centre, scale(way, t))).point;
        ways.push([p, q]);
      }
    }
    return ways;
  }
  const [arc, other] = a.kind === 'arc' ? [a, b] : [b, a];
  if (arc.kind === 'arc') {
    const foot = nearestOnEdge(other, arc.centre).point;
    const out = subtract(foot, arc.centre);
    const long = norm(out.x, out.y);
    for (const s of long > 0 ? [arc.radius / long, -arc.radius / long] : []) {
      const p = nearestOnEdge(arc, add(arc.centre, scale(out, s))).point;
      ways.push(arc === a ? [p, foot] : [foot, p]);
    }
  }
  return ways;
}

/** Across one arc that bends round the material by nearly a half turn or more. */
function acrossOwn(edge: Edge): [Vec, Vec][] {
  if (edge.kind === 'line' || edge.turn === -1) return [];
  const sweep = sweepOf(edge);
  if (sweep < Math.PI) return [[edge.from, edge.to]];
  return [[edge.from, subtract(scale(edge.centre, 2), edge.from)]];
}

/** Do the edges there face each other, the material between them? At a corner either of its edges may. */
function isFacing(a: Side, b: Side, from: Vec, to: Vec): boolean {
  return inwardsAt(a, from).some((m) =>
    inwardsAt(b, to).some((n) => {
      const way = subtract(to, from);
      return dot(m, n) <= -Math.cos(MOST_TAPER) && dot(m, way) > 0 && dot(n, way) < 0;
    }),
  );
}

/** Unit directions into the material at a place of an edge; at an inside corner also that between its edges. */
function inwardsAt({ edge, before, after }: Side, p: Vec): Vec[] {
  const own = leftOf(directionAt(edge, nearestOnEdge(edge, p).t));
  const neighbours: [Vec, Vec][] = [];
  if (p === edge.from) neighbours.push([directionAt(before, 1), directionAt(edge, 0)]);
  if (p === edge.to) neighbours.push([directionAt(edge, 1), directionAt(after, 0)]);
  const corners = neighbours.flatMap(([u, v]) => {
    const turn = Math.atan2(cross(u, v), dot(u, v));
    if (turn > -SMOOTH_TURN) return [];
    const start = Math.atan2(u.y, u.x) + Math.PI / 2;
    return [0.25, 0.5, 0.75, 1].map((share) => polar(start + share * turn));
  });
  return [own, ...corners];
}

/** Does the way across run through material only? (It may run on along an edge.) */
function isThrough(region: Region, from: Vec, to: Vec, width: number): boolean {
  const chord = chordAlong([region], middle(from, to), subtract(to, from));
  return chord !== undefined && chord.length >= width - 4 * POSITION_TOLERANCE;
}

function boxDistance(a: Box, b: Box): number {
  const dx = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const dy = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return norm(dx, dy);
}
