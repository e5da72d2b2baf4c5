import { keptFor } from '../../core/index.ts';
import {
  add3,
  boundsOfRegions,
  CONTACT_TOLERANCE,
  directionToWorld,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';

/** A box along the world's axes that holds a part: its middle, and half of its sides, mm. */
interface Hold {
  readonly middle: Vec3;
  readonly half: Vec3;
}

/** Do two parts surely not touch? Boxes round them tell; most parts of a base are far from each other. */
export function surelyApart(a: PlacedPart, b: PlacedPart): boolean {
  const [p, q] = [holdOf(a), holdOf(b)];
  const isOff = (axis: 'x' | 'y' | 'z'): boolean =>
    Math.abs(p.middle[axis] - q.middle[axis]) > p.half[axis] + q.half[axis] + CONTACT_TOLERANCE;
  return isOff('x') || isOff('y') || isOff('z');
}

const holdOf = keptFor(({ frame, silhouette, drawn }: PlacedPart): Hold => {
  const { minX, minY, maxX, maxY } = boundsOfRegions(silhouette);
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2, z: -drawn.thickness / 2 };
  const [x, y, z] = [(maxX - minX) / 2, (maxY - minY) / 2, drawn.thickness / 2];
  const reach = (axis: 'x' | 'y' | 'z'): number =>
    Math.abs(frame.x[axis]) * x + Math.abs(frame.y[axis]) * y + Math.abs(frame.z[axis]) * z;
  return {
    middle: add3(frame.origin, directionToWorld(frame, middle)),
    half: { x: reach('x'), y: reach('y'), z: reach('z') },
  };
});
