import { CONTACT_TOLERANCE, type Region, type Vec } from '../../geometry/index.ts';
import type { Solid, SolidKernel } from './api.ts';
import { boundsOf } from './bounds-of.ts';
import { regionsOfSection } from './regions-of-section.ts';
import { withScratch } from './scratch.ts';

/** What a part stands on. */
export interface Footprint {
  readonly part: string;
  /** Seen from above, mm. */
  readonly regions: readonly Region[];
}

export interface FloorContact {
  readonly feet: readonly Footprint[];
  /** The convex hull of all feet, anticlockwise; empty when nothing reaches the floor. */
  readonly hull: readonly Vec[];
}

const TAG = { id: 'foot', role: 'sawn' } as const;

/**
 * How far above the floor (mm) feet are looked at: a section in the floor itself would be of wood that ends there. Of a leg that leans by
 * 30° the print moves by 0.0006 mm.
 */
const ABOVE = 1e-3;

/**
 * What solids stand on, on a floor at height `level`: their sections there, of all that come within CONTACT_TOLERANCE of it. Of a part that
 * goes through the floor it is the section in it.
 */
export function floorContact({ wasm }: SolidKernel, solids: readonly Solid[], level = 0): FloorContact {
  return withScratch((keep) => {
    const prints = solids.flatMap(({ part, body }) => {
      const { min, max } = boundsOf(body);
      if (min.z > level + CONTACT_TOLERANCE || max.z <= level + ABOVE) return [];
      const print = keep(body.slice(Math.max(min.z, level) + ABOVE));
      return print.isEmpty() ? [] : [{ part: part.id, print }];
    });
    const feet = prints.map(({ part, print }) => ({ part, regions: regionsOfSection(print, TAG) }));
    if (prints.length === 0) return { feet, hull: [] };
    const hull = keep(wasm.CrossSection.hull(prints.map(({ print }) => print)));
    const [loop] = hull.toPolygons();
    return { feet, hull: (loop ?? []).map(([x, y]) => ({ x, y })) };
  });
}
