import type { Quantity } from '../core/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../measure/index.ts';
import { lengthWords } from '../routing/index.ts';

/** A measured value or a limit in words, lengths as the design writes them. */
export function quantityWords({ value, unit }: Quantity, lengths: LengthStyle): string {
  switch (unit) {
    case 'mm':
      // As a fraction, what is small would read 0 in.
      return lengths.unit === 'mm' ? formatLength(value, lengths) : lengthWords(lengths).length(value);
    case 'rad':
      return formatAngle(value, { unit: 'deg', decimals: 1 });
    case 'mm2':
      return lengthWords(lengths).area(value);
    case 'none':
      return String(Number(value.toPrecision(4)));
    default:
      return unit satisfies never;
  }
}
