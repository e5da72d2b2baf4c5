import { filled } from '../arrangement/lists.ts';
import { addArc, addLine, addVertex, newPieces, type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { CARRIER_TOLERANCE, VERTEX_SNAP } from '../tolerance.ts';
import type { CloserThan } from './closer-than.ts';

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
  closerThan: CloserThan,
): Pieces {
  const raw = newPieces();
  raw.tags.push(...source.tags);
  for (const loop of loops) addRawLoop(source, raw, loop, by, closerThan);
  return raw;
}

function addRawLoop(
  source: Pieces,
  raw: Pieces,
  { from, to }: LoopRange,
  by: number,
  closerThan: CloserThan,
): void {
  const count = to - from;
  if (count === 0) return;
  const { vertices, ends, shape, turn } = source;
  const reach = Math.abs(by);
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
    // The middle of the join, and how far the join reaches from it.
    let mx = (ex + fx) / 2 - vx;
    let my = (ey + fy) / 2 - vy;
    const size = Math.hypot(mx, my);
    if (size > 1e-3 * reach) {
      mx *= reach / size;
      my *= reach / size;
    } else {
      mx = tx * reach;
      my = ty * reach;
    }
    const half = Math.hypot(ex - vx - mx, ey - vy - my);
    if (closerThan(vx + mx, vy + my, reach - half - CARRIER_TOLERANCE)) continue;
    const tag = source.tags[source.source[e]!]!;
    addArc(raw, p, q, vx, vy, reach, sign, raw.tags.push(tag) - 1, 0);
  }
  for (let k = 0; k < count; k++) {
    const e = from + k;
    const p = starts[k]!;
    const q = stops[k]!;
    const x0 = raw.vertices[2 * p]!;
    const y0 = raw.vertices[2 * p + 1]!;
    const x1 = raw.vertices[2 * q]!;
    const y1 = raw.vertices[2 * q + 1]!;
    const mx = (x0 + x1) / 2;
    const my = (y0 + y1) / 2;
    if (turn[e] === 0) {
      const half = Math.hypot(x1 - x0, y1 - y0) / 2;
      if (!closerThan(mx, my, reach - half - CARRIER_TOLERANCE)) addLine(raw, p, q, source.source[e]!, 0);
      continue;
    }
    const cx = shape[SHAPE * e + 4]!;
    const cy = shape[SHAPE * e + 5]!;
    const radius = shape[SHAPE * e + 6]! + turn[e]! * by;
    if (radius <= VERTEX_SNAP) continue;
    const size = radius / Math.hypot(mx - cx, my - cy);
    const ox = cx + (mx - cx) * size;
    const oy = cy + (my - cy) * size;
    const half = Math.hypot(x0 - ox, y0 - oy);
    if (closerThan(ox, oy, reach - half - CARRIER_TOLERANCE)) continue;
    if (p !== q) addArc(raw, p, q, cx, cy, radius, turn[e]!, source.source[e]!, 0);
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
