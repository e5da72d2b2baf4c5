import type { TruePhotograph } from './api.ts';

/**
 * The photograph that comes nearest to what a face will show: of that face of that leaf, else of its other face, else of the face of the
 * board that the leaf lay nearer to, else of the board's other face. Undefined where there is none.
 */
export function photographFor(
  photographs: readonly TruePhotograph[],
  shows: 'upper' | 'lower',
  leaf?: { readonly at: number; readonly of: number },
): TruePhotograph | undefined {
  const ofLeaf = photographs.filter(
    ({ photograph }) => photograph.leaf !== undefined && photograph.leaf === leaf?.at,
  );
  const ofBoard = photographs.filter(({ photograph }) => photograph.leaf === undefined);
  const nearer = leaf === undefined ? shows : 2 * leaf.at <= leaf.of ? 'upper' : 'lower';
  const showing = (face: 'upper' | 'lower') => (each: TruePhotograph) => each.photograph.face === face;
  return ofLeaf.find(showing(shows)) ?? ofLeaf[0] ?? ofBoard.find(showing(nearer)) ?? ofBoard[0];
}
