import { type BoxTree, searchBoxTree } from '../index-tree/box-tree.ts';
import type { Arrangement } from './arrangement.ts';
import { SHAPE } from './pieces.ts';
import { crossingRightwards, crossingUpwards } from './ray.ts';

/** How often each operand winds round the points beside the middle of a slice. */
export interface Windings {
  left0: number;
  right0: number;
  left1: number;
  right1: number;
}

export interface Way {
  upright: boolean;
  leavesLeft: boolean;
}

const WAY: Way = { upright: false, leavesLeft: false };

/** The ray that leaves a slice more squarely, and whether it does so on its left. The record is used again. */
export function wayOf({ pieces, slices }: Arrangement, slice: number): Readonly<Way> {
  const { shape, vertices } = pieces;
  const piece = slices.piece[slice]!;
  const turn = pieces.turn[piece]!;
  const v0 = slices.start[slice]!;
  const v1 = slices.end[slice]!;
  let tx = vertices[2 * v1]! - vertices[2 * v0]!;
  let ty = vertices[2 * v1 + 1]! - vertices[2 * v0 + 1]!;
  if (turn !== 0) {
    tx = -turn * (slices.middles[2 * slice + 1]! - shape[SHAPE * piece + 5]!);
    ty = turn * (slices.middles[2 * slice]! - shape[SHAPE * piece + 4]!);
  }
  WAY.upright = Math.abs(tx) > Math.abs(ty);
  WAY.leavesLeft = WAY.upright ? tx > 0 : ty < 0;
  return WAY;
}

/**
 * Casts a ray from the middle of a slice to the right, or upwards where the slice runs more across than up; every other slice that it crosses
 * counts. Whether a slice is crossed is decided by the heights of its vertices alone (one below or level, the other above), so that slices that meet at
 * a vertex never count twice or not at all; on which side of a line the ray starts is an exact predicate.
 *
 * Looks at all slices, or at those of `live` that a tree over them finds.
 */
export function cast(
  arrangement: Arrangement,
  slice: number,
  live: Int32Array | undefined,
  tree: BoxTree | undefined,
): Readonly<Windings> {
  const { slices, counts, pieces } = arrangement;
  const x = slices.middles[2 * slice]!;
  const y = slices.middles[2 * slice + 1]!;
  const { upright, leavesLeft } = wayOf(arrangement, slice);
  const { boxes } = pieces;
  const [count0, count1] = counts;
  let w0 = 0;
  let w1 = 0;
  const meet = (s: number): void => {
    const box = 4 * slices.piece[s]!;
    // A ray to the right meets no piece that lies wholly above, below or to the left of its start; likewise upwards.
    if (boxes[box + 2]! < x || boxes[box + 3]! < y || (upright ? boxes[box]! > x : boxes[box + 1]! > y))
      return;
    if (s === slice || (count0[s] === 0 && count1[s] === 0)) return;
    const crossing = crossingOf(arrangement, s, upright, x, y);
    w0 += crossing * count0[s]!;
    w1 += crossing * count1[s]!;
  };
  if (tree === undefined || live === undefined) for (let s = 0; s < slices.count; s++) meet(s);
  else {
    const farX = upright ? x : Number.MAX_VALUE;
    const farY = upright ? Number.MAX_VALUE : y;
    searchBoxTree(tree, x, y, farX, farY, (k) => {
      meet(live[k]!);
      return false;
    });
  }
  return windingsBeside(arrangement, slice, leavesLeft, w0, w1);
}

const FOUND: Windings = { left0: 0, right0: 0, left1: 0, right1: 0 };

/** From what all other slices wind round the middle of one: where the ray leaves on its left, that is the left; otherwise the right. */
export function windingsBeside(
  { counts: [count0, count1] }: Arrangement,
  slice: number,
  leavesLeft: boolean,
  w0: number,
  w1: number,
): Readonly<Windings> {
  const c0 = count0[slice]!;
  const c1 = count1[slice]!;
  FOUND.left0 = leavesLeft ? w0 : w0 + c0;
  FOUND.right0 = FOUND.left0 - c0;
  FOUND.left1 = leavesLeft ? w1 : w1 + c1;
  FOUND.right1 = FOUND.left1 - c1;
  return FOUND;
}

export function crossingOf(
  { pieces, slices }: Arrangement,
  s: number,
  upright: boolean,
  x: number,
  y: number,
): number {
  const { vertices, shape } = pieces;
  const v0 = 2 * slices.start[s]!;
  const v1 = 2 * slices.end[s]!;
  const piece = slices.piece[s]!;
  const at = SHAPE * piece;
  return (upright ? crossingUpwards : crossingRightwards)(
    vertices[v0]!,
    vertices[v0 + 1]!,
    vertices[v1]!,
    vertices[v1 + 1]!,
    pieces.turn[piece]!,
    shape[at + 4]!,
    shape[at + 5]!,
    shape[at + 6]!,
    x,
    y,
  );
}
