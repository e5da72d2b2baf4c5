import { type BoxTree, buildPassingTree, searchBoxTree } from '../index-tree/box-tree.ts';
import { reals } from '../memory/lists.ts';
import { norm } from '../vec.ts';
import type { Arrangement } from './arrangement.ts';
import { SHAPE } from './pieces.ts';
import { crossingOfArc, crossingOfLine } from './ray.ts';

/**
 * How often each operand winds round the points beside the middle of a slice. A ray is cast to the right, or upwards
 * where the slice runs more across than up; every other slice that it crosses counts. Whether a slice is crossed is
 * decided by the heights of its vertices alone (one below or level, the other above), so that slices that meet at a
 * vertex never count twice or not at all; on which side of a line the ray starts is an exact predicate.
 */
export interface Windings {
  left0: number;
  right0: number;
  left1: number;
  right1: number;
}

/** Beyond this many comparisons a tree over the slices pays. */
const TREE_FROM = 20_000;

/** Sets up the casting of rays for an arrangement; the record returned by each cast is reused by the next. */
export function windingCaster(arrangement: Arrangement): (slice: number) => Readonly<Windings> {
  const { slices, chains } = arrangement;
  const found: Windings = { left0: 0, right0: 0, left1: 0, right1: 0 };
  const useTree = slices.count * chains.count > TREE_FROM;
  const trees: (BoxTree | undefined)[] = useTree ? [treeOf(arrangement)] : [];
  return (slice) => {
    cast(arrangement, slice, trees[0], found);
    return found;
  };
}

function treeOf({ pieces, slices, counts }: Arrangement): BoxTree {
  // A slice lies in the box of its piece; a long piece cut in many would spoil the tree, so it gets its own box.
  const boxes = reals(4 * slices.count);
  for (let s = 0; s < slices.count; s++) {
    const live = counts[0][s] !== 0 || counts[1][s] !== 0;
    const piece = slices.piece[s]!;
    const xs = [slices.start[s]!, slices.end[s]!].map((v) => pieces.vertices[2 * v]!);
    const ys = [slices.start[s]!, slices.end[s]!].map((v) => pieces.vertices[2 * v + 1]!);
    const bulge =
      pieces.turn[piece] === 0 ? 0 : bulgeOf(arrangementChord(xs, ys), pieces.shape[SHAPE * piece + 6]!);
    boxes[4 * s] = live ? Math.min(xs[0]!, xs[1]!) - bulge : Infinity;
    boxes[4 * s + 1] = live ? Math.min(ys[0]!, ys[1]!) - bulge : Infinity;
    boxes[4 * s + 2] = live ? Math.max(xs[0]!, xs[1]!) + bulge : Infinity;
    boxes[4 * s + 3] = live ? Math.max(ys[0]!, ys[1]!) + bulge : Infinity;
  }
  return buildPassingTree(boxes, slices.count);
}

function arrangementChord(xs: readonly number[], ys: readonly number[]): number {
  return norm(xs[0]! - xs[1]!, ys[0]! - ys[1]!);
}

/** Height of an arc of less than half a turn over its chord, mm, and a hair. */
function bulgeOf(chord: number, radius: number): number {
  const half = Math.min(chord / 2, radius);
  return (half * half) / (radius + Math.sqrt((radius - half) * (radius + half))) + 1e-6;
}

function cast(arrangement: Arrangement, slice: number, tree: BoxTree | undefined, found: Windings): void {
  const { pieces, slices, counts } = arrangement;
  const piece = slices.piece[slice]!;
  const x = slices.middles[2 * slice]!;
  const y = slices.middles[2 * slice + 1]!;
  const { shape, vertices } = pieces;
  const turn = pieces.turn[piece]!;
  const v0 = slices.start[slice]!;
  const v1 = slices.end[slice]!;
  let tx = vertices[2 * v1]! - vertices[2 * v0]!;
  let ty = vertices[2 * v1 + 1]! - vertices[2 * v0 + 1]!;
  if (turn !== 0) {
    tx = -turn * (y - shape[SHAPE * piece + 5]!);
    ty = turn * (x - shape[SHAPE * piece + 4]!);
  }
  const upright = Math.abs(tx) > Math.abs(ty);
  const { boxes } = pieces;
  const [count0, count1] = counts;
  let w0 = 0;
  let w1 = 0;
  const meet = (s: number): boolean => {
    const box = 4 * slices.piece[s]!;
    // A ray to the right meets no piece that lies wholly above, below or to the left of its start; likewise upwards.
    if (boxes[box + 2]! < x || boxes[box + 3]! < y || (upright ? boxes[box]! > x : boxes[box + 1]! > y))
      return false;
    if (s === slice || (count0[s] === 0 && count1[s] === 0)) return false;
    const crossing = upright
      ? crossingUpwards(arrangement, s, x, y)
      : crossingRightwards(arrangement, s, x, y);
    w0 += crossing * count0[s]!;
    w1 += crossing * count1[s]!;
    return false;
  };
  if (tree === undefined) for (let s = 0; s < slices.count; s++) meet(s);
  else if (upright) searchBoxTree(tree, x, y, x, Number.MAX_VALUE, meet);
  else searchBoxTree(tree, x, y, Number.MAX_VALUE, y, meet);
  // Where the ray leaves on the left of the slice, what was counted is the left; otherwise the right.
  const leavesLeft = upright ? tx > 0 : ty < 0;
  const c0 = count0[slice]!;
  const c1 = count1[slice]!;
  found.left0 = leavesLeft ? w0 : w0 + c0;
  found.right0 = found.left0 - c0;
  found.left1 = leavesLeft ? w1 : w1 + c1;
  found.right1 = found.left1 - c1;
}

/** 1 when the slice crosses the ray from (x, y) towards +x upwards, −1 downwards, 0 when it does not. */
function crossingRightwards({ pieces, slices }: Arrangement, s: number, x: number, y: number): number {
  const { vertices, shape } = pieces;
  const v0 = slices.start[s]!;
  const v1 = slices.end[s]!;
  const y0 = vertices[2 * v0 + 1]!;
  const y1 = vertices[2 * v1 + 1]!;
  const piece = slices.piece[s]!;
  const turn = pieces.turn[piece]!;
  const x0 = vertices[2 * v0]!;
  const x1 = vertices[2 * v1]!;
  if (turn === 0) return crossingOfLine(x0, y0, x1, y1, x, y);
  const at = SHAPE * piece;
  return turn > 0
    ? crossingOfArc(x0, y0, x1, y1, shape[at + 4]!, shape[at + 5]!, shape[at + 6]!, x, y)
    : -crossingOfArc(x1, y1, x0, y0, shape[at + 4]!, shape[at + 5]!, shape[at + 6]!, x, y);
}

/** The same for a ray towards +y, by swapping the axes, which turns every direction round. */
function crossingUpwards({ pieces, slices }: Arrangement, s: number, x: number, y: number): number {
  const { vertices, shape } = pieces;
  const v0 = slices.start[s]!;
  const v1 = slices.end[s]!;
  const y0 = vertices[2 * v0]!;
  const y1 = vertices[2 * v1]!;
  const piece = slices.piece[s]!;
  const turn = pieces.turn[piece]!;
  const x0 = vertices[2 * v0 + 1]!;
  const x1 = vertices[2 * v1 + 1]!;
  if (turn === 0) return -crossingOfLine(x0, y0, x1, y1, y, x);
  const at = SHAPE * piece;
  return turn < 0
    ? -crossingOfArc(x0, y0, x1, y1, shape[at + 5]!, shape[at + 4]!, shape[at + 6]!, y, x)
    : crossingOfArc(x1, y1, x0, y0, shape[at + 5]!, shape[at + 4]!, shape[at + 6]!, y, x);
}
