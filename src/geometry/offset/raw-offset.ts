import { filled } from '../arrangement/lists.ts';
import { addArc, addLine, addVertex, newPieces, type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import type { Nearness } from './nearness.ts';

/** Runs of source pieces that follow each other round a loop: from `from` up to, not including, `to`. */
export interface LoopRange {
  readonly from: number;
  readonly to: number;
}

/** Corners whose directions agree or oppose each other to within this are judged by curvature. */
const STRAIGHT = 1e-9;

/**
 * The parallel of every source piece at `by` to its right (left when negative), and round joins where the parallels part.
 * What parallels share at a smooth joint is one vertex. Arcs that would turn inside out vanish; where parallels cross they are
 * left to be cut. Whatever lies wholly nearer to the source than |by| cannot be part of the offset and is left out.
 */
export function rawOffset(
  source: Pieces,
  loops: readonly LoopRange[],
  by: number,
  nearness: Nearness,
): Pieces {
  const raw = newPieces(2 * source.count);
  for (const tag of source.tags) raw.tags.push(tag);
  const trim: Trim = { raw, nearness, reach: Math.abs(by), longest: longestUntrimmed(source) };
  for (const loop of loops) addRawLoop(source, trim, loop, by);
  return raw;
}

/** How raw pieces are thrown out that lie too near the source. */
interface Trim {
  readonly raw: Pieces;
  readonly nearness: Nearness;
  /** Size of the offset, mm. */
  readonly reach: number;
  /** Pieces longer than this (mm) are halved, to throw out what of them lies too near. */
  readonly longest: number;
}

/** Where edges are much shorter than the offset most of a join lies too near its neighbours; few edges are not worth it. */
function longestUntrimmed({ count, shape }: Pieces): number {
  if (count < 200) return Infinity;
  let length = 0;
  for (let at = 0; at < SHAPE * count; at += SHAPE) {
    length += Math.hypot(shape[at + 2]! - shape[at]!, shape[at + 3]! - shape[at + 1]!);
  }
  return (8 * length) / count;
}

/** Adds what of the line or arc (turn not 0, under half a turn) from p to q is not wholly too near the source. */
function addFar(
  trim: Trim,
  p: number,
  q: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  source: number,
): void {
  const { raw } = trim;
  const x0 = raw.vertices[2 * p]!;
  const y0 = raw.vertices[2 * p + 1]!;
  let mx = (x0 + raw.vertices[2 * q]!) / 2;
  let my = (y0 + raw.vertices[2 * q + 1]!) / 2;
  if (turn !== 0) {
    const size = radius / Math.hypot(mx - cx, my - cy);
    mx = cx + (mx - cx) * size;
    my = cy + (my - cy) * size;
  }
  const half = Math.hypot(x0 - mx, y0 - my);
  if (trim.nearness.isCloser(mx, my, trim.reach - half - CARRIER_TOLERANCE)) return;
  if (2 * half > trim.longest) {
    const middle = addVertex(raw, mx, my);
    addFar(trim, p, middle, cx, cy, radius, turn, source);
    addFar(trim, middle, q, cx, cy, radius, turn, source);
  } else if (turn === 0) addLine(raw, p, q, source, 0);
  else addArc(raw, p, q, cx, cy, radius, turn, source, 0);
}

function addRawLoop(source: Pieces, trim: Trim, { from, to }: LoopRange, by: number): void {
  const { raw, reach } = trim;
  const count = to - from;
  if (count === 0) return;
  const { vertices, ends, shape, turn } = source;
  const sign = by > 0 ? 1 : -1;
  // Where each parallel begins and ends.
  const starts = filled(count);
  const stops = filled(count);
  for (let k = 0; k < count; k++) {
    const e = from + k;
    const after = k + 1 === count ? 0 : k + 1;
    const f = from + after;
    const v = ends[2 * e + 1]!;
    const vx = vertices[2 * v]!;
    const vy = vertices[2 * v + 1]!;
    const t = directionAt(source, e, vx, vy);
    const tx = t.x;
    const ty = t.y;
    const u = directionAt(source, f, vx, vy);
    const ex = vx + ty * by;
    const ey = vy - tx * by;
    const fx = vx + u.y * by;
    const fy = vy - u.x * by;
    const gap = (ex - fx) ** 2 + (ey - fy) ** 2;
    const p = addVertex(raw, ex, ey);
    stops[k] = p;
    const cross = tx * u.y - ty * u.x;
    const along = tx * u.x + ty * u.y;
    if (gap <= VERTEX_SNAP * VERTEX_SNAP || (along > 0 && isSmooth(source, e, f, gap, Math.abs(cross), by))) {
      raw.vertices[2 * p] = (ex + fx) / 2;
      raw.vertices[2 * p + 1] = (ey + fy) / 2;
      starts[after] = p;
      continue;
    }
    const q = addVertex(raw, fx, fy);
    starts[after] = q;
    const opposed = Math.abs(cross) < STRAIGHT && along < 0;
    const parts = opposed ? sign * (bendOf(source, e) + bendOf(source, f)) <= 0 : sign * cross > 0;
    if (!parts) continue;
    const join = raw.tags.push(source.tags[source.source[e]!]!) - 1;
    if (along > -0.9) addFar(trim, p, q, vx, vy, reach, sign, join);
    else addArc(raw, p, q, vx, vy, reach, sign, join, 0);
  }
  for (let k = 0; k < count; k++) {
    const e = from + k;
    const p = starts[k]!;
    const q = stops[k]!;
    if (p === q) continue;
    if (turn[e] === 0) {
      addFar(trim, p, q, 0, 0, 0, 0, source.source[e]!);
      continue;
    }
    const radius = shape[SHAPE * e + 6]! + turn[e]! * by;
    if (radius <= VERTEX_SNAP) continue;
    addFar(trim, p, q, shape[SHAPE * e + 4]!, shape[SHAPE * e + 5]!, radius, turn[e]!, source.source[e]!);
  }
}

/**
 * May the parallels of e and f share one end, half way between their own? The place is then off both by no more than the
 * tolerance. Crossing such parallels instead would ask for digits that doubles do not have.
 */
function isSmooth(source: Pieces, e: number, f: number, gap: number, turned: number, by: number): boolean {
  if (gap * turned * turned > CARRIER_TOLERANCE * CARRIER_TOLERANCE) return false;
  for (const i of [e, f]) {
    const at = SHAPE * i;
    const { shape } = source;
    const chord = (shape[at + 2]! - shape[at]!) ** 2 + (shape[at + 3]! - shape[at + 1]!) ** 2;
    let scale = 1;
    if (source.turn[i] !== 0) {
      const radius = shape[at + 6]! + source.turn[i]! * by;
      if (gap > 8 * CARRIER_TOLERANCE * radius) return false;
      scale = radius / shape[at + 6]!;
    }
    if (16 * gap > chord * scale * scale) return false;
  }
  return true;
}

/** Unit direction of travel of piece i at a point of it. */
function directionAt(source: Pieces, i: number, x: number, y: number): { x: number; y: number } {
  const { shape } = source;
  const at = SHAPE * i;
  const turn = source.turn[i]!;
  const dx = turn === 0 ? shape[at + 2]! - shape[at]! : -turn * (y - shape[at + 5]!);
  const dy = turn === 0 ? shape[at + 3]! - shape[at + 1]! : turn * (x - shape[at + 4]!);
  const size = Math.sqrt(dx * dx + dy * dy);
  return { x: dx / size, y: dy / size };
}

/** Signed curvature, positive to the left. */
function bendOf(source: Pieces, i: number): number {
  const turn = source.turn[i]!;
  return turn === 0 ? 0 : turn / source.shape[SHAPE * i + 6]!;
}
