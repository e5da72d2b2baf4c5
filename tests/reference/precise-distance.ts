/** Distances in fifty decimal digits (decimal.js, MIT, a general-purpose library), by the plainest formulas, to judge the kernel's digits by. */
import { Decimal } from 'decimal.js';
import type { Edge, Vec } from '../../src/geometry/index.ts';
import { distanceToEdge } from '../property/oracle.ts';

const Precise = Decimal.clone({ precision: 50 });

export interface PrecisePlace {
  readonly x: Decimal;
  readonly y: Decimal;
}

const precise = ({ x, y }: Vec): PrecisePlace => ({ x: new Precise(x), y: new Precise(y) });
const subtract = (a: PrecisePlace, b: PrecisePlace): PrecisePlace => ({ x: a.x.sub(b.x), y: a.y.sub(b.y) });
const cross = (a: PrecisePlace, b: PrecisePlace): Decimal => a.x.mul(b.y).sub(a.y.mul(b.x));
const dot = (a: PrecisePlace, b: PrecisePlace): Decimal => a.x.mul(b.x).add(a.y.mul(b.y));
const size = (a: PrecisePlace): Decimal => dot(a, a).sqrt();

/** The ends of an edge as they are, and the middle of it on its own line or circle. */
export function precisePlacesOn(edge: Edge): PrecisePlace[] {
  const from = precise(edge.from);
  const to = precise(edge.to);
  const middle = { x: from.x.add(to.x).div(2), y: from.y.add(to.y).div(2) };
  if (edge.kind === 'line') return [from, middle, to];
  const centre = precise(edge.centre);
  const towards = subtract(middle, centre);
  // Of half a turn and more the middle lies on the other side, or nowhere near the chord: the ends must do.
  const within = cross(subtract(from, centre), subtract(to, centre)).mul(edge.turn).gt(0);
  if (!within) return [from, to];
  const share = new Precise(edge.radius).div(size(towards));
  return [from, { x: centre.x.add(towards.x.mul(share)), y: centre.y.add(towards.y.mul(share)) }, to];
}

/** Distance of a place from the nearest of the edges, mm. Those that lie a micrometre farther than the nearest are not looked at. */
export function preciseDistance(edges: readonly Edge[], p: PrecisePlace): Decimal {
  const near = { x: p.x.toNumber(), y: p.y.toNumber() };
  const rough = edges.map((edge) => distanceToEdge(edge, near));
  const least = Math.min(...rough) + 1e-6;
  const all = edges.filter((_, i) => rough[i]! <= least).map((edge) => preciseDistanceToEdge(edge, p));
  return Precise.min(...all);
}

function preciseDistanceToEdge(edge: Edge, p: PrecisePlace): Decimal {
  const from = precise(edge.from);
  const to = precise(edge.to);
  const ends = Precise.min(size(subtract(p, from)), size(subtract(p, to)));
  if (edge.kind === 'line') {
    const along = subtract(to, from);
    const q = subtract(p, from);
    const t = dot(along, q);
    if (t.lte(0) || t.gte(dot(along, along))) return ends;
    return cross(along, q).abs().div(size(along));
  }
  const centre = precise(edge.centre);
  const a = subtract(from, centre);
  const b = subtract(to, centre);
  const q = subtract(p, centre);
  const after = cross(a, q).mul(edge.turn).gte(0);
  const before = cross(q, b).mul(edge.turn).gte(0);
  const isWhole = edge.from.x === edge.to.x && edge.from.y === edge.to.y;
  const isSmall = cross(a, b).mul(edge.turn).gt(0);
  const inSweep = isWhole || (isSmall ? after && before : after || before);
  return inSweep ? Precise.min(ends, size(q).sub(edge.radius).abs()) : ends;
}
