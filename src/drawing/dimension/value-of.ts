import { distance } from '../../geometry/index.ts';
import type { Dimension } from './api.ts';
import { measuredAngle, measuredLength } from './figure-of.ts';

/** What a dimension measures: mm or rad, of its points. Notes measure nothing. */
export function valueOfDimension(dimension: Dimension): number | undefined {
  switch (dimension.kind) {
    case 'length':
      return measuredLength(dimension);
    case 'angle':
      return measuredAngle(dimension);
    case 'radius':
      return distance(dimension.centre, dimension.at);
    case 'note':
      return undefined;
    default:
      return dimension satisfies never;
  }
}
