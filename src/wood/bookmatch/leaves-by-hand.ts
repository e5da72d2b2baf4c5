import type { LeafFace, LeafMap, LeafPlace, PointsTo } from './api.ts';
import { turnedOver, turnedRound } from './lay-pieces.ts';
import { placeOf } from './leaf-map.ts';

/** One leaf as the maker says that it goes. */
export interface LeafByHand {
  /** The first board where none is named. */
  readonly board?: string | undefined;
  readonly leaf: number;
  /** The piece as it is marked, or its identity. */
  readonly piece: string;
  readonly face: LeafFace;
  readonly shows: 'upper' | 'lower';
  readonly markedEnd: PointsTo;
}

/**
 * The map with the maker's own leaves instead of those that follow from the arrangement: each at the place of the board where the map has
 * its piece, turned as the maker says. Throws for a piece or face that the match does not have: what was typed is checked before.
 */
export function leavesByHand(map: LeafMap, leaves: readonly LeafByHand[]): LeafMap {
  const first = map.match.boards[0] ?? '1';
  return {
    ...map,
    places: leaves.map((given): LeafPlace => {
      const piece = map.pieces.find(({ id, name }) => id === given.piece || name === given.piece);
      const planned = map.places.find((each) => each.piece === piece?.id && each.face === given.face);
      if (piece === undefined || planned === undefined)
        throw new RangeError(`no leaf on the ${given.face} of ${given.piece}`);
      const over = planned.shows === given.shows ? planned.toBoard : turnedOver(piece, planned.toBoard);
      const toBoard = planned.markedEnd === given.markedEnd ? over : turnedRound(piece, over);
      return placeOf({ piece, face: given.face, toBoard }, given.board ?? first, given.leaf, map.frames);
    }),
  };
}
