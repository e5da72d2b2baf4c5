import type { Quantity } from '../core/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../measure/index.ts';

/** A measured value or a limit in words, lengths as the design writes them. */
export function quantityWords({ value, unit }: Quantity, lengths: LengthStyle): string {
  switch (unit) {
    case 'mm':
      return formatLength(value, lengths);
    case 'rad':
      return formatAngle(value, { unit: 'deg', decimals: 1 });
    case 'mm2':
      return `${value.toFixed(1)} mm²`;
    case 'none':
      return String(Number(value.toPrecision(4)));
    default:
      return unit satisfies never;
  }
}
