import type { Box } from '../../geometry/index.ts';
import type { Solid, SolidKernel } from './api.ts';
import { boundsOf } from './bounds-of.ts';
import { woodWithin } from './wood-within.ts';

/** The lowest wood over a rectangle of the floor: its height in the world, mm, and the part that it belongs to. */
export interface Lowest {
  readonly part: string;
  readonly z: number;
}

/** The lowest point of any solid over a rectangle seen from above (for knees); nothing where no wood is over it. */
export function lowestOver(kernel: SolidKernel, solids: readonly Solid[], over: Box): Lowest | undefined {
  const heights = solids.map(({ body }) => boundsOf(body));
  const min = { x: over.minX, y: over.minY, z: Math.min(...heights.map((each) => each.min.z)) - 1 };
  const max = { x: over.maxX, y: over.maxY, z: Math.max(...heights.map((each) => each.max.z)) + 1 };
  if (solids.length === 0) return undefined;
  const [lowest] = woodWithin(kernel, solids, { min, max }).toSorted(
    (p, q) => p.bounds.min.z - q.bounds.min.z,
  );
  return lowest && { part: lowest.part, z: lowest.bounds.min.z };
}
