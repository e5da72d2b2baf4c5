import type { LengthStyle } from '../measure/index.ts';
import type { Design } from './design-schema.ts';

const DENOMINATORS = { '1/16': 16, '1/32': 32, '1/64': 64 } as const;

/** How a design's lengths are printed. */
export function lengthStyleOf({ units }: Pick<Design, 'units'>): LengthStyle {
  return units.length === 'mm'
    ? { unit: 'mm', decimals: units.decimals }
    : { unit: 'in', denominator: DENOMINATORS[units.nearest] };
}
