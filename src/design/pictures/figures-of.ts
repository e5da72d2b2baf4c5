import { valueOfDimension } from '../../drawing/index.ts';
import type { Computed } from '../computed.ts';
import { type PictureOf, pictureOf } from './picture-of.ts';

/** What the dimensions of a picture measure, by their names: mm, rad. Of several of one name the first. */
export function figuresOf(computed: Computed, of: PictureOf): ReadonlyMap<string, number> {
  const figures = new Map<string, number>();
  for (const dimension of pictureOf(computed, of)?.dimensions ?? []) {
    const value = valueOfDimension(dimension);
    if (value !== undefined && !figures.has(dimension.name)) figures.set(dimension.name, value);
  }
  return figures;
}
