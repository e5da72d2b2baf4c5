import { type Projection, projectionOfSimilarity } from '../../geometry/index.ts';
import { compose, inverse } from '../bookmatch/similarity.ts';
import type { Lying, ToLay } from './api.ts';
import { layAt } from './lay-at.ts';

/** What takes a thing from where it lies on a board to where it is moved: places of the board's plane before to those after, mm. */
export function movedOnBoard(toLay: Pick<ToLay, 'region' | 'grain'>, from: Lying, to: Lying): Projection {
  return projectionOfSimilarity(compose(placeOf(toLay, to), inverse(placeOf(toLay, from))));
}

function placeOf({ region, grain }: Pick<ToLay, 'region' | 'grain'>, lying: Lying) {
  const own = { id: '', part: '', pieces: [], region, blank: region, face: 'either', boards: [] } as const;
  return layAt(grain === undefined ? own : { ...own, grain }, lying).toBoard;
}
