import type { Edge, Outline } from '../api.ts';
import { pointAt } from '../edge.ts';
import { buildPassingTree } from '../index-tree/box-tree.ts';
import { unfilled } from '../memory/lists.ts';
import { addLoop } from './add-loop.ts';
import { type Pieces, SHAPE } from './pieces.ts';
import { crossingRightwards, crossingUpwards } from './ray.ts';
import { PLACE, type Walls } from './walk.ts';

/** Pieces of whole loops as walls, in lists that are released with the rest. */
export function wallsOfPieces(pieces: Pieces): Walls {
  const { shape, turn } = pieces;
  return {
    tree: buildPassingTree(pieces.boxes, pieces.count),
    crossing: (i, upright, x, y) => {
      const at = SHAPE * i;
      return (upright ? crossingUpwards : crossingRightwards)(
        shape[at]!,
        shape[at + 1]!,
        shape[at + 2]!,
        shape[at + 3]!,
        turn[i]!,
        shape[at + 4]!,
        shape[at + 5]!,
        shape[at + 6]!,
        x,
        y,
      );
    },
  };
}

/** Adds loops to pieces, and tells the number of the loop that each piece belongs to. */
export function addLoops(pieces: Pieces, loops: readonly Outline[]): Int32Array {
  const counts = unfilled(loops.length + 1);
  counts[0] = pieces.count;
  for (let k = 0; k < loops.length; k++) {
    addLoop(pieces, loops[k]!.edges, 0);
    counts[k + 1] = pieces.count;
  }
  const loopOf = unfilled(pieces.count);
  for (let k = 0; k < loops.length; k++) loopOf.fill(k, counts[k]!, counts[k + 1]!);
  return loopOf;
}

/** Sets place k to the point at a share of an edge's length, to be come to across the edge. */
export function setPlace(places: Float64Array, k: number, edge: Edge, share: number): void {
  const { x, y } = pointAt(edge, share);
  let tx = edge.to.x - edge.from.x;
  let ty = edge.to.y - edge.from.y;
  if (edge.kind === 'arc') {
    tx = y - edge.centre.y;
    ty = x - edge.centre.x;
  }
  places[PLACE * k] = x;
  places[PLACE * k + 1] = y;
  places[PLACE * k + 2] = Math.abs(tx) > Math.abs(ty) ? 1 : 0;
}
