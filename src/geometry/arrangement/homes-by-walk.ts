import type { Outline } from '../api.ts';
import { filled, markLists, reals, releaseLists } from '../memory/lists.ts';
import { newPieces, releasePieces } from './pieces.ts';
import { CLEAR, longestEdge } from './place-clear-of-corners.ts';
import { addRank, lowestRank, newRankSet, removeRank } from './rank-set.ts';
import { PLACE, walkThrough } from './walk.ts';
import { addLoops, setPlace, wallsOfPieces } from './walls-of-pieces.ts';

export interface LoopOfArea {
  readonly outline: Outline;
  readonly area: number;
}

/** Of each hole the number of the smallest outer loop that holds it, or −1, found on one way from hole to hole; outer loops come in order of area. */
export function homesByWalk(outers: readonly LoopOfArea[], holes: readonly LoopOfArea[]): number[] {
  const mark = markLists();
  const pieces = newPieces();
  const loopOf = addLoops(
    pieces,
    outers.map(({ outline }) => outline),
  );
  const windings = filled(outers.length);
  const around = newRankSet(outers.length);
  const places = reals(PLACE * holes.length);
  holes.forEach(({ outline }, k) => {
    setPlace(places, k, longestEdge(outline.edges), CLEAR);
  });
  const homes: number[] = [];
  walkThrough(wallsOfPieces(pieces), places, {
    begin: () => {
      for (let k = 0; k < outers.length; k++) removeRank(around, k);
      windings.fill(0);
    },
    pass: (piece, change) => {
      const loop = loopOf[piece]!;
      windings[loop]! += change;
      if (windings[loop]! > 0) addRank(around, loop);
      else removeRank(around, loop);
    },
    arrive: (k) => {
      homes[k] = lowestRank(around, firstOf(outers, -holes[k]!.area));
    },
    isOut: () => lowestRank(around, 0) === -1,
  });
  releasePieces(pieces);
  releaseLists(mark);
  return homes;
}

/** The first of the outer loops that is no smaller than `area`. */
function firstOf(outers: readonly LoopOfArea[], area: number): number {
  let low = 0;
  let high = outers.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (outers[middle]!.area >= area) high = middle;
    else low = middle + 1;
  }
  return low;
}
