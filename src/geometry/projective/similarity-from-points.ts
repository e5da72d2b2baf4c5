import { POSITION_TOLERANCE } from '../tolerance.ts';
import { type Similarity, STAY, transformPoint } from '../transform.ts';
import { angleOf, distance, subtract } from '../vec.ts';
import type { PointPair } from './api.ts';

/**
 * The similarity that takes two known points to two others: turn, scale and shift, for a picture taken square on. Two points do not
 * say whether it is seen in a mirror, so the caller does; a picture whose y runs down the page is mirrored against a plane whose y
 * runs up. Undefined when two points of a side lie in one place.
 */
export function similarityFromPoints(
  [first, second]: readonly [PointPair, PointPair],
  mirrored: boolean,
): Similarity | undefined {
  const before = { ...STAY, mirrored };
  const from = subtract(transformPoint(second.from, before), transformPoint(first.from, before));
  const to = subtract(second.to, first.to);
  const scale = distance(second.to, first.to) / distance(second.from, first.from);
  if (!(scale > 0 && Number.isFinite(scale)) || distance(second.to, first.to) < POSITION_TOLERANCE)
    return undefined;
  const turned: Similarity = { turn: angleOf(to) - angleOf(from), shift: STAY.shift, scale, mirrored };
  return { ...turned, shift: subtract(first.to, transformPoint(first.from, turned)) };
}
