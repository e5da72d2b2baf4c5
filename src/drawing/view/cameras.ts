import { cross3, type Frame, subtract3, unit3, type Vec3 } from '../../geometry/index.ts';
import type { Camera } from './api.ts';

const ORIGIN: Vec3 = { x: 0, y: 0, z: 0 };

const camera = (x: Vec3, y: Vec3): Camera => ({ origin: ORIGIN, x, y, z: cross3(x, y) });

const X: Vec3 = { x: 1, y: 0, z: 0 };
const Y: Vec3 = { x: 0, y: 1, z: 0 };
const UP: Vec3 = { x: 0, y: 0, z: 1 };
const minus = (v: Vec3): Vec3 => subtract3(ORIGIN, v);

/** The views of a base along the axes of the world: the front is the sitter's side, left and right are the sitter's. */
export const CAMERAS = {
  front: camera(X, UP),
  back: camera(minus(X), UP),
  /** Seen from the left: the front lies on the right of the picture. */
  left: camera(minus(Y), UP),
  /** Seen from the right: the front lies on the left of the picture. */
  right: camera(Y, UP),
  /** Seen from above, the front at the foot of the picture. */
  plan: camera(X, Y),
  below: camera(X, minus(Y)),
} as const satisfies Record<string, Camera>;

/** Plumb lines stay upright. Throws when the viewer stands plumb over or under. `towards`: from the base to the viewer, any length. */
export function cameraFrom(towards: Vec3): Camera {
  const z = unit3(towards);
  const x = unit3(cross3(UP, z));
  return { origin: ORIGIN, x, y: cross3(z, x), z };
}

/**
 * From the front left and above, so that the three faces of a box are all seen: the plan turned by 35°, looked down on by 25°. A trimetric
 * view: chosen because splayed legs do not fall on one another in it as they do in an isometric one.
 */
export const PICTORIAL: Camera = cameraFrom({
  x: -Math.sin((35 * Math.PI) / 180),
  y: -Math.cos((35 * Math.PI) / 180),
  z: Math.tan((25 * Math.PI) / 180),
});

/** The views of one part by its own frame, its length upright: the face square on, and from its sides and ends. */
export function camerasOfPart(
  frame: Frame,
): Readonly<Record<'face' | 'back' | 'right' | 'left' | 'top' | 'foot', Camera>> {
  const look = (x: Vec3, y: Vec3): Camera => ({ ...camera(x, y), origin: frame.origin });
  return {
    face: look(frame.x, frame.y),
    back: look(minus(frame.x), frame.y),
    /** From beyond its x: the face on the left of the picture. */
    right: look(minus(frame.z), frame.y),
    left: look(frame.z, frame.y),
    /** From beyond the end at +y: the face at the foot of the picture. */
    top: look(frame.x, minus(frame.z)),
    foot: look(frame.x, frame.z),
  };
}
