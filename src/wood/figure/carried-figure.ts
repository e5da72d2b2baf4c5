import {
  invertProjection,
  projectionOfSimilarity,
  projectTwice,
  type Region,
  type Similarity,
} from '../../geometry/index.ts';
import type { CarriedFigure, TruePhotograph } from './api.ts';

/**
 * The figure that a part will carry where it lies on its board: `toBoard` takes the part's own plane to the board's, mirrored where the
 * leaf is turned over, as a bookmatch turns every second one. The app lays the photograph under the part by it, wherever the part
 * stands; moving the part on the board moves the figure on the part.
 */
export function carriedFigure(
  { photograph, toBoard: photographed, toPixels }: TruePhotograph,
  region: Region,
  toBoard: Similarity,
): CarriedFigure {
  const onBoard = projectionOfSimilarity(toBoard);
  return {
    photograph,
    region,
    toPart: projectTwice(photographed, invertProjection(onBoard)),
    toPixels: projectTwice(onBoard, toPixels),
    mirrored: toBoard.mirrored,
  };
}
