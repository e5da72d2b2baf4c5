import type { Outline, Region } from '../api.ts';
import { lengthOf } from '../edge.ts';

/** Length once round a loop, mm. */
export function perimeterOfOutline(outline: Outline): number {
  return outline.edges.reduce((sum, edge) => sum + lengthOf(edge), 0);
}

/** Length of all boundaries, holes included, mm. */
export function perimeterOfRegions(regions: readonly Region[]): number {
  let total = 0;
  for (const { outer, holes } of regions) {
    total += perimeterOfOutline(outer);
    for (const hole of holes) total += perimeterOfOutline(hole);
  }
  return total;
}
