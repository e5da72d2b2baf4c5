import type { LeafLabel } from '../drawing/index.ts';
import type { ComputedWood } from './wood-of-design.ts';

/** The leaves that go on the pieces of one pattern, by what is printed on it. */
export function leafLabels(
  wood: ComputedWood | undefined,
  part: string,
  /** The pattern turned over, for right hands. */
  mirrored: boolean,
  /** Placed parts that are made of right hand. */
  isRight: (piece: string) => boolean,
): readonly LeafLabel[] {
  return (wood?.matches ?? []).flatMap(({ map }) =>
    map.places.flatMap(({ board, leaf, piece, face, shows }): readonly LeafLabel[] => {
      const own = map.pieces.find(({ id }) => id === piece)!;
      if (board === undefined || own.part !== part || isRight(piece) !== mirrored) return [];
      return [{ piece: own.name, face, leaf: `${board}${leaf}`, shows }];
    }),
  );
}
