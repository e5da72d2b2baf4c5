import { length3, subtract3 } from '../../geometry/index.ts';
import { type Apart, convexDistance } from './convex-distance.ts';
import { type DrilledHole, farthestOfHole } from './drilled-hole.ts';

/**
 * Least wood (mm) between two holes or slots, bottoms flat as bored, and where; 0 when they run into each other. To within a
 * ten-millionth of a millimetre.
 */
export function holeDistance(a: DrilledHole, b: DrilledHole): Apart {
  const towards = subtract3(b.at, a.at);
  return convexDistance(
    (direction) => farthestOfHole(a, direction),
    (direction) => farthestOfHole(b, direction),
    length3(towards) === 0 ? a.along : towards,
  );
}
