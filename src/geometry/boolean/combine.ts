import type { Outline, Region } from '../api.ts';
import { addLoop } from '../arrangement/add-loop.ts';
import { type Arrangement, arrange } from '../arrangement/arrangement.ts';
import { judgeChains } from '../arrangement/judge-chains.ts';
import { nestLoops } from '../arrangement/nest.ts';
import { newPieces, type Pieces, releasePieces } from '../arrangement/pieces.ts';
import { stitch } from '../arrangement/stitch.ts';
import { filled, markLists, releaseLists } from '../memory/lists.ts';
import { FINE_SNAP, VERTEX_SNAP } from '../tolerance.ts';
import type { Membership } from './membership.ts';
import { combinePlainly } from './plain/plain-boolean.ts';
import { verticesStandApart } from './vertices-stand-apart.ts';

/** Regions of all points that belong, from two sets of loops. Empty when nothing does. */
export function combineLoops(
  first: readonly Outline[],
  second: readonly Outline[],
  belongs: Membership,
): Region[] {
  const plain = combinePlainly(first, second, belongs);
  if (plain !== undefined) return nestLoops(plain);
  const pieces = newPieces();
  for (const loop of first) addLoop(pieces, loop.edges, 0);
  for (const loop of second) addLoop(pieces, loop.edges, 1);
  const mark = markLists();
  try {
    return nestLoops(membersOf(pieces, belongs));
  } finally {
    releaseLists(mark);
    releasePieces(pieces);
  }
}

export function loopsOf(regions: readonly Region[]): Outline[] {
  const loops: Outline[] = [];
  for (const { outer, holes } of regions) {
    loops.push(outer);
    for (const hole of holes) loops.push(hole);
  }
  return loops;
}

/** Tolerances to try, as multiples: the first with which every loop closes is taken. */
const GRAINS = [1, 7, 50];

function membersOf(pieces: Pieces, belongs: Membership): Outline[] {
  let best: Outline[] = [];
  for (const grain of GRAINS) {
    const arrangement = arrange(pieces, grain);
    const { loops, closed } = stitch(arrangement, boundaryChains(arrangement, belongs));
    if (closed) return arrangement.widestJoin <= FINE_SNAP ? loops : (finer(pieces, belongs) ?? loops);
    if (loops.length > best.length) best = loops;
  }
  return best;
}

/**
 * The same with vertices told apart that would else become one: a line that ends at one of them is not bent to another. Undefined where loops stay open so, or have
 * vertices so near to each other that whatever is done with them next would join them.
 */
function finer(pieces: Pieces, belongs: Membership): Outline[] | undefined {
  const arrangement = arrange(pieces, FINE_SNAP / VERTEX_SNAP);
  const { loops, closed } = stitch(arrangement, boundaryChains(arrangement, belongs));
  return closed && verticesStandApart(loops) ? loops : undefined;
}

/** Chains that part what belongs from what does not: 1 when what belongs lies to the left, −1 to the right. */
function boundaryChains(arrangement: Arrangement, belongs: Membership): Int32Array {
  const { chains } = arrangement;
  const keep = filled(chains.count);
  judgeChains(arrangement, (c, { left0, right0, left1, right1 }) => {
    const left = belongs(left0, left1);
    const right = belongs(right0, right1);
    keep[c] = left === right ? 0 : left === chains.longest[c]! >= 0 ? 1 : -1;
  });
  return keep;
}
