import type { Frame, Plane3, Vec3 } from './api.ts';
import { add3, cross3, dot3, length3, scale3, subtract3, unit3 } from './vec3.ts';

/** The world's own frame. */
export const WORLD: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
};

/**
 * The frame whose y axis runs along `along` and whose z axis lies as near to `towards` as that allows. Nothing when the two are
 * parallel (to within 1e-9 rad) or one has no length.
 */
export function frameAlong(origin: Vec3, along: Vec3, towards: Vec3): Frame | undefined {
  if (length3(along) === 0 || length3(towards) === 0) return undefined;
  const y = unit3(along);
  const across = cross3(y, unit3(towards));
  if (length3(across) < 1e-9) return undefined;
  const x = unit3(across);
  return { origin, x, y, z: cross3(x, y) };
}

/** A direction given in the frame, in the world. */
export const directionToWorld = (frame: Frame, v: Vec3): Vec3 =>
  add3(add3(scale3(frame.x, v.x), scale3(frame.y, v.y)), scale3(frame.z, v.z));

/** A direction given in the world, in the frame. */
export const directionToFrame = (frame: Frame, v: Vec3): Vec3 => ({
  x: dot3(frame.x, v),
  y: dot3(frame.y, v),
  z: dot3(frame.z, v),
});

/** A point given in the frame, in the world. */
export const pointToWorld = (frame: Frame, p: Vec3): Vec3 => add3(frame.origin, directionToWorld(frame, p));

/** A point given in the world, in the frame. */
export const pointToFrame = (frame: Frame, p: Vec3): Vec3 =>
  directionToFrame(frame, subtract3(p, frame.origin));

/** A plane given in the frame, in the world. */
export function planeToWorld(frame: Frame, plane: Plane3): Plane3 {
  const normal = directionToWorld(frame, plane.normal);
  return { normal, offset: plane.offset + dot3(normal, frame.origin) };
}

/** A plane given in the world, in the frame. */
export const planeToFrame = (frame: Frame, plane: Plane3): Plane3 => ({
  normal: directionToFrame(frame, plane.normal),
  offset: plane.offset - dot3(plane.normal, frame.origin),
});
