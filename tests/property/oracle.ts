import type { Edge, Outline, Region, Vec } from '../../src/geometry/index.ts';

/**
 * Distance and inside by the plainest formulas (sums over all edges), sharing nothing with the kernel, to judge it by.
 */

const TURN = 2 * Math.PI;
const wrap = (a: number): number => a - TURN * Math.floor(a / TURN);

export function edgesOf(regions: readonly Region[]): Edge[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(({ edges }) => edges));
}

/** Sweep of an arc in radians, a whole circle for equal ends. */
export function sweepOf(edge: Extract<Edge, { kind: 'arc' }>): number {
  const { from, to, centre, turn } = edge;
  if (from.x === to.x && from.y === to.y) return TURN;
  const a = Math.atan2(from.y - centre.y, from.x - centre.x);
  const b = Math.atan2(to.y - centre.y, to.x - centre.x);
  return wrap(turn * (b - a));
}

export function placeOn(edge: Edge, t: number): Vec {
  const { from, to } = edge;
  if (edge.kind === 'line') return { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) };
  const { centre, radius, turn } = edge;
  const a = Math.atan2(from.y - centre.y, from.x - centre.x) + turn * t * sweepOf(edge);
  return { x: centre.x + radius * Math.cos(a), y: centre.y + radius * Math.sin(a) };
}

/** Unit normal to the right of travel: outwards, for a valid region. */
export function rightAt(edge: Edge, t: number): Vec {
  if (edge.kind === 'line') {
    const d = Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y);
    return { x: (edge.to.y - edge.from.y) / d, y: -(edge.to.x - edge.from.x) / d };
  }
  const p = placeOn(edge, t);
  const k = edge.turn / edge.radius;
  return { x: (p.x - edge.centre.x) * k, y: (p.y - edge.centre.y) * k };
}

export function distanceToEdge(edge: Edge, p: Vec): number {
  const { from, to } = edge;
  const ends = Math.min(Math.hypot(p.x - from.x, p.y - from.y), Math.hypot(p.x - to.x, p.y - to.y));
  if (edge.kind === 'line') {
    const dx = to.x - from.x;
    const dy = to.y - from.y;
    const size = Math.hypot(dx, dy);
    if (size === 0) return ends;
    const t = ((p.x - from.x) * dx + (p.y - from.y) * dy) / size;
    return t > 0 && t < size ? Math.abs((p.x - from.x) * dy - (p.y - from.y) * dx) / size : ends;
  }
  const { centre, radius, turn } = edge;
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const ahead = wrap(turn * (Math.atan2(p.y - centre.y, p.x - centre.x) - start));
  const off = Math.abs(Math.hypot(p.x - centre.x, p.y - centre.y) - radius);
  return ahead <= sweepOf(edge) ? Math.min(off, ends) : ends;
}

/** Edges as numbers side by side, NUMBERS each: ends, centre, radius (0 for a line), turn, half the chord, sweep. */
const NUMBERS = 10;

interface Known {
  readonly edges: readonly Edge[];
  readonly flat: Float64Array;
  /** The edge near which a place lay last, where the next is likely to lie as well. */
  nearest: number;
}

/** What was asked about last: a fuzz asks thousands of places of the same few lists. */
const KNOWN: Known[] = [];
const MOST_KNOWN = 8;

function knownOf(edges: readonly Edge[]): Known {
  for (const each of KNOWN)
    if (each.edges === edges && NUMBERS * edges.length === each.flat.length) return each;
  const flat = new Float64Array(NUMBERS * edges.length);
  edges.forEach((edge, i) => {
    const { from, to } = edge;
    const half = Math.hypot(to.x - from.x, to.y - from.y) / 2;
    flat.set([from.x, from.y, to.x, to.y, 0, 0, 0, 0, half, 0], NUMBERS * i);
    if (edge.kind === 'line') return;
    flat.set([edge.centre.x, edge.centre.y, edge.radius, edge.turn, half, sweepOf(edge)], NUMBERS * i + 4);
  });
  const known = { edges, flat, nearest: 0 };
  KNOWN.unshift(known);
  KNOWN.length = Math.min(KNOWN.length, MOST_KNOWN);
  return known;
}

/** Distance from a place to the nearest of the edges, mm. */
export function distanceTo(edges: readonly Edge[], p: Vec): number {
  if (edges.length === 0) return Infinity;
  const known = knownOf(edges);
  const { flat } = known;
  let { nearest } = known;
  let least = distanceToEdge(edges[nearest]!, p);
  for (let i = 0, at = 0; i < edges.length; i++, at += NUMBERS) {
    if (isBeyond(flat, at, p.x, p.y, least + 1e-6)) continue;
    const found = distanceToEdge(edges[i]!, p);
    if (found >= least) continue;
    least = found;
    nearest = i;
  }
  known.nearest = nearest;
  return least;
}

/** Surely farther away than `reach`: beyond the disc on a line, off the ring of an arc or the disc about all of it. */
function isBeyond(flat: Float64Array, at: number, px: number, py: number, reach: number): boolean {
  const radius = flat[at + 6]!;
  const half = flat[at + 8]!;
  if (radius > 0) {
    const x = px - flat[at + 4]!;
    const y = py - flat[at + 5]!;
    const far = Math.sqrt(x * x + y * y);
    if (Math.abs(far - radius) > reach) return true;
    if (flat[at + 9]! > Math.PI) return false;
  }
  // Up to half a turn no place of an arc is further from the middle of its chord than its ends.
  const x = px - (flat[at]! + flat[at + 2]!) / 2;
  const y = py - (flat[at + 1]! + flat[at + 3]!) / 2;
  const most = reach + half;
  return x * x + y * y > most * most;
}

/**
 * Turns round p, which must not lie on an edge: chords that pass to its right, upwards less downwards, and what lies between an arc
 * and its chord.
 */
export function turnsRound(edges: readonly Edge[], p: Vec): number {
  const { flat } = knownOf(edges);
  const { x, y } = p;
  let turns = 0;
  for (let at = 0; at < flat.length; at += NUMBERS) {
    const ax = flat[at]! - x;
    const ay = flat[at + 1]! - y;
    const bx = flat[at + 2]! - x;
    const by = flat[at + 3]! - y;
    const isLeft = ax * by - ay * bx >= 0;
    if (ay <= 0 && by > 0) turns += isLeft ? 1 : 0;
    else if (by <= 0 && ay > 0) turns -= isLeft ? 0 : 1;
    if (flat[at + 6]! > 0 && isInSegment(flat, at, x, y, isLeft)) turns += flat[at + 7]!;
  }
  return turns;
}

/** Does a place lie between an arc and its chord? */
function isInSegment(flat: Float64Array, at: number, px: number, py: number, isLeft: boolean): boolean {
  const x = px - flat[at + 4]!;
  const y = py - flat[at + 5]!;
  const radius = flat[at + 6]!;
  if (x * x + y * y >= radius * radius) return false;
  if (flat[at]! === flat[at + 2]! && flat[at + 1]! === flat[at + 3]!) return true;
  // Up to half a turn nothing of the segment is further from the middle of the chord than its ends. (The direction of a chord of
  // 1e-7 mm is too rough to be made longer.)
  if (flat[at + 9]! < Math.PI) {
    const half = flat[at + 8]!;
    const offX = px - (flat[at]! + flat[at + 2]!) / 2;
    const offY = py - (flat[at + 1]! + flat[at + 3]!) / 2;
    if (Math.sqrt(offX * offX + offY * offY) > half * 1.0001 + 1e-9) return false;
  }
  // The arc lies to the right of the chord of an anticlockwise arc; so does the segment, which the centre may share.
  return flat[at + 7]! > 0 !== isLeft;
}

export function isInside(regions: readonly Region[], p: Vec): boolean {
  return turnsRound(edgesOf(regions), p) > 0;
}

/** Distance to the edges of regions, negative inside. */
export function signedDistanceTo(edges: readonly Edge[], p: Vec): number {
  const d = distanceTo(edges, p);
  return turnsRound(edges, p) > 0 ? -d : d;
}

export function boxOf(regions: readonly Region[]): {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
} {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const edge of edgesOf(regions)) {
    for (const t of [0, 0.25, 0.5, 0.75, 1]) {
      const { x, y } = placeOn(edge, t);
      box.minX = Math.min(box.minX, x);
      box.minY = Math.min(box.minY, y);
      box.maxX = Math.max(box.maxX, x);
      box.maxY = Math.max(box.maxY, y);
    }
  }
  return box;
}

/** Area by summing sectors and triangles from the origin of the box, plainly. */
export function areaOf(regions: readonly Region[]): number {
  const { minX, minY } = boxOf(regions);
  let twice = 0;
  for (const edge of edgesOf(regions)) {
    const { from, to } = edge;
    twice += (from.x - minX) * (to.y - minY) - (from.y - minY) * (to.x - minX);
    if (edge.kind === 'arc') {
      const sweep = sweepOf(edge);
      twice += edge.turn * edge.radius * edge.radius * (sweep - Math.sin(sweep));
    }
  }
  return twice / 2;
}

export function reverseLoop(outline: Outline): Outline {
  const edges = outline.edges.map((edge): Edge => {
    const turned = { ...edge, from: edge.to, to: edge.from };
    return turned.kind === 'arc' ? { ...turned, turn: turned.turn === 1 ? -1 : 1 } : turned;
  });
  return { edges: edges.reverse() };
}
