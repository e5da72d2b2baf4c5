import { buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';
import { type Cuts, newCuts } from './cuts.ts';
import { meetPieces } from './meet-pieces.ts';
import type { Pieces } from './pieces.ts';

/** Up to this many pieces comparing every box with every other is quicker than a tree. */
const TREE_FROM = 80;

/** Cuts of every two pieces that meet. */
export function findMeetings(pieces: Pieces, grain: number): Cuts {
  const cuts = newCuts(grain);
  const { snap } = cuts;
  const { boxes, count } = pieces;
  if (count < TREE_FROM) {
    for (let i = 0; i < count; i++) {
      const minX = boxes[4 * i]! - snap;
      const minY = boxes[4 * i + 1]! - snap;
      const maxX = boxes[4 * i + 2]! + snap;
      const maxY = boxes[4 * i + 3]! + snap;
      for (let j = i + 1, at = 4 * j; j < count; j++, at += 4) {
        if (boxes[at]! > maxX || boxes[at + 2]! < minX || boxes[at + 1]! > maxY || boxes[at + 3]! < minY)
          continue;
        meetPieces(pieces, cuts, i, j);
      }
    }
    return cuts;
  }
  const tree = buildBoxTree(boxes, count);
  for (let i = 0; i < count; i++) {
    const at = 4 * i;
    searchBoxTree(
      tree,
      boxes[at]! - snap,
      boxes[at + 1]! - snap,
      boxes[at + 2]! + snap,
      boxes[at + 3]! + snap,
      (j) => {
        if (j > i) meetPieces(pieces, cuts, i, j);
        return false;
      },
    );
  }
  return cuts;
}
