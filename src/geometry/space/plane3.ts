import type { Plane3, Vec3 } from './api.ts';
import { dot3, scale3, unit3 } from './vec3.ts';

/** The plane through a point, its normal in a direction of any length. */
export function planeThrough(through: Vec3, facing: Vec3): Plane3 {
  const normal = unit3(facing);
  return { normal, offset: dot3(normal, through) };
}

/** The same plane, bounding what lies on its other side. */
export const flipPlane = (plane: Plane3): Plane3 => ({
  normal: scale3(plane.normal, -1),
  offset: -plane.offset,
});

/** How far (mm) a point stands out of the plane along its normal. */
export const heightOver = (plane: Plane3, p: Vec3): number => dot3(plane.normal, p) - plane.offset;
