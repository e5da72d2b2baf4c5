import type { Mat4 } from 'manifold-3d';
import { type Frame, pointToFrame, type Region } from '../../geometry/index.ts';
import type { Solid, SolidKernel } from './api.ts';
import { regionsOfSection } from './regions-of-section.ts';
import { withScratch } from './scratch.ts';

const TAG = { id: 'silhouette', role: 'left' } as const;

/**
 * What solids cover together, seen against the z axis of a frame of the world: in the frame's x and y, mm. Places are right to 1e-7 mm,
 * arcs within SOLID_CHORD.
 */
export function silhouetteOf(
  { wasm }: SolidKernel,
  solids: readonly Solid[],
  frame: Frame,
): readonly Region[] {
  if (solids.length === 0) return [];
  return withScratch((keep) => {
    const view = toFrame(frame);
    const shadows = solids.map(({ body }) => keep(keep(body.transform(view)).project()));
    return regionsOfSection(keep(wasm.CrossSection.union(shadows)), TAG);
  });
}

/** Column by column, as the kernel reads it. */
function toFrame(frame: Frame): Mat4 {
  const { x, y, z } = frame;
  const to = pointToFrame(frame, { x: 0, y: 0, z: 0 });
  return [x.x, y.x, z.x, 0, x.y, y.y, z.y, 0, x.z, y.z, z.z, 0, to.x, to.y, to.z, 1];
}
