import { boundsOfRegions, type Similarity, STAY, transformRegion } from '../../geometry/index.ts';
import type { Laid, Lying, ToLay } from './api.ts';

/**
 * Something to lay, as it lies on a board. Face side down it is turned over about its own y axis first; then it is turned so that its
 * grain stands at `turned` from the board's length. Without a grain of its own its x axis counts as one.
 */
export function layAt(toLay: ToLay, lying: Lying): Laid {
  const turned = turnedOver(toLay, lying);
  const box = boundsOfRegions([transformRegion(toLay.region, turned)]);
  const toBoard = { ...turned, shift: { x: lying.at.x - box.minX, y: lying.at.y - box.minY } };
  const region = transformRegion(toLay.region, toBoard);
  const blank = transformRegion(toLay.blank, toBoard);
  return { toLay, lying, toBoard, region, blank };
}

/** The same before it is moved to its place. */
export function turnedOver(
  { grain = 0 }: Pick<ToLay, 'grain'>,
  { turned, mirrored }: Pick<Lying, 'turned' | 'mirrored'>,
): Similarity {
  return { ...STAY, mirrored, turn: turned - (mirrored ? Math.PI - grain : grain) };
}
