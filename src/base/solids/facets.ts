import type { Manifold } from 'manifold-3d';
import type { Vec3 } from '../../geometry/index.ts';

export type Triangle = readonly [Vec3, Vec3, Vec3];

/** The triangles of a body's surface, anticlockwise seen from outside, in full precision (a mesh alone comes in single precision). */
export function facetsOf(body: Manifold): readonly Triangle[] {
  const corners: Vec3[] = [];
  body
    .warpBatch((flat, count) => {
      for (let at = 0; at < count; at++)
        corners.push({ x: flat[3 * at]!, y: flat[3 * at + 1]!, z: flat[3 * at + 2]! });
    })
    .delete();
  const { triVerts } = body.getMesh();
  return Array.from({ length: triVerts.length / 3 }, (_, at) => [
    corners[triVerts[3 * at]!]!,
    corners[triVerts[3 * at + 1]!]!,
    corners[triVerts[3 * at + 2]!]!,
  ]);
}
