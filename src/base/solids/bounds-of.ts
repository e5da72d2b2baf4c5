import type { Manifold } from 'manifold-3d';
import type { Box3 } from './api.ts';

const AXES = ['x', 'y', 'z'] as const;

/** The box round a body, mm. */
export function boundsOf(body: Manifold): Box3 {
  const { min, max } = body.boundingBox();
  return { min: { x: min[0], y: min[1], z: min[2] }, max: { x: max[0], y: max[1], z: max[2] } };
}

/** Do two boxes share more than a skin of this many mm? */
export const boxesShare = (a: Box3, b: Box3, skin: number): boolean =>
  AXES.every((axis) => Math.min(a.max[axis], b.max[axis]) - Math.max(a.min[axis], b.min[axis]) > skin);

/** How far apart two boxes are at least, mm. */
export const boxesApart = (a: Box3, b: Box3): number =>
  Math.hypot(...AXES.map((axis) => Math.max(0, b.min[axis] - a.max[axis], a.min[axis] - b.max[axis])));
