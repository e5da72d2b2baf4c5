import {
  ANGLE_TOLERANCE,
  add3,
  directionToWorld,
  dot3,
  type Frame,
  length3,
  pointToWorld,
  scale3,
  subtract3,
  type Vec3,
} from '../../geometry/index.ts';
import type { InsertPlace } from './api.ts';

/** A hole or a slot bored straight into wood, its bottom flat; mm, in any frame. */
export interface DrilledHole {
  /** Middle of its mouth. */
  readonly at: Vec3;
  /** Unit vector into the wood. */
  readonly along: Vec3;
  readonly depth: number;
  readonly radius: number;
  /** Of a slot: from its middle to one end of the line that the cutter's centre runs along, square to `along`. */
  readonly slot?: Vec3;
}

/** The hole of a place of a joint, in the world: into the first part (along the frame's z) or into the second. */
export function holeOfPlace(
  { from, to, radius }: InsertPlace,
  frame: Frame,
  depth: number,
  into: 'first' | 'second',
): DrilledHole {
  const at = pointToWorld(frame, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, z: 0 });
  const half = directionToWorld(frame, { x: (to.x - from.x) / 2, y: (to.y - from.y) / 2, z: 0 });
  const along = scale3(frame.z, into === 'first' ? 1 : -1);
  return length3(half) === 0 ? { at, along, depth, radius } : { at, along, depth, radius, slot: half };
}

/** Ends of the centre lines of a hole at a share of its depth: one for a round hole, two for a slot. */
export function centresAt({ at, along, depth, slot }: DrilledHole, share: number): readonly Vec3[] {
  const middle = add3(at, scale3(along, depth * share));
  return slot === undefined ? [middle] : [add3(middle, slot), subtract3(middle, slot)];
}

/** Asks for the point of the hole (flat at mouth and bottom) that lies farthest in a direction of any length. */
export function supportOfHole(hole: DrilledHole): (direction: Vec3) => Vec3 {
  const centres = [...centresAt(hole, 0), ...centresAt(hole, 1)];
  return (direction) => farthestOf(centres, hole, direction);
}

/** The same for one direction. */
export const farthestOfHole = (hole: DrilledHole, direction: Vec3): Vec3 => supportOfHole(hole)(direction);

/** The point of the hole's bottom that lies farthest in a direction. */
export function farthestOfBottom(hole: DrilledHole, direction: Vec3): Vec3 {
  return farthestOf(centresAt(hole, 1), hole, direction);
}

/** The point of the hole at half its depth that lies farthest in a direction. */
export function farthestOfHalf(hole: DrilledHole, direction: Vec3): Vec3 {
  return farthestOf(centresAt(hole, 0.5), hole, direction);
}

function farthestOf(centres: readonly Vec3[], { along, radius }: DrilledHole, direction: Vec3): Vec3 {
  let centre = centres[0]!;
  for (const other of centres) if (dot3(other, direction) > dot3(centre, direction)) centre = other;
  const by = dot3(along, direction);
  const x = direction.x - along.x * by;
  const y = direction.y - along.y * by;
  const z = direction.z - along.z * by;
  const size = Math.sqrt(x * x + y * y + z * z);
  // Of a direction along the hole rounding alone is left aside, which points anywhere.
  if (size <= ANGLE_TOLERANCE * length3(direction)) return centre;
  const out = radius / size;
  return { x: centre.x + x * out, y: centre.y + y * out, z: centre.z + z * out };
}
