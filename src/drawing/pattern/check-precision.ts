import type { LengthStyle } from '../../measure/index.ts';

/** How check lengths are written: as finely as a rule shows them, for they tell whether paper has stretched. */
export function finest(style: LengthStyle): LengthStyle {
  return style.unit === 'mm'
    ? { unit: 'mm', decimals: Math.max(1, style.decimals) }
    : { ...style, denominator: 64 };
}

/** What must be said where check lengths are written more finely than all the rest: ` to 1/64″`, or nothing. */
export function precisionWords(style: LengthStyle): string {
  return style.unit === 'mm' || style.denominator === 64 ? '' : ' to 1\u204464\u2033';
}
