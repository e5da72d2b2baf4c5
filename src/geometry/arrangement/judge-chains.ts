import { type BoxTree, buildPassingTree } from '../index-tree/box-tree.ts';
import { markLists, reals, releaseLists, unfilled } from '../memory/lists.ts';
import { norm } from '../vec.ts';
import type { Arrangement } from './arrangement.ts';
import { SHAPE } from './pieces.ts';
import { PLACE, type Walls, walkThrough } from './walk.ts';
import { cast, crossingOf, type Windings, wayOf, windingsBeside } from './winding.ts';

/** Beyond this many comparisons a tree over the slices pays. */
const TREE_FROM = 20_000;
/** Beyond so many, which rays may come to even through a tree, one way past all chains does. */
const WALK_FROM = 1_000_000;

type Judge = (chain: number, windings: Readonly<Windings>) => void;

/**
 * Tells `judge` how often each operand winds round the points beside the longest slice of every chain; the record is used again for the next, and a chain may
 * be told of twice, the second time for good.
 *
 * Of few chains each casts a ray. Of many only the way from one to the next is looked at; a ray is cast for each all the same should that walk not come out.
 */
export function judgeChains(arrangement: Arrangement, judge: Judge): void {
  const { slices, chains } = arrangement;
  const comparisons = slices.count * chains.count;
  if (comparisons <= TREE_FROM) {
    castForEach(arrangement, judge);
    return;
  }
  const mark = markLists();
  const live = liveSlices(arrangement);
  const tree = treeOf(arrangement, live);
  const walked = comparisons > WALK_FROM && walkChains(arrangement, live, tree, judge);
  if (!walked) castForEach(arrangement, judge, live, tree);
  releaseLists(mark);
}

function castForEach(arrangement: Arrangement, judge: Judge, live?: Int32Array, tree?: BoxTree): void {
  const { count } = arrangement.chains;
  for (let c = 0; c < count; c++) judge(c, cast(arrangement, longestOf(arrangement, c), live, tree));
}

function longestOf({ chains }: Arrangement, c: number): number {
  const step = chains.longest[c]!;
  return step >= 0 ? step : -1 - step;
}

function liveSlices({ slices, counts: [count0, count1] }: Arrangement): Int32Array {
  const live = unfilled(slices.count);
  let count = 0;
  for (let s = 0; s < slices.count; s++) if (count0[s] !== 0 || count1[s] !== 0) live[count++] = s;
  return live.subarray(0, count);
}

/** A slice lies in the box of its piece; a long piece cut in many would spoil the tree, so each gets its own box. */
function treeOf({ pieces, slices }: Arrangement, live: Int32Array): BoxTree {
  const { vertices, shape, turn } = pieces;
  const boxes = reals(4 * live.length);
  for (let k = 0; k < live.length; k++) {
    const s = live[k]!;
    const piece = slices.piece[s]!;
    const x0 = vertices[2 * slices.start[s]!]!;
    const y0 = vertices[2 * slices.start[s]! + 1]!;
    const x1 = vertices[2 * slices.end[s]!]!;
    const y1 = vertices[2 * slices.end[s]! + 1]!;
    const bulge = turn[piece] === 0 ? 0 : bulgeOf(norm(x0 - x1, y0 - y1), shape[SHAPE * piece + 6]!);
    boxes[4 * k] = Math.min(x0, x1) - bulge;
    boxes[4 * k + 1] = Math.min(y0, y1) - bulge;
    boxes[4 * k + 2] = Math.max(x0, x1) + bulge;
    boxes[4 * k + 3] = Math.max(y0, y1) + bulge;
  }
  return buildPassingTree(boxes, live.length);
}

/** Height of an arc of less than half a turn over its chord, mm, and a hair. */
function bulgeOf(chord: number, radius: number): number {
  const half = Math.min(chord / 2, radius);
  return (half * half) / (radius + Math.sqrt((radius - half) * (radius + half))) + 1e-6;
}

/** Walks from chain to chain. False when what was counted on the way is not nothing again at its end. */
function walkChains(arrangement: Arrangement, live: Int32Array, tree: BoxTree, judge: Judge): boolean {
  const { slices, counts, chains } = arrangement;
  const [count0, count1] = counts;
  let w0 = 0;
  let w1 = 0;
  const places = reals(PLACE * chains.count);
  for (let c = 0; c < chains.count; c++) {
    const s = longestOf(arrangement, c);
    places[PLACE * c] = slices.middles[2 * s]!;
    places[PLACE * c + 1] = slices.middles[2 * s + 1]!;
    places[PLACE * c + 2] = wayOf(arrangement, s).upright ? 1 : 0;
  }
  const walls: Walls = {
    tree,
    crossing: (k, upright, x, y) => crossingOf(arrangement, live[k]!, upright, x, y),
  };
  return walkThrough(walls, places, {
    begin: () => {
      w0 = 0;
      w1 = 0;
    },
    pass: (k, change) => {
      w0 += change * count0[live[k]!]!;
      w1 += change * count1[live[k]!]!;
    },
    arrive: (c) => {
      const s = longestOf(arrangement, c);
      const { upright, leavesLeft } = wayOf(arrangement, s);
      const own = crossingOf(arrangement, s, upright, slices.middles[2 * s]!, slices.middles[2 * s + 1]!);
      judge(c, windingsBeside(arrangement, s, leavesLeft, w0 - own * count0[s]!, w1 - own * count1[s]!));
    },
    isOut: () => w0 === 0 && w1 === 0,
  });
}
