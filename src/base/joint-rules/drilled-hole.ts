import {
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

/** The point of the hole (flat at mouth and bottom) that lies farthest in a direction of any length. */
export function farthestOfHole(hole: DrilledHole, direction: Vec3): Vec3 {
  return farthestOf([...centresAt(hole, 0), ...centresAt(hole, 1)], hole, direction);
}

/** The point of the hole's bottom that lies farthest in a direction. */
export function farthestOfBottom(hole: DrilledHole, direction: Vec3): Vec3 {
  return farthestOf(centresAt(hole, 1), hole, direction);
}

/** The point of the hole at half its depth that lies farthest in a direction. */
export function farthestOfHalf(hole: DrilledHole, direction: Vec3): Vec3 {
  return farthestOf(centresAt(hole, 0.5), hole, direction);
}

function farthestOf(centres: readonly Vec3[], { along, radius }: DrilledHole, direction: Vec3): Vec3 {
  const centre = centres.reduce((a, b) => (dot3(b, direction) > dot3(a, direction) ? b : a));
  const aside = subtract3(direction, scale3(along, dot3(along, direction)));
  const size = length3(aside);
  return size === 0 ? centre : add3(centre, scale3(aside, radius / size));
}
