import { distance, dot, polar, subtract } from '../../geometry/index.ts';
import { writeAngle, writeLength } from '../layout/figures.ts';
import type { Dimension, DimensionStyle } from './api.ts';

/** Usual height of figures, mm. */
export const FIGURE = 2.5;

type LengthDimension = Extract<Dimension, { kind: 'length' }>;

/** mm in the world. */
export function measuredLength({ from, to, along }: LengthDimension): number {
  return along === undefined ? distance(from, to) : Math.abs(dot(subtract(to, from), polar(along)));
}

/** rad, in [0, 2π). */
export function measuredAngle({ from, to }: Extract<Dimension, { kind: 'angle' }>): number {
  const turned = (to - from) % (2 * Math.PI);
  return turned < 0 ? turned + 2 * Math.PI : turned;
}

/** What is lettered: always what the points say. */
export function figureOf(dimension: Dimension, lengths: DimensionStyle['lengths']): string {
  const words = dimension.words === undefined || dimension.words === '' ? '' : ` ${dimension.words}`;
  switch (dimension.kind) {
    case 'length':
      return `${writeLength(measuredLength(dimension) + (dimension.shortened ?? 0), lengths)}${words}`;
    case 'angle':
      return `${writeAngle(measuredAngle(dimension))}${words}`;
    case 'radius':
      return `R ${writeLength(distance(dimension.centre, dimension.at), lengths)}${words}`;
    case 'note':
      return dimension.words;
    default:
      return dimension satisfies never;
  }
}
