import {
  invertProjection,
  type PointPair,
  type Projection,
  projectionFromPoints,
  projectionOfSimilarity,
  similarityFromPoints,
  stretchAt,
} from '../../geometry/index.ts';
import type { Photograph, PhotographFault, TruePhotograph } from './api.ts';

/**
 * A photograph laid on its board: to scale from two known points, where it was taken square on, and true to shape as well from four. Seen
 * from above, pixels that run down make the board's y run up, so the picture's sense of turning changes; on the lower face it stays.
 */
export function truePhotograph(photograph: Photograph): TruePhotograph | PhotographFault {
  const { points, face } = photograph;
  const found = placed(points, face === 'upper');
  if ('kind' in found) return found;
  const { toBoard } = found;
  const isReversed = points.length === 2 ? face === 'upper' : turning(toBoard) < 0;
  if (isReversed !== (face === 'upper')) return { kind: 'turned-over', points: [0, 1, 2, 3] };
  const coarsest = Math.max(...points.map(({ from }) => stretchAt(from, toBoard)!.most));
  return { photograph, toBoard, toPixels: invertProjection(toBoard), coarsest };
}

function placed(
  points: readonly PointPair[],
  isAbove: boolean,
): { readonly toBoard: Projection } | PhotographFault {
  if (points.length === 2) {
    const similarity = similarityFromPoints([points[0]!, points[1]!], isAbove);
    if (similarity === undefined) return { kind: 'together', points: [0, 1] };
    return { toBoard: projectionOfSimilarity(similarity) };
  }
  if (points.length !== 4) return { kind: 'count', points: points.map((_, i) => i) };
  const found = projectionFromPoints(points);
  return found.kind === 'found' ? { toBoard: found.projection } : { kind: found.kind, points: found.pairs };
}

/** Positive where a projection keeps the sense of turning: its determinant, since w is positive wherever the plane is seen. */
function turning([a, b, c, d, e, f, g, h, i]: Projection): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
}
