import { type BoxTree, buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';
import { type Cuts, newCuts } from './cuts.ts';
import { filled } from './lists.ts';
import { meetPieces } from './meet-pieces.ts';
import { narrowBoxes } from './narrow-boxes.ts';
import type { Pieces } from './pieces.ts';

/** Up to this many pieces comparing every box with every other is quicker than a tree. */
const TREE_FROM = 80;

/** Cuts of every two pieces that meet. */
export function findMeetings(pieces: Pieces, grain: number): Cuts {
  const cuts = newCuts(grain);
  if (pieces.count < TREE_FROM) compareAll(pieces, cuts);
  else searchAll(pieces, cuts);
  return cuts;
}

function compareAll(pieces: Pieces, cuts: Cuts): void {
  const { boxes, count } = pieces;
  const { snap } = cuts;
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
}

function searchAll(pieces: Pieces, cuts: Cuts): void {
  const { count, boxes, owners, rings } = narrowBoxes(pieces);
  const { snap } = cuts;
  const tree: BoxTree = buildBoxTree(boxes, count, rings);
  // The piece with which each was compared last: boxes of one pair may touch several times.
  const compared = filled(pieces.count, -1);
  for (let k = 0, at = 0; k < count; k++, at += 4) {
    const i = owners[k]!;
    searchBoxTree(
      tree,
      boxes[at]! - snap,
      boxes[at + 1]! - snap,
      boxes[at + 2]! + snap,
      boxes[at + 3]! + snap,
      (m) => {
        const j = owners[m]!;
        if (j <= i || compared[j] === i) return false;
        compared[j] = i;
        meetPieces(pieces, cuts, i, j);
        return false;
      },
      rings[2 * k]! - snap,
      rings[2 * k + 1]! + snap,
    );
  }
}
