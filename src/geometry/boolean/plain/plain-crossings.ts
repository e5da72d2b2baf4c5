import { PLAIN_ANGLE, PLAIN_CLEARANCE } from '../../tolerance.ts';
import { MOST_ENTRIES, PLAIN_SHAPE, type Workspace } from './workspace.ts';

const NEAR_2 = PLAIN_CLEARANCE * PLAIN_CLEARANCE;
const SINE_2 = PLAIN_ANGLE * PLAIN_ANGLE;
/** Which pieces of a loop follow each other: bit 1 when i ends where j begins, bit 2 when j ends where i begins. */
const APART = 0;

/** Finds every crossing. False when any meeting of two pieces is not a clear crossing inside both. */
export function findPlainCrossings(w: Workspace): boolean {
  const { boxes, pieceCount, loopOf, edgeOf, pieceStart } = w;
  for (let i = 0; i < pieceCount; i++) {
    const minX = boxes[4 * i]! - PLAIN_CLEARANCE;
    const minY = boxes[4 * i + 1]! - PLAIN_CLEARANCE;
    const maxX = boxes[4 * i + 2]! + PLAIN_CLEARANCE;
    const maxY = boxes[4 * i + 3]! + PLAIN_CLEARANCE;
    const loop = loopOf[i]!;
    const first = pieceStart[loop]!;
    const last = pieceStart[loop + 1]! - 1;
    for (let j = i + 1, at = 4 * j; j < pieceCount; j++, at += 4) {
      if (boxes[at]! > maxX || boxes[at + 2]! < minX || boxes[at + 1]! > maxY || boxes[at + 3]! < minY)
        continue;
      // An arc does not meet itself.
      if (edgeOf[i] === edgeOf[j]) continue;
      let joint = APART;
      if (j <= last) joint = (j === i + 1 ? 1 : 0) | (i === first && j === last ? 2 : 0);
      if (joint === 1 && partAtJoint(w.shape, PLAIN_SHAPE * i, PLAIN_SHAPE * j)) continue;
      if (joint === 2 && partAtJoint(w.shape, PLAIN_SHAPE * j, PLAIN_SHAPE * i)) continue;
      if (!meet(w, i, j, joint)) return false;
    }
  }
  return true;
}

/**
 * Do the piece at p and its successor at q surely part for good at their joint? An arc of less than 170 degrees lies within 85 degrees of
 * its direction at the joint, a line in that direction: the two cones are apart unless the corner is sharper than that.
 */
function partAtJoint(shape: Float64Array, p: number, q: number): boolean {
  const x = shape[q]!;
  const y = shape[q + 1]!;
  const turnP = shape[p + 7]!;
  const turnQ = shape[q + 7]!;
  const tx = turnP === 0 ? x - shape[p]! : -turnP * (y - shape[p + 5]!);
  const ty = turnP === 0 ? y - shape[p + 1]! : turnP * (x - shape[p + 4]!);
  const ux = turnQ === 0 ? shape[q + 2]! - x : -turnQ * (y - shape[q + 5]!);
  const uy = turnQ === 0 ? shape[q + 3]! - y : turnQ * (x - shape[q + 4]!);
  const dot = tx * ux + ty * uy;
  const cross = tx * uy - ty * ux;
  // Directions up to 179, 94 or 9 degrees apart.
  if (turnP === 0 && turnQ === 0) return dot > 0 || Math.abs(cross) > -0.017 * dot;
  if (turnP === 0 || turnQ === 0) return dot > -0.07 * Math.abs(cross);
  return dot > 0 && Math.abs(cross) < 0.158 * dot;
}

function meet(w: Workspace, i: number, j: number, joint: number): boolean {
  const { shape } = w;
  const p = PLAIN_SHAPE * i;
  const q = PLAIN_SHAPE * j;
  if (shape[p + 7] === 0) {
    return shape[q + 7] === 0 ? meetLines(w, i, j, joint) : meetLineAndArc(w, i, j, joint, p, q);
  }
  return shape[q + 7] === 0 ? meetLineAndArc(w, i, j, joint, q, p) : meetArcs(w, i, j, joint);
}

function meetLines(w: Workspace, i: number, j: number, joint: number): boolean {
  const { shape } = w;
  const p = PLAIN_SHAPE * i;
  const q = PLAIN_SHAPE * j;
  const ax = shape[p]!;
  const ay = shape[p + 1]!;
  const ux = shape[p + 2]! - ax;
  const uy = shape[p + 3]! - ay;
  const bx = shape[q]!;
  const by = shape[q + 1]!;
  const vx = shape[q + 2]! - bx;
  const vy = shape[q + 3]! - by;
  const nearA = PLAIN_CLEARANCE * (Math.abs(ux) + Math.abs(uy));
  const nearB = PLAIN_CLEARANCE * (Math.abs(vx) + Math.abs(vy));
  // Twice the areas: distance from one line, times its length.
  const s0 = ux * (by - ay) - uy * (bx - ax);
  const s1 = s0 + ux * vy - uy * vx;
  if ((s0 > nearA && s1 > nearA) || (s0 < -nearA && s1 < -nearA)) return true;
  const t0 = vx * (ay - by) - vy * (ax - bx);
  const t1 = t0 + vx * uy - vy * ux;
  if ((t0 > nearB && t1 > nearB) || (t0 < -nearB && t1 < -nearB)) return true;
  if (joint !== APART) return false;
  if (Math.abs(s0) <= nearA || Math.abs(s1) <= nearA || Math.abs(t0) <= nearB || Math.abs(t1) <= nearB)
    return false;
  const f = s0 / (s0 - s1);
  return addCrossing(w, i, j, bx + f * vx, by + f * vy);
}

/** The line lies at p, the arc at q in the shapes; one of them is piece i, the other j. */
function meetLineAndArc(w: Workspace, i: number, j: number, joint: number, p: number, q: number): boolean {
  const { shape } = w;
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
  const h = ux * (cy - y0) - uy * (cx - x0);
  const depth = r - Math.abs(h);
  if (depth < -PLAIN_CLEARANCE) return true;
  if (depth <= PLAIN_CLEARANCE) return false;
  const fx = cx + uy * h;
  const fy = cy - ux * h;
  const half = Math.sqrt(depth * (r + Math.abs(h)));
  return (
    offer(w, i, j, joint, fx - half * ux, fy - half * uy) &&
    offer(w, i, j, joint, fx + half * ux, fy + half * uy)
  );
}

function meetArcs(w: Workspace, i: number, j: number, joint: number): boolean {
  const { shape } = w;
  // Measured from the smaller circle's centre, where the rounding is smaller too.
  const swap = shape[PLAIN_SHAPE * i + 6]! > shape[PLAIN_SHAPE * j + 6]!;
  const p = PLAIN_SHAPE * (swap ? j : i);
  const q = PLAIN_SHAPE * (swap ? i : j);
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
  if (outside < -PLAIN_CLEARANCE || inside < -PLAIN_CLEARANCE) return true;
  if (outside <= PLAIN_CLEARANCE || inside <= PLAIN_CLEARANCE) return false;
  const ux = dx / d;
  const uy = dy / d;
  const reach = (d - (gap * (small + large)) / d) / 2;
  const fx = cx + ux * reach;
  const fy = cy + uy * reach;
  const half = Math.sqrt(inside * outside * (d + gap) * (small + large + d)) / (2 * d);
  return (
    offer(w, i, j, joint, fx - half * uy, fy + half * ux) &&
    offer(w, i, j, joint, fx + half * uy, fy - half * ux)
  );
}

/** Takes a crossing of the carriers where it lies in both pieces. False when it lies near an end of either that both do not share. */
function offer(w: Workspace, i: number, j: number, joint: number, x: number, y: number): boolean {
  const onI = lieOf(w.shape, PLAIN_SHAPE * i, x, y);
  if (onI < 0) return true;
  const onJ = lieOf(w.shape, PLAIN_SHAPE * j, x, y);
  if (onJ < 0) return true;
  if (onI > 0 && onJ > 0) return addCrossing(w, i, j, x, y);
  if (joint === APART) return false;
  const { shape } = w;
  for (let bit = 1; bit <= 2; bit++) {
    const at = PLAIN_SHAPE * (bit === 1 ? j : i);
    if ((joint & bit) !== 0 && (x - shape[at]!) ** 2 + (y - shape[at + 1]!) ** 2 <= 4 * NEAR_2) return true;
  }
  return false;
}

/** Does a point of the carrier of the piece at `at` lie inside the piece (1), near an end (0) or outside (−1)? */
function lieOf(shape: Float64Array, at: number, x: number, y: number): number {
  const px = x - shape[at]!;
  const py = y - shape[at + 1]!;
  const qx = shape[at + 2]! - x;
  const qy = shape[at + 3]! - y;
  if (px * px + py * py <= NEAR_2 || qx * qx + qy * qy <= NEAR_2) return 0;
  const turn = shape[at + 7]!;
  if (turn === 0) return px * qx + py * qy > 0 ? 1 : -1;
  // Ahead of the start and short of the end, seen from the centre: a way of less than half a turn.
  const rx = x - shape[at + 4]!;
  const ry = y - shape[at + 5]!;
  return turn * (rx * py - ry * px) > 0 && turn * (rx * qy - ry * qx) > 0 ? 1 : -1;
}

function addCrossing(w: Workspace, i: number, j: number, x: number, y: number): boolean {
  const { shape, entryPlace, entryPiece, entryStep, places } = w;
  const k = w.entryCount;
  if (k + 2 > MOST_ENTRIES) return false;
  const p = PLAIN_SHAPE * i;
  const q = PLAIN_SHAPE * j;
  const turnP = shape[p + 7]!;
  const turnQ = shape[q + 7]!;
  const tx = turnP === 0 ? shape[p + 2]! - shape[p]! : -turnP * (y - shape[p + 5]!);
  const ty = turnP === 0 ? shape[p + 3]! - shape[p + 1]! : turnP * (x - shape[p + 4]!);
  const ux = turnQ === 0 ? shape[q + 2]! - shape[q]! : -turnQ * (y - shape[q + 5]!);
  const uy = turnQ === 0 ? shape[q + 3]! - shape[q + 1]! : turnQ * (x - shape[q + 4]!);
  const cross = tx * uy - ty * ux;
  if (cross * cross < SINE_2 * (tx * tx + ty * ty) * (ux * ux + uy * uy)) return false;
  w.entryCount = k + 2;
  places[k] = x;
  places[k + 1] = y;
  entryPiece[k] = i;
  entryPiece[k + 1] = j;
  entryPlace[k] = (x - shape[p]!) ** 2 + (y - shape[p + 1]!) ** 2;
  entryPlace[k + 1] = (x - shape[q]!) ** 2 + (y - shape[q + 1]!) ** 2;
  // Where j turns off to the left of i, who goes along i leaves j's left for its right, and who goes along j enters i's left.
  entryStep[k] = cross > 0 ? -1 : 1;
  entryStep[k + 1] = cross > 0 ? 1 : -1;
  return true;
}
