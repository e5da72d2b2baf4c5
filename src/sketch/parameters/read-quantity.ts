import type { Result } from '../../core/index.ts';
import { type LengthUnit, parseAngle, parseCount, parseLength, parseRatio } from '../../measure/index.ts';

/** A figure of a kind of parameter as typed, in mm, rad or plain. `unit` is what a bare length means. */
export function readQuantity(
  text: string,
  kind: 'length' | 'angle' | 'ratio' | 'count',
  unit: LengthUnit,
): Result<number> {
  switch (kind) {
    case 'length':
      return parseLength(text, { unit });
    case 'angle':
      return parseAngle(text);
    case 'ratio':
      return parseRatio(text);
    case 'count':
      return parseCount(text);
    default:
      return kind satisfies never;
  }
}
