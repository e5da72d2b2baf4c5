import type { Edge, Outline, Region, Vec } from '../../src/geometry/index.ts';

/**
 * Distance and inside by the plainest formulas (angles and sums over all edges), sharing nothing with the kernel, to judge it by.
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

export function distanceTo(edges: readonly Edge[], p: Vec): number {
  let least = Infinity;
  for (const edge of edges) if (mayBeNearer(edge, p, least)) least = Math.min(least, distanceToEdge(edge, p));
  return least;
}

/** Only what surely lies farther away is passed over: beyond the disc on a line, off the ring of an arc. */
function mayBeNearer(edge: Edge, p: Vec, least: number): boolean {
  const { from, to } = edge;
  if (edge.kind === 'arc') {
    const x = p.x - edge.centre.x;
    const y = p.y - edge.centre.y;
    return !(Math.abs(Math.sqrt(x * x + y * y) - edge.radius) > least + 1e-6);
  }
  const x = p.x - (from.x + to.x) / 2;
  const y = p.y - (from.y + to.y) / 2;
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  return !(Math.sqrt(x * x + y * y) > least + 1e-6 + Math.sqrt(dx * dx + dy * dy) / 2);
}

/** Turns round p by the angles under which the edges are seen; p must not lie on an edge. */
export function turnsRound(edges: readonly Edge[], p: Vec): number {
  let angle = 0;
  for (const edge of edges) {
    const ax = edge.from.x - p.x;
    const ay = edge.from.y - p.y;
    const bx = edge.to.x - p.x;
    const by = edge.to.y - p.y;
    const chord = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    angle += chord;
    if (edge.kind === 'arc') angle += edge.turn * TURN * segmentCount(edge, p, chord);
  }
  return Math.round(angle / TURN);
}

/** 1 when p lies between the arc and its chord. */
function segmentCount(edge: Extract<Edge, { kind: 'arc' }>, p: Vec, chord: number): number {
  const inCircle = Math.hypot(p.x - edge.centre.x, p.y - edge.centre.y) < edge.radius;
  if (edge.from.x === edge.to.x && edge.from.y === edge.to.y) return inCircle ? 1 : 0;
  // Up to half a turn nothing of the segment is further from the middle of the chord than its ends. (The direction of a chord of
  // 1e-7 mm is too rough to be made longer.)
  if (sweepOf(edge) < Math.PI) {
    const half = Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y) / 2;
    const off = Math.hypot(p.x - (edge.from.x + edge.to.x) / 2, p.y - (edge.from.y + edge.to.y) / 2);
    if (off > half * 1.0001 + 1e-9) return 0;
  }
  // The arc lies to the right of the chord of an anticlockwise arc; so does the segment, which the centre may share.
  const right = edge.turn * chord < 0;
  return inCircle && right ? 1 : 0;
}

export function isInside(regions: readonly Region[], p: Vec): boolean {
  return turnsRound(edgesOf(regions), p) > 0;
}

/** The same to the edges of regions. */
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
