import { POSITION_TOLERANCE } from '../tolerance.ts';
import { norm } from '../vec.ts';
import { addCut, type Cuts } from './cuts.ts';
import { addVertex, type Pieces, SHAPE } from './pieces.ts';
import { settleCrossing } from './settle-crossing.ts';
import { joinVertices } from './vertex-union.ts';

/**
 * Meetings of two pieces, written as cuts of both. Ends come first: an end within VERTEX_SNAP of an end of the other piece
 * is the same vertex; one that lies on the other piece cuts it there. Crossings of the carriers follow, unless they
 * are an end already found: places between which the pieces do not part by more than CARRIER_TOLERANCE are one.
 * Pieces that run along each other are cut at each other's ends and nowhere else.
 */
export function meetPieces(pieces: Pieces, cuts: Cuts, i: number, j: number): void {
  const a = pieces.turn[i]!;
  const b = pieces.turn[j]!;
  if (a === 0) {
    if (b === 0) meetLines(pieces, cuts, i, j);
    else meetLineAndArc(pieces, cuts, i, j);
  } else if (b === 0) meetLineAndArc(pieces, cuts, j, i);
  else meetArcs(pieces, cuts, i, j);
}

const NO_END = 0;
/** Given arcs may end this far beside their circle, so crossings this near to a shared vertex are that vertex. */
const SHARED_2 = (3 * POSITION_TOLERANCE) ** 2;

/** Bit set of the ends that met: 1 and 2 start and end of i, 4 and 8 of j. */
function meetEnds(pieces: Pieces, cuts: Cuts, i: number, j: number): number {
  const { ends } = pieces;
  const i0 = ends[2 * i]!;
  const i1 = ends[2 * i + 1]!;
  const j0 = ends[2 * j]!;
  const j1 = ends[2 * j + 1]!;
  let met = NO_END;
  if (i0 === j0 || i0 === j1 || endOn(pieces, cuts, i0, j)) met |= 1;
  if (i1 === j0 || i1 === j1 || endOn(pieces, cuts, i1, j)) met |= 2;
  if (j0 === i0 || j0 === i1 || endOn(pieces, cuts, j0, i)) met |= 4;
  if (j1 === i0 || j1 === i1 || endOn(pieces, cuts, j1, i)) met |= 8;
  return met;
}

/** Does vertex v lie on piece k? If so, it is joined to the piece's end or cuts the piece. */
function endOn(pieces: Pieces, cuts: Cuts, v: number, k: number): boolean {
  const x = pieces.vertices[2 * v]!;
  const y = pieces.vertices[2 * v + 1]!;
  const { boxes, shape, ends } = pieces;
  const box = 4 * k;
  const { snap } = cuts;
  if (x + snap < boxes[box]! || y + snap < boxes[box + 1]!) return false;
  if (x - snap > boxes[box + 2]! || y - snap > boxes[box + 3]!) return false;
  const at = SHAPE * k;
  const toStart = (x - shape[at]!) ** 2 + (y - shape[at + 1]!) ** 2;
  if (toStart <= snap * snap) {
    joinVertices(cuts.union, v, ends[2 * k]!, toStart);
    return true;
  }
  const toEnd = (x - shape[at + 2]!) ** 2 + (y - shape[at + 3]!) ** 2;
  if (toEnd <= snap * snap) {
    joinVertices(cuts.union, v, ends[2 * k + 1]!, toEnd);
    return true;
  }
  if (carrierDistance(pieces, k, x, y) > cuts.touch) return false;
  const place = placeAlong(pieces, k, x, y);
  if (Number.isNaN(place)) return false;
  addCut(cuts, k, place, v);
  return true;
}

function carrierDistance(pieces: Pieces, k: number, x: number, y: number): number {
  const { shape } = pieces;
  const at = SHAPE * k;
  if (pieces.turn[k] !== 0) {
    const dx = x - shape[at + 4]!;
    const dy = y - shape[at + 5]!;
    return Math.abs(Math.sqrt(dx * dx + dy * dy) - shape[at + 6]!);
  }
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const ux = shape[at + 2]! - x0;
  const uy = shape[at + 3]! - y0;
  return Math.abs(ux * (y - y0) - uy * (x - x0)) / Math.sqrt(ux * ux + uy * uy);
}

/** A measure that grows along the piece, in (0, 1) for a line and (0, 2) for an arc; NaN beyond its ends. */
function placeAlong(pieces: Pieces, k: number, x: number, y: number): number {
  const { shape } = pieces;
  const at = SHAPE * k;
  const turn = pieces.turn[k]!;
  if (turn === 0) {
    const ux = shape[at + 2]! - shape[at]!;
    const uy = shape[at + 3]! - shape[at + 1]!;
    const t = (ux * (x - shape[at]!) + uy * (y - shape[at + 1]!)) / (ux * ux + uy * uy);
    return t > 0 && t < 1 ? t : Number.NaN;
  }
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  const qx = x - cx;
  const qy = y - cy;
  const ax = shape[at]! - cx;
  const ay = shape[at + 1]! - cy;
  const after = turn * (ax * qy - ay * qx);
  const before = turn * (qx * (shape[at + 3]! - cy) - qy * (shape[at + 2]! - cx));
  if (!(after > 0) || !(before > 0)) return Number.NaN;
  const dot = ax * qx + ay * qy;
  return dot >= 0 ? after / (after + dot) : 1 - dot / (after - dot);
}

function meetLines(pieces: Pieces, cuts: Cuts, i: number, j: number): void {
  const { shape } = pieces;
  const p = SHAPE * i;
  const q = SHAPE * j;
  const ax = shape[p]!;
  const ay = shape[p + 1]!;
  const ux = shape[p + 2]! - ax;
  const uy = shape[p + 3]! - ay;
  const bx = shape[q]!;
  const by = shape[q + 1]!;
  const vx = shape[q + 2]! - bx;
  const vy = shape[q + 3]! - by;
  const nearA = cuts.snap * (Math.abs(ux) + Math.abs(uy));
  const nearB = cuts.snap * (Math.abs(vx) + Math.abs(vy));
  // Twice the areas: distance from one line, times its length.
  const s0 = ux * (by - ay) - uy * (bx - ax);
  const s1 = s0 + ux * vy - uy * vx;
  if ((s0 > nearA && s1 > nearA) || (s0 < -nearA && s1 < -nearA)) return;
  const t0 = vx * (ay - by) - vy * (ax - bx);
  const t1 = t0 + vx * uy - vy * ux;
  if ((t0 > nearB && t1 > nearB) || (t0 < -nearB && t1 < -nearB)) return;
  const clear = Math.abs(s0) > nearA && Math.abs(s1) > nearA && Math.abs(t0) > nearB && Math.abs(t1) > nearB;
  const met = clear ? NO_END : meetEnds(pieces, cuts, i, j);
  if (s0 > 0 === s1 > 0 || t0 > 0 === t1 > 0) return;
  // Along the piece that is crossed more squarely from end to end, measured from its nearer end.
  const f = s0 / (s0 - s1);
  const x = bx + f * vx;
  const y = by + f * vy;
  if (met !== NO_END && isKnown(pieces, cuts, i, j, met, x, y)) return;
  const v = addVertex(pieces, x, y);
  addCut(cuts, i, t0 / (t0 - t1), v);
  addCut(cuts, j, f, v);
}

function meetLineAndArc(pieces: Pieces, cuts: Cuts, i: number, j: number): void {
  const { shape } = pieces;
  const p = SHAPE * i;
  const q = SHAPE * j;
  const x0 = shape[p]!;
  const y0 = shape[p + 1]!;
  let ux = shape[p + 2]! - x0;
  let uy = shape[p + 3]! - y0;
  const size = Math.sqrt(ux * ux + uy * uy);
  ux /= size;
  uy /= size;
  const cx = shape[q + 4]!;
  const cy = shape[q + 5]!;
  const r = shape[q + 6]!;
  // The line passes the centre at h to its left.
  const h = ux * (cy - y0) - uy * (cx - x0);
  const depth = r - Math.abs(h);
  if (depth < -cuts.snap) return;
  const met = meetEnds(pieces, cuts, i, j);
  if (depth < -cuts.touch) return;
  const fx = cx + uy * h;
  const fy = cy - ux * h;
  if (depth <= cuts.touch) {
    offerCrossing(pieces, cuts, i, j, met, fx, fy);
    return;
  }
  const half = Math.sqrt(depth * (r + Math.abs(h)));
  offerCrossing(pieces, cuts, i, j, met, fx - half * ux, fy - half * uy);
  offerCrossing(pieces, cuts, i, j, met, fx + half * ux, fy + half * uy);
}

function meetArcs(pieces: Pieces, cuts: Cuts, i: number, j: number): void {
  const { shape } = pieces;
  // Measured from the smaller circle's centre, where the rounding is smaller too.
  const swap = shape[SHAPE * i + 6]! > shape[SHAPE * j + 6]!;
  const p = SHAPE * (swap ? j : i);
  const q = SHAPE * (swap ? i : j);
  const cx = shape[p + 4]!;
  const cy = shape[p + 5]!;
  const small = shape[p + 6]!;
  const large = shape[q + 6]!;
  const dx = shape[q + 4]! - cx;
  const dy = shape[q + 5]! - cy;
  const d = Math.sqrt(dx * dx + dy * dy);
  const gap = large - small;
  const outside = small + large - d;
  const inside = d - gap;
  if (outside < -cuts.snap || inside < -cuts.snap) return;
  const met = meetEnds(pieces, cuts, i, j);
  // One circle: they run along each other.
  if (d + gap <= cuts.touch) return;
  if (outside < -cuts.touch || inside < -cuts.touch) return;
  const ux = dx / d;
  const uy = dy / d;
  let reach = (d - (gap * (small + large)) / d) / 2;
  reach = reach > small ? small : Math.max(reach, -small);
  const fx = cx + ux * reach;
  const fy = cy + uy * reach;
  if (outside <= cuts.touch || inside <= cuts.touch) {
    // On the circle itself: where centres lie close together the foot may be far from it, the lens being long and thin.
    const side = reach > 0 ? small : -small;
    offerCrossing(pieces, cuts, i, j, met, cx + ux * side, cy + uy * side);
    return;
  }
  const half = Math.sqrt(inside * outside * (d + gap) * (small + large + d)) / (2 * d);
  offerCrossing(pieces, cuts, i, j, met, fx - half * uy, fy + half * ux);
  offerCrossing(pieces, cuts, i, j, met, fx + half * uy, fy - half * ux);
}

/** Cuts both pieces at a crossing of their carriers, if it lies inside both and is not an end already met. */
function offerCrossing(
  pieces: Pieces,
  cuts: Cuts,
  i: number,
  j: number,
  met: number,
  x: number,
  y: number,
): void {
  const onI = placeAlong(pieces, i, x, y);
  if (Number.isNaN(onI)) return;
  const onJ = placeAlong(pieces, j, x, y);
  if (Number.isNaN(onJ)) return;
  if (met !== NO_END && isKnown(pieces, cuts, i, j, met, x, y)) return;
  const settled = settleCrossing(pieces, i, j, x, y);
  const v = addVertex(pieces, settled.x, settled.y);
  addCut(cuts, i, onI, v);
  addCut(cuts, j, onJ, v);
}

/** Is a crossing one of the ends that met? It is when the pieces do not part on the way from the one to the other. */
function isKnown(
  pieces: Pieces,
  cuts: Cuts,
  i: number,
  j: number,
  met: number,
  x: number,
  y: number,
): boolean {
  const { ends, vertices } = pieces;
  for (let end = 0; end < 4; end++) {
    if ((met & (1 << end)) === 0) continue;
    const v = ends[end < 2 ? 2 * i + end : 2 * j + end - 2]!;
    const vx = vertices[2 * v]!;
    const vy = vertices[2 * v + 1]!;
    const square = (vx - x) ** 2 + (vy - y) ** 2;
    if (square <= cuts.snap * cuts.snap) return true;
    if (square <= SHARED_2 && isShared(ends, i, j, v)) return true;
    const other = end < 2 ? j : i;
    if (carrierDistance(pieces, other, vx, vy) > cuts.touch) continue;
    if (partedAt(pieces, i, j, (vx + x) / 2, (vy + y) / 2) <= cuts.touch) return true;
  }
  return false;
}

/** Distance between the carriers of two pieces beside (x, y), which lies near both, mm. */
function partedAt(pieces: Pieces, i: number, j: number, x: number, y: number): number {
  if (pieces.turn[i] === 0) return carrierDistance(pieces, j, ...footOnLine(pieces, i, x, y));
  const at = SHAPE * i;
  const cx = pieces.shape[at + 4]!;
  const cy = pieces.shape[at + 5]!;
  const f = pieces.shape[at + 6]! / norm(x - cx, y - cy);
  return carrierDistance(pieces, j, cx + f * (x - cx), cy + f * (y - cy));
}

function footOnLine(pieces: Pieces, i: number, x: number, y: number): [number, number] {
  const at = SHAPE * i;
  const x0 = pieces.shape[at]!;
  const y0 = pieces.shape[at + 1]!;
  const ux = pieces.shape[at + 2]! - x0;
  const uy = pieces.shape[at + 3]! - y0;
  const f = (ux * (x - x0) + uy * (y - y0)) / (ux * ux + uy * uy);
  return [x0 + f * ux, y0 + f * uy];
}

function isShared(ends: Int32Array, i: number, j: number, v: number): boolean {
  return (ends[2 * i] === v || ends[2 * i + 1] === v) && (ends[2 * j] === v || ends[2 * j + 1] === v);
}
