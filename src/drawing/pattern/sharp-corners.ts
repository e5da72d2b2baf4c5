import { directionAt, dot, type Region, type Vec } from '../../geometry/index.ts';

/** Cosine of the turn, about 10°, from which a corner counts as sharp. */
const SHARP = 0.985;

/** Corners at which an outline of the regions turns by more than about 10°. */
export function sharpCorners(regions: readonly Region[]): readonly Vec[] {
  return regions.flatMap(({ outer, holes }) =>
    [outer, ...holes].flatMap(({ edges }) =>
      edges
        .filter((edge, i) => dot(directionAt(edge, 0), directionAt(edges.at(i - 1)!, 1)) < SHARP)
        .map((edge) => edge.from),
    ),
  );
}
