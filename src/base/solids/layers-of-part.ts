import { POSITION_TOLERANCE, type Region, subtractRegions } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Hollow } from '../contact/without-pockets.ts';

/** Between two depths of a part's frame it is a prism. */
export interface Layer {
  readonly regions: readonly Region[];
  readonly top: number;
  readonly bottom: number;
}

/** A part before its cuts: one layer, or several where wood is taken out of it between two depths. */
export function layersOfPart(
  { drawn }: Pick<PlacedPart, 'drawn'>,
  pockets: readonly Hollow[],
): readonly Layer[] {
  const { region, thickness } = drawn;
  const within = pockets.flatMap(({ fromZ, toZ }) => [fromZ, toZ]).filter((z) => z < 0 && z > -thickness);
  const depths = [0, -thickness, ...within].toSorted((a, b) => b - a);
  return depths.slice(1).flatMap((bottom, at) => {
    const top = depths[at]!;
    if (top - bottom < POSITION_TOLERANCE) return [];
    const middle = (top + bottom) / 2;
    const lost = pockets.filter(({ fromZ, toZ }) => fromZ > middle && toZ < middle);
    const regions = lost.reduce<readonly Region[]>(
      (left, pocket) => subtractRegions(left, pocket.region),
      [region],
    );
    return regions.length === 0 ? [] : [{ regions, top, bottom }];
  });
}
