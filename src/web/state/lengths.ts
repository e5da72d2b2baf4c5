import { formatLength, type LengthStyle } from '../../measure/index.ts';
import { design } from './current.ts';

const DENOMINATORS = { '1/16': 16, '1/32': 32, '1/64': 64 } as const;

/** How the design in hand writes its lengths. */
export function lengthStyle(): LengthStyle {
  const units = design.value?.units;
  if (units === undefined || units.length === 'mm') return { unit: 'mm', decimals: units?.decimals ?? 1 };
  return { unit: 'in', denominator: DENOMINATORS[units.nearest] };
}

/** A length as one would type it in the design's unit: whole millimetres without a point. */
export function plainLength(mm: number): string {
  return formatLength(mm, lengthStyle()).replace(/\.0+(?= mm$)/, '');
}

/** A gap or an error, too small for the design's own style: to 0.01 mm or a thousandth of an inch. */
export function smallLength(mm: number): string {
  return lengthStyle().unit === 'mm' ? `${mm.toFixed(2)} mm` : `${(mm / 25.4).toFixed(3)} in`;
}
