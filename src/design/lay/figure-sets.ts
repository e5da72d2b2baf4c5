import type { FigureSet } from '../../drawing/index.ts';
import { framesOf, type LeafFace, piecesOfBase } from '../../wood/index.ts';
import type { Computed } from '../computed.ts';
import type { FigureOnPiece } from './figures-of-design.ts';

const FACES = ['face', 'back'] as const satisfies readonly LeafFace[];

/**
 * The sets of pieces that carry a figure as one faces them: the frames of every bookmatch, then what is made of solid wood, frame by
 * frame. Of solid wood only face sides: their backs are seen by nobody who stands where the match is judged.
 */
export function figureSets(
  { base, wood }: Computed,
  figures: readonly FigureOnPiece[],
): readonly FigureSet[] {
  if (base === undefined) return [];
  const carries = (pieces: readonly string[], face: LeafFace): boolean =>
    figures.some((each) => each.face === face && pieces.includes(each.piece));
  const matched = (wood?.matches ?? []).flatMap(({ map }) =>
    FACES.flatMap((face) =>
      map.frames.flatMap((frame): readonly FigureSet[] => {
        if (!carries(frame.pieces, face)) return [];
        const places = map.places.filter((place) => place.face === face);
        const title = `${map.match.name}, ${frame.name}${face === 'back' ? ', backs' : ''}`;
        return [{ title, map, frame, face, places }];
      }),
    ),
  );
  const leafy = new Set((wood?.matches ?? []).flatMap(({ map }) => map.pieces.map(({ part }) => part)));
  const solid = base.made
    .filter(({ name }) => !leafy.has(name))
    .flatMap((made): readonly FigureSet[] => {
      const pieces = piecesOfBase(base, [made.name]);
      return framesOf(pieces).flatMap((frame) => {
        if (!carries(frame.pieces, 'face')) return [];
        const places = frame.pieces.flatMap((piece) => {
          const board = figures.find((each) => each.piece === piece)?.board;
          return board === undefined ? [] : [{ piece, board, leaf: 0 }];
        });
        return [{ title: `${made.label}, ${frame.name}`, map: { pieces }, frame, face: 'face', places }];
      });
    });
  return [...matched, ...solid];
}
