import { cross3, dot3, scale3, type Vec3, vec3 } from '../../geometry/index.ts';
import type { Lay, Side } from './api.ts';

/** Outward normals of the four long surfaces, in the frame of the fence line. */
export const NORMAL_OF_SIDE: Readonly<Record<Side, Vec3>> = {
  face: vec3(0, 0, 1),
  back: vec3(0, 0, -1),
  left: vec3(-1, 0, 0),
  right: vec3(1, 0, 0),
};

export const OPPOSITE: Readonly<Record<Side, Side>> = {
  face: 'back',
  back: 'face',
  left: 'right',
  right: 'left',
};

/** Axes of the saw, written in the frame that is laid on it. */
export interface SawFrame {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
}

/** The saw frame under a part that lies so. Throws where the two sides are not square to each other. */
export function frameOfLay({ down, fence }: Lay): SawFrame {
  const z = scale3(NORMAL_OF_SIDE[down], -1);
  const y = NORMAL_OF_SIDE[fence];
  if (dot3(y, z) !== 0) throw new RangeError(`no such lay: ${down} down, ${fence} against the fence`);
  return { x: cross3(y, z), y, z };
}

/** A vector of the part, in the saw frame. */
export function onSaw(v: Vec3, frame: SawFrame): Vec3 {
  return { x: dot3(v, frame.x), y: dot3(v, frame.y), z: dot3(v, frame.z) };
}

/**
 * The four rigid ways in which a part can be laid anew without another side coming into play: left as it is (slid along
 * the fence), turned end for end about the upright, turned over end for end about the line square to the fence, rolled over
 * about its own length.
 */
export type Move = 'slide' | 'end-for-end' | 'over' | 'roll';

/** Least handling first. */
export const MOVES: readonly Move[] = ['slide', 'end-for-end', 'over', 'roll'];

/** How a part lies after a move. A half turn about the upright swaps the sides at the fence, and so on. */
export function layAfter(move: Move, { down, fence }: Lay): Lay {
  switch (move) {
    case 'slide':
      return { down, fence };
    case 'end-for-end':
      return { down, fence: OPPOSITE[fence] };
    case 'over':
      return { down: OPPOSITE[down], fence };
    case 'roll':
      return { down: OPPOSITE[down], fence: OPPOSITE[fence] };
    default:
      return move satisfies never;
  }
}
