import type { Frame } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import type { SolidKernel } from './api.ts';
import { withSolids } from './solid-of.ts';

/** The surface of a part as triangles, to be shown; arcs are chords within SOLID_CHORD. */
export interface PartMesh {
  /** Identity of the part where it stands. */
  readonly part: string;
  /** Three numbers a corner, mm, in the world. */
  readonly positions: Float32Array;
  /** Three corners a triangle, anticlockwise seen from outside. */
  readonly triangles: Uint32Array;
  /** The part's own frame in the world: x and y of its plane, z out of the face side. */
  readonly frame: Frame;
}

/** Parts as they stand, with their pockets, as triangles. */
export function meshesOf(
  kernel: SolidKernel,
  parts: readonly PlacedPart[],
  pocketsOf?: (part: PlacedPart) => readonly Hollow[],
): readonly PartMesh[] {
  return withSolids(
    kernel,
    parts,
    (solids) =>
      solids.map(({ part, body }) => {
        const { numProp, vertProperties, triVerts } = body.getMesh();
        const count = vertProperties.length / numProp;
        const positions = new Float32Array(3 * count);
        for (let i = 0; i < count; i++) {
          positions.set(vertProperties.subarray(i * numProp, i * numProp + 3), 3 * i);
        }
        return { part: part.id, positions, triangles: new Uint32Array(triVerts), frame: part.frame };
      }),
    pocketsOf,
  );
}
