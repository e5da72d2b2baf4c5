import { type Cuts, newCuts } from './cuts.ts';
import { meetPieces } from './meet-pieces.ts';
import type { Pieces } from './pieces.ts';
import { type TouchingPairs, touchingPairs } from './touching-pairs.ts';

/** Up to this many pieces comparing every box with every other is quicker than a tree. */
const TREE_FROM = 80;

/** Cuts of every two pieces that meet, of all pairs or of those already known to touch. */
export function findMeetings(pieces: Pieces, grain: number, touching?: TouchingPairs): Cuts {
  const cuts = newCuts(grain, 4 * pieces.count + 16);
  if (touching !== undefined) searchAll(pieces, cuts, touching);
  else if (pieces.count < TREE_FROM) compareAll(pieces, cuts);
  else searchAll(pieces, cuts, touchingPairs(pieces, cuts.snap));
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

function searchAll(pieces: Pieces, cuts: Cuts, touching: TouchingPairs): void {
  const { pairs, count } = touching;
  for (let k = 0; k < count; k++) meetPieces(pieces, cuts, pairs[2 * k]!, pairs[2 * k + 1]!);
}
