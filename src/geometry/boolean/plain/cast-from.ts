import { crossingOfArc, crossingOfLine } from '../../arrangement/ray.ts';
import { PLAIN_SHAPE, type Workspace } from './workspace.ts';

/** How often the operands wind round the points to the left of a piece. */
export interface LeftWindings {
  left0: number;
  left1: number;
}

const FOUND: LeftWindings = { left0: 0, left1: 0 };

/**
 * Casts a ray from the middle of a piece, or half way from its start to its first entry; see windingCaster for how crossings are counted.
 * The record returned is reused by the next call.
 */
export function castFrom(w: Workspace, piece: number, entry: number): Readonly<LeftWindings> {
  const { shape, boxes, pieceCount, loopOf, sideOf } = w;
  const at = PLAIN_SHAPE * piece;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const x1 = entry < 0 ? shape[at + 2]! : w.places[entry & ~1]!;
  const y1 = entry < 0 ? shape[at + 3]! : w.places[entry | 1]!;
  let x = (x0 + x1) / 2;
  let y = (y0 + y1) / 2;
  let tx = x1 - x0;
  let ty = y1 - y0;
  const turn = shape[at + 7]!;
  if (turn !== 0) {
    const cx = shape[at + 4]!;
    const cy = shape[at + 5]!;
    const size = shape[at + 6]! / Math.sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy));
    x = cx + (x - cx) * size;
    y = cy + (y - cy) * size;
    tx = -turn * (y - cy);
    ty = turn * (x - cx);
  }
  const upright = Math.abs(tx) > Math.abs(ty);
  let w0 = 0;
  let w1 = 0;
  for (let i = 0, box = 0; i < pieceCount; i++, box += 4) {
    // A ray to the right meets no piece that lies wholly above, below or to the left of its start; likewise upwards.
    if (boxes[box + 2]! < x || boxes[box + 3]! < y || (upright ? boxes[box]! > x : boxes[box + 1]! > y))
      continue;
    if (i === piece) continue;
    const crossing = upright
      ? upwards(shape, PLAIN_SHAPE * i, x, y)
      : rightwards(shape, PLAIN_SHAPE * i, x, y);
    if (sideOf[loopOf[i]!] === 0) w0 += crossing;
    else w1 += crossing;
  }
  // Where the ray leaves on the right of the piece, the left winds once more round.
  const leavesLeft = upright ? tx > 0 : ty < 0;
  if (!leavesLeft) {
    if (sideOf[loopOf[piece]!] === 0) w0++;
    else w1++;
  }
  FOUND.left0 = w0;
  FOUND.left1 = w1;
  return FOUND;
}

function rightwards(shape: Float64Array, at: number, x: number, y: number): number {
  const turn = shape[at + 7]!;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const x1 = shape[at + 2]!;
  const y1 = shape[at + 3]!;
  if (turn === 0) return crossingOfLine(x0, y0, x1, y1, x, y);
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  return turn > 0
    ? crossingOfArc(x0, y0, x1, y1, cx, cy, shape[at + 6]!, x, y)
    : -crossingOfArc(x1, y1, x0, y0, cx, cy, shape[at + 6]!, x, y);
}

/** By swapping the axes, which turns every direction round. */
function upwards(shape: Float64Array, at: number, x: number, y: number): number {
  const turn = shape[at + 7]!;
  const x0 = shape[at]!;
  const y0 = shape[at + 1]!;
  const x1 = shape[at + 2]!;
  const y1 = shape[at + 3]!;
  if (turn === 0) return -crossingOfLine(y0, x0, y1, x1, y, x);
  const cx = shape[at + 4]!;
  const cy = shape[at + 5]!;
  return turn < 0
    ? -crossingOfArc(y0, x0, y1, x1, cy, cx, shape[at + 6]!, y, x)
    : crossingOfArc(y1, x1, y0, x0, cy, cx, shape[at + 6]!, y, x);
}
