import type { StandingBase } from '../../base/index.ts';
import { CAMERAS } from '../view/cameras.ts';
import { type BaseSide, dimensionsOfBase } from './dimensions-of-base.ts';
import { valueOfDimension } from './value-of.ts';

/**
 * What the dimensions of a view of a base measure, by their names (mm, rad), without drawing the view: the view only says where dimensions
 * stand, not what they measure.
 */
export function figuresOfBase(base: StandingBase, side: BaseSide): ReadonlyMap<string, number> {
  const box = { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const figures = new Map<string, number>();
  for (const dimension of dimensionsOfBase(base, side, {
    camera: CAMERAS[side],
    tolerance: 0,
    lines: [],
    box,
  })) {
    const value = valueOfDimension(dimension);
    if (value !== undefined && !figures.has(dimension.name)) figures.set(dimension.name, value);
  }
  return figures;
}
