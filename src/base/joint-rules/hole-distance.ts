import { cross3, dot3, length3, scale3, subtract3, type Vec3 } from '../../geometry/index.ts';
import { type Apart, convexDistance } from './convex-distance.ts';
import { type DrilledHole, supportOfHole } from './drilled-hole.ts';

/**
 * Least wood (mm) between two holes or slots, bottoms flat as bored, and where; 0 when they run into each other. To within a
 * ten-millionth of a millimetre.
 */
export function holeDistance(a: DrilledHole, b: DrilledHole): Apart {
  const towards = subtract3(b.at, a.at);
  return convexDistance(supportOfHole(a), supportOfHole(b), length3(towards) === 0 ? a.along : towards);
}

/** Shorter vectors have no direction: between mouths at one place, or square to two lines that are parallel. */
const SHORTEST = 1e-6;

/**
 * Is there surely at least so much wood (mm) between two holes? So it is when a plane square to one of their axes, to one of each, or to the line
 * between their mouths has them that far apart on its two sides; most holes are, and their distance need not be searched.
 */
export function surelyLeave(a: DrilledHole, b: DrilledHole, wood: number): boolean {
  const [onA, onB] = [supportOfHole(a), supportOfHole(b)];
  const towards = subtract3(b.at, a.at);
  const leaves = (way: Vec3): boolean => {
    const size = length3(way);
    if (size < SHORTEST) return false;
    const normal = dot3(towards, way) < 0 ? scale3(way, -1) : way;
    return dot3(normal, onB(scale3(normal, -1))) - dot3(normal, onA(normal)) >= wood * size;
  };
  return (
    axesOf(a).some(leaves) || axesOf(b).some(leaves) || leaves(towards) || leaves(cross3(a.along, b.along))
  );
}

function axesOf({ along, slot }: DrilledHole): readonly Vec3[] {
  return slot === undefined ? [along] : [along, slot, cross3(along, slot)];
}
