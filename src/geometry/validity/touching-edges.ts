import type { Edge } from '../api.ts';
import { newPieces, releasePieces } from '../arrangement/pieces.ts';
import { touchingPairs } from '../arrangement/touching-pairs.ts';
import { addLoops } from '../arrangement/walls-of-pieces.ts';
import { boundsOfEdge } from '../bounds.ts';
import { markLists, reals, releaseLists } from '../memory/lists.ts';
import type { PlacedLoop } from './placed-loop.ts';

/** An edge and where it belongs. */
export interface PlacedEdge {
  readonly edge: Edge;
  readonly number: number;
  readonly loop: PlacedLoop;
}

/** Up to this many edges comparing every box with every other is quicker than a tree. */
const TREE_FROM = 60;

/** Visits every two edges whose boxes touch, in order. */
export function forTouchingEdges(
  loops: readonly PlacedLoop[],
  visit: (a: PlacedEdge, b: PlacedEdge) => void,
): void {
  const all: PlacedEdge[] = loops.flatMap((loop) =>
    loop.edges.map((edge, number) => ({ edge, number, loop })),
  );
  const mark = markLists();
  const boxes = reals(4 * all.length);
  all.forEach(({ edge }, i) => {
    const { minX, minY, maxX, maxY } = boundsOfEdge(edge);
    boxes[4 * i] = minX;
    boxes[4 * i + 1] = minY;
    boxes[4 * i + 2] = maxX;
    boxes[4 * i + 3] = maxY;
  });
  const compare = (i: number, j: number): void => {
    const p = 4 * i;
    const q = 4 * j;
    if (boxes[p]! > boxes[q + 2]! || boxes[q]! > boxes[p + 2]!) return;
    if (boxes[p + 1]! > boxes[q + 3]! || boxes[q + 1]! > boxes[p + 3]!) return;
    visit(all[i]!, all[j]!);
  };
  if (all.length <= TREE_FROM) {
    for (let i = 0; i < all.length; i++) for (let j = i + 1; j < all.length; j++) compare(i, j);
  } else {
    let last = -1;
    for (const pair of pairsByTree(loops, all.length)) {
      // An arc is several pieces, so that a pair may come more than once.
      if (pair !== last) compare(Math.floor(pair / all.length), pair % all.length);
      last = pair;
    }
  }
  releaseLists(mark);
}

/** Pairs of edges that may touch, as i · count + j with i below j, in order. */
function pairsByTree(loops: readonly PlacedLoop[], count: number): Float64Array {
  const pieces = newPieces(count);
  addLoops(pieces, loops);
  const { source } = pieces;
  const touching = touchingPairs(pieces, 0);
  const pairs = reals(touching.count);
  let found = 0;
  for (let k = 0; k < touching.count; k++) {
    const i = source[touching.pairs[2 * k]!]!;
    const j = source[touching.pairs[2 * k + 1]!]!;
    if (i !== j) pairs[found++] = Math.min(i, j) * count + Math.max(i, j);
  }
  releasePieces(pieces);
  return pairs.subarray(0, found).sort();
}
