import { shareEdges } from '../arrangement/edge-numbers.ts';
import { addArc, addLine, addVertex, newPieces, type Pieces, SHAPE } from '../arrangement/pieces.ts';
import { filled, markLists, reals, releaseLists } from '../memory/lists.ts';
import { PLAIN_ANGLE, VERTEX_SNAP } from '../tolerance.ts';
import { type JointCrossing, jointCrossing } from './joint-crossing.ts';
import { type Nearness, NOBODY } from './nearness.ts';
import { bendOf, directionAt, hasRoom, isSmooth } from './parallel-joints.ts';
import { addRun, type Trimming, trimPiece } from './trim-piece.ts';

/** Runs of source pieces that follow each other round a loop: from `from` up to, not including, `to`. */
export interface LoopRange {
  readonly from: number;
  readonly to: number;
}

/** Corners whose directions agree or oppose each other to within this are judged by curvature. */
const STRAIGHT = 1e-9;
/** Lines whose directions agree less than this (cosine) are left to be cut where they cross. */
const BLUNT = -0.9;

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
  const raw = newPieces(source.count + (source.count >> 2));
  shareEdges(raw, source);
  const reach = Math.abs(by);
  const rejecting: Rejecting = {
    result: raw,
    source,
    nearness,
    reach,
    trims: source.count >= MANY,
    finest: FINEST * reach,
    coarse: Number.POSITIVE_INFINITY,
  };
  for (const loop of loops) {
    const mark = markLists();
    addRawLoop(source, rejecting, loop, by);
    releaseLists(mark);
  }
  return raw;
}

/** The parallels of so many edges are worth trimming one by one. */
const MANY = 200;
/** Parts of them no longer than this share of the offset are kept without looking closer. */
const FINEST = 1 / 32;

/** How raw pieces are thrown out that lie too near the source. */
interface Rejecting extends Trimming {
  readonly trims: boolean;
}

/** Adds the line or arc (turn not 0, under half a turn) from p to q unless all of it is too near the source; of many, what of each is not. */
function addFar(
  rejecting: Rejecting,
  p: number,
  q: number,
  cx: number,
  cy: number,
  radius: number,
  turn: number,
  source: number,
): void {
  const { result, nearness, reach, trims } = rejecting;
  const { vertices } = result;
  const x0 = vertices[2 * p]!;
  const y0 = vertices[2 * p + 1]!;
  let mx = (x0 + vertices[2 * q]!) / 2;
  let my = (y0 + vertices[2 * q + 1]!) / 2;
  if (turn !== 0) {
    const size = radius / Math.sqrt((mx - cx) * (mx - cx) + (my - cy) * (my - cy));
    mx = cx + (mx - cx) * size;
    my = cy + (my - cy) * size;
  }
  const half = trims ? 0 : Math.sqrt((x0 - mx) * (x0 - mx) + (y0 - my) * (y0 - my));
  const isNear = nearness.nearerPiece(mx, my, reach - half - nearness.slack) !== NOBODY;
  if (isNear && trims) trimPiece(rejecting, { cx, cy, radius, turn, source, side: 0 }, p, q);
  else if (isNear) return;
  else if (turn === 0) addLine(result, p, q, source, 0);
  else addArc(result, p, q, cx, cy, radius, turn, source, 0);
}

function addRawLoop(source: Pieces, rejecting: Rejecting, { from, to }: LoopRange, by: number): void {
  const { result: raw, reach } = rejecting;
  const count = to - from;
  if (count === 0) return;
  const { vertices, ends, shape, turn } = source;
  const sign = by > 0 ? 1 : -1;
  // Where each parallel begins and ends.
  const starts = filled(count);
  const stops = filled(count);
  /** What lies between the parallel of each edge and the one before. */
  const joints = filled(count);
  /** How far short of each joint the parallels on either side cross, mm; 0 where they need not. */
  const shorts = reals(count).fill(0);
  /** Where they cross that no circles would tell. */
  const crossed = new Map<number, JointCrossing>();
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
      joints[after] = SHARED;
      continue;
    }
    const q = addVertex(raw, fx, fy);
    starts[after] = q;
    const opposed = Math.abs(cross) < STRAIGHT && along < 0;
    const parts = opposed ? sign * (bendOf(source, e) + bendOf(source, f)) <= 0 : sign * cross > 0;
    if (!parts) {
      // Of two edges that turn towards the offset, the parallels cross so far short of the joint, and beyond lie too near each the other's edge.
      const crossing = jointCrossing(
        source,
        e,
        f,
        { x: ex, y: ey, tx, ty },
        { x: fx, y: fy, tx: u.x, ty: u.y },
        by,
      );
      if (crossing !== undefined) {
        shorts[k] = crossing.short;
        crossed.set(k, crossing);
      } else if (turn[e] === 0 && turn[f] === 0 && Math.abs(cross) > PLAIN_ANGLE && along > BLUNT)
        shorts[k] = (reach * Math.abs(cross)) / (1 + along);
      continue;
    }
    joints[after] = along > BLUNT ? PARTED : TURNED_BACK;
  }
  for (let k = 0; k < count; k++) {
    const after = k + 1 === count ? 0 : k + 1;
    if (
      shorts[k] === 0 ||
      !hasRoom(source, from, count, k, shorts, by) ||
      !hasRoom(source, from, count, after, shorts, by)
    )
      continue;
    const v = stops[k]!;
    const crossing = crossed.get(k);
    starts[after] = v;
    joints[after] = SHARED;
    if (crossing !== undefined) {
      raw.vertices[2 * v] = crossing.x;
      raw.vertices[2 * v + 1] = crossing.y;
      continue;
    }
    const at = SHAPE * (from + k);
    const ux = shape[at + 2]! - shape[at]!;
    const uy = shape[at + 3]! - shape[at + 1]!;
    const back = shorts[k]! / Math.sqrt(ux * ux + uy * uy);
    raw.vertices[2 * v]! -= back * ux;
    raw.vertices[2 * v + 1]! -= back * uy;
  }
  for (let k = 0; k < count; k++) {
    const e = from + k;
    const p = starts[k]!;
    const q = stops[k]!;
    if (p === q) continue;
    const at = SHAPE * e;
    const radius = turn[e] === 0 ? 0 : shape[at + 6]! + turn[e]! * by;
    if (turn[e] !== 0 && radius <= VERTEX_SNAP) continue;
    // What goes on well at both ends is seldom too near; if it is, its chain will be found to be.
    if (isUntangled(joints, k))
      addRun(
        raw,
        {
          cx: shape[at + 4]!,
          cy: shape[at + 5]!,
          radius,
          turn: turn[e]!,
          source: source.source[e]!,
          side: 0,
        },
        p,
        q,
      );
    else addFar(rejecting, p, q, shape[at + 4]!, shape[at + 5]!, radius, turn[e]!, source.source[e]!);
  }
  for (let k = 0; k < count; k++) {
    const after = k + 1 === count ? 0 : k + 1;
    if (joints[after]! < PARTED) continue;
    const e = from + k;
    const v = ends[2 * e + 1]!;
    const vx = vertices[2 * v]!;
    const vy = vertices[2 * v + 1]!;
    const join = source.edgeCount + source.source[e]!;
    if (joints[after] === TURNED_BACK || (isUntangled(joints, k) && isUntangled(joints, after)))
      addArc(raw, stops[k]!, starts[after]!, vx, vy, reach, sign, join, 0);
    else addFar(rejecting, stops[k]!, starts[after]!, vx, vy, reach, sign, join);
  }
}

/** What lies between the parallels of two edges that follow each other: they cross somewhere, go on from one vertex, or leave room for a join. */
const CROSSED = 0;
const SHARED = 1;
const PARTED = 2;
/** The same where the edges all but turn back. */
const TURNED_BACK = 3;

/** Does the parallel of the k-th edge cross neither that before nor that after? */
function isUntangled(joints: Int32Array, k: number): boolean {
  return joints[k] !== CROSSED && joints[k + 1 < joints.length ? k + 1 : 0] !== CROSSED;
}
