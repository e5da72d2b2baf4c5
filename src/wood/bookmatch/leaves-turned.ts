import type { Finding } from '../../core/index.ts';
import type { Similarity } from '../../geometry/index.ts';
import type { LeafMap, LeafPiece, LeafPlace, MatchedFrame } from './api.ts';
import { laidAlike, turnedOver } from './lay-pieces.ts';
import { mirrorBetween } from './mirror-between.ts';
import { compose, inverse } from './similarity.ts';
import { leafWords, pieceOf, stop } from './words.ts';

/** Two pieces of a frame whose leaves are not mirror images; of a slip match, not the same way up. */
export function turnedWrong(map: LeafMap): readonly Finding[] {
  return map.frames.flatMap((frame) =>
    matesOf(map, frame).flatMap(({ a, b, one, other }) => {
      const expected = expectedOf(map, a, one, other);
      if (expected === undefined || laidAlike(expected, b.toBoard)) return [];
      const isOver = expected.mirrored !== b.toBoard.mirrored;
      const what = isOver
        ? `shows its ${b.shows} face`
        : `has the board’s marked end pointing ${b.markedEnd}`;
      const must = map.match.arrangement === 'slip' ? 'lie the same way as' : 'be the mirror image of';
      const opposite = b.shows === 'upper' ? 'lower' : 'upper';
      return [
        {
          ...stop(
            'wood.leaf-turned',
            `${map.match.name}: ${leafWords(b)} ${what} on the ${b.face} of ${other.name}; to ${must} ${leafWords(a)} on ${one.name} it must not.`,
            isOver
              ? `Turn it over about the board’s length, so that its ${opposite} face shows.`
              : 'Turn it end for end, the same face up.',
          ),
          part: other.part,
        },
      ];
    }),
  );
}

/** A frame that is right in itself and does not look like the first one. */
export function framesDiffer(map: LeafMap): readonly Finding[] {
  const [first, ...others] = map.frames;
  if (first === undefined) return [];
  return others.flatMap((frame) => {
    const isRight = matesOf(map, frame).every(({ a, b, one, other }) => {
      const expected = expectedOf(map, a, one, other);
      return expected === undefined || laidAlike(expected, b.toBoard);
    });
    const differs = isRight && pairsBetween(map, first, frame).some((alike) => !alike);
    if (!differs) return [];
    return [
      {
        code: 'wood.frames-differ',
        severity: 'caution' as const,
        edges: [],
        message: `${map.match.name}: the ${frame.name} is matched in itself, but does not show its figure the way that the ${first.name} does.`,
        cure: 'Turn both of its leaves over, or both end for end.',
      },
    ];
  });
}

function pairsBetween(map: LeafMap, first: MatchedFrame, frame: MatchedFrame): readonly boolean[] {
  return first.pieces.flatMap((id) =>
    frame.pieces.flatMap((otherId) =>
      (['face', 'back'] as const).flatMap((face) => {
        const [a, b] = [id, otherId].map((piece) =>
          map.places.find((each) => each.piece === piece && each.face === face),
        );
        if (a === undefined || b === undefined) return [];
        const [one, other] = [pieceOf(map, id), pieceOf(map, otherId)];
        const expected = expectedOf(map, a, one, other);
        return expected === undefined ? [] : [laidAlike(expected, b.toBoard)];
      }),
    ),
  );
}

/** How the leaf of another piece must lie to match one; nothing where the pieces are no mirror images. */
function expectedOf(
  { match }: LeafMap,
  a: LeafPlace,
  one: LeafPiece,
  other: LeafPiece,
): Similarity | undefined {
  const mirror = mirrorBetween(one, other);
  if (mirror === undefined) return undefined;
  const image = compose(a.toBoard, inverse(mirror));
  return match.arrangement === 'slip' ? turnedOver(other, image) : image;
}

interface Mates {
  readonly a: LeafPlace;
  readonly b: LeafPlace;
  readonly one: LeafPiece;
  readonly other: LeafPiece;
}

function matesOf(map: LeafMap, { pieces }: MatchedFrame): readonly Mates[] {
  const [first, second] = pieces;
  if (first === undefined || second === undefined) return [];
  return (['face', 'back'] as const).flatMap((face) => {
    const [a, b] = [first, second].map((id) =>
      map.places.find((each) => each.piece === id && each.face === face),
    );
    return a === undefined || b === undefined
      ? []
      : [{ a, b, one: pieceOf(map, first), other: pieceOf(map, second) }];
  });
}
