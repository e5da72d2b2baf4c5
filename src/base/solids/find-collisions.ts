import type { Manifold } from 'manifold-3d';
import { CONTACT_TOLERANCE, offsetRegions, type Vec3 } from '../../geometry/index.ts';
import type { Solid, SolidKernel } from './api.ts';
import { boundsOf, boxesShare } from './bounds-of.ts';
import { centreOf } from './centre-of.ts';
import { layersOfPart } from './layers-of-part.ts';
import { withScratch } from './scratch.ts';
import { bodyOf } from './solid-of.ts';
import { thicknessOf } from './thickness-of.ts';

/** Two parts that want to be in the same place. */
export interface Collision {
  readonly a: string;
  readonly b: string;
  /** All the wood that they have in common, mm³. */
  readonly volume: number;
  /**
   * How far one goes into the other, mm: the thickness of what they have in common, measured square to that of its faces for which it
   * is least; of several places the greatest.
   */
  readonly depth: number;
  /** In the middle of that place, in the world. */
  readonly at: Vec3;
}

/**
 * Every pair of parts that run into each other by more than CONTACT_TOLERANCE. Whether they do is asked of the parts with half of it
 * planed off all over, so that neither a touch is named, nor what rounding and chords leave, nor is anything deeper left out, however
 * small it is.
 */
export function findCollisions(kernel: SolidKernel, solids: readonly Solid[]): readonly Collision[] {
  return withScratch((keep) => {
    const boxes = solids.map(({ body }) => boundsOf(body));
    const slim = new Map<Solid, Manifold>();
    const slimOf = (solid: Solid): Manifold => {
      const made = slim.get(solid) ?? keep(planedOff(kernel, solid, CONTACT_TOLERANCE / 2));
      slim.set(solid, made);
      return made;
    };
    return solids.flatMap((a, i) =>
      solids.slice(i + 1).flatMap((b, j) => {
        if (!boxesShare(boxes[i]!, boxes[i + 1 + j]!, CONTACT_TOLERANCE)) return [];
        return collisionOf(a, b, slimOf(a), slimOf(b)) ?? [];
      }),
    );
  });
}

function collisionOf(a: Solid, b: Solid, slimA: Manifold, slimB: Manifold): Collision | undefined {
  return withScratch((keep) => {
    const core = keep(slimA.intersect(slimB));
    if (core.isEmpty() || core.volume() <= 0) return undefined;
    const places = core.decompose().map((place) => keep(place));
    const depths = places.map((place) => thicknessOf(place));
    const depth = Math.max(...depths);
    const deepest = places[depths.indexOf(depth)]!;
    const volume = keep(a.body.intersect(b.body)).volume();
    return { a: a.part.id, b: b.part.id, volume, depth: depth + CONTACT_TOLERANCE, at: centreOf(deepest) };
  });
}

/** The part with this much planed off all of its faces. To be freed by the caller. */
function planedOff(kernel: SolidKernel, { part, pockets }: Solid, by: number): Manifold {
  const { cuts, frame, drawn } = part;
  // Sideways every layer is planed, walls of pockets as well; here their floors are.
  const deeper = pockets.map((pocket) => ({
    ...pocket,
    fromZ: pocket.fromZ + by,
    toZ: pocket.toZ - by,
  }));
  const [outside, inside] = [-by, by - drawn.thickness];
  const layers = layersOfPart({ drawn }, deeper).flatMap(({ regions, top, bottom }) => {
    const left = { top: Math.min(top, outside), bottom: Math.max(bottom, inside) };
    const slim = left.top > left.bottom ? offsetRegions(regions, -by) : [];
    return slim.length === 0 ? [] : [{ ...left, regions: slim }];
  });
  const planes = cuts.map(({ plane }) => ({ ...plane, offset: plane.offset - by }));
  return bodyOf(kernel, layers, planes, frame);
}
