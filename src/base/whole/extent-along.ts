import { boundsOfRegions, type Region, transformRegion, turnBy } from '../../geometry/index.ts';

/** From where to where regions reach, mm. */
export interface Extent {
  readonly least: number;
  readonly most: number;
}

/** How far regions reach along a direction (rad), and square to it (to the right, looking along). */
export function extentAlong(
  regions: readonly Region[],
  direction: number,
): { readonly along: Extent; readonly across: Extent } {
  // Turned so that the direction is +y, what lies to its right is +x.
  const turn = turnBy(Math.PI / 2 - direction);
  const box = boundsOfRegions(regions.map((region) => transformRegion(region, turn)));
  return { along: { least: box.minY, most: box.maxY }, across: { least: box.minX, most: box.maxX } };
}
