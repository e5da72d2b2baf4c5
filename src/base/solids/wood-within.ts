import { POSITION_TOLERANCE } from '../../geometry/index.ts';
import type { Box3, Solid, SolidKernel } from './api.ts';
import { boundsOf, boxesShare } from './bounds-of.ts';
import { withScratch } from './scratch.ts';

/** A piece of a part that hangs together within a box. */
export interface WoodWithin {
  readonly part: string;
  /** The box round it, mm. */
  readonly bounds: Box3;
}

/** What solids have within a box of the world: every piece that hangs together in it, and how far it reaches. A touch of the box is none. */
export function woodWithin(
  { wasm }: SolidKernel,
  solids: readonly Solid[],
  box: Box3,
): readonly WoodWithin[] {
  const { min, max } = box;
  return withScratch((keep) => {
    const size = [max.x - min.x, max.y - min.y, max.z - min.z] as const;
    const room = keep(keep(wasm.Manifold.cube(size)).translate(min.x, min.y, min.z));
    return solids.flatMap(({ part, body }) => {
      if (!boxesShare(boundsOf(body), box, POSITION_TOLERANCE)) return [];
      return keep(body.intersect(room))
        .decompose()
        .map((piece) => ({ part: part.id, bounds: boundsOf(keep(piece)) }))
        .filter(({ bounds }) => boxesShare(bounds, bounds, POSITION_TOLERANCE));
    });
  });
}
