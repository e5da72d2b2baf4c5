import type { Manifold, Mat4 } from 'manifold-3d';
import type { Frame, Plane3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import type { Solid, SolidKernel } from './api.ts';
import { cornersOfOutline } from './corners-of-outline.ts';
import { type Layer, layersOfPart } from './layers-of-part.ts';
import { withScratch } from './scratch.ts';

/**
 * A part as a solid in the world: its drawn outline with its openings from the face side down to the back, less its pockets, cut by its
 * planes. Arcs are chords within SOLID_CHORD; other places are right to 1e-8 mm. To be freed by `freeSolids`.
 */
export function solidOf(kernel: SolidKernel, part: PlacedPart, pockets: readonly Hollow[] = []): Solid {
  const planes = part.cuts.map(({ plane }) => plane);
  return { part, pockets, body: bodyOf(kernel, layersOfPart(part, pockets), planes, part.frame) };
}

/** Gives back the memory of solids that are needed no more. */
export function freeSolids(solids: readonly Solid[]): void {
  for (const { body } of solids) body.delete();
}

/** Makes the solids of parts, hands them over, and frees them when `use` is done. */
export function withSolids<T>(
  kernel: SolidKernel,
  parts: readonly PlacedPart[],
  use: (solids: readonly Solid[]) => T,
  pocketsOf: (part: PlacedPart) => readonly Hollow[] = () => [],
): T {
  const solids: Solid[] = [];
  try {
    for (const part of parts) solids.push(solidOf(kernel, part, pocketsOf(part)));
    return use(solids);
  } finally {
    freeSolids(solids);
  }
}

/** Layers cut by planes of a part's frame, moved into the world. To be freed by the caller. */
export function bodyOf(
  { wasm }: SolidKernel,
  layers: readonly Layer[],
  planes: readonly Plane3[],
  frame: Frame,
): Manifold {
  const { Manifold } = wasm;
  return withScratch((keep) => {
    const prisms = layers.map(({ regions, top, bottom }) => {
      const loops = regions.flatMap(({ outer, holes }) => [outer, ...holes].map(cornersOfOutline));
      return keep(keep(Manifold.extrude(loops, top - bottom)).translate(0, 0, bottom));
    });
    const whole = prisms.length === 1 ? prisms[0]! : keep(Manifold.union(prisms));
    const cut = planes.reduce(
      // What stays lies where normal · p is less; the kernel keeps what lies where it is more.
      (body, { normal, offset }) => keep(body.trimByPlane([-normal.x, -normal.y, -normal.z], -offset)),
      whole,
    );
    return cut.transform(toWorld(frame));
  });
}

/** Column by column, as the kernel reads it. */
function toWorld({ origin, x, y, z }: Frame): Mat4 {
  return [x.x, x.y, x.z, 0, y.x, y.y, y.z, 0, z.x, z.y, z.z, 0, origin.x, origin.y, origin.z, 1];
}
