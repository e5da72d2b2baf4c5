import { MM_PER, RAD_PER_DEGREE } from './units.ts';

/** A figure inside an expression: its value in mm, rad or plain, and where it ends. */
export interface Figure {
  readonly value: number;
  readonly of: 'length' | 'angle' | 'number';
  readonly end: number;
}

const MOST_DIGITS = 15;

/** Units that a figure in an expression may carry. Quotes and primes are not among them. */
const FACTORS: Readonly<Record<string, { readonly of: 'length' | 'angle'; readonly factor: number }>> = {
  mm: { of: 'length', factor: MM_PER.mm },
  cm: { of: 'length', factor: MM_PER.cm },
  m: { of: 'length', factor: MM_PER.m },
  in: { of: 'length', factor: MM_PER.in },
  ft: { of: 'length', factor: MM_PER.ft },
  deg: { of: 'angle', factor: RAD_PER_DEGREE },
  rad: { of: 'angle', factor: 1 },
};

/** The words that mean units in an expression. */
export const FIGURE_UNITS: readonly string[] = Object.keys(FACTORS);

/**
 * The figure at `position` of an expression: `12`, `7.3 cm`, `3/4 in`, `28 3/4 in`, `8 deg`. A fraction belongs to the
 * figure only when a unit follows it. Nothing where no figure stands; `end` at `position` when it has too many digits.
 */
export function readFigure(text: string, position: number): Figure | undefined {
  const rest = text.slice(position, position + 80);
  const mixed = /^(?:(\d{1,9})\s+)?(\d{1,6})\s*\/\s*(\d{1,4})\s*(mm|cm|m|in|ft|deg|rad)(?![a-z0-9_])/.exec(
    rest,
  );
  if (mixed !== null && Number(mixed[3]) > 0) {
    const { of, factor } = FACTORS[mixed[4]!]!;
    const value = (Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3])) * factor;
    return { value, of, end: position + mixed[0].length };
  }
  const plain = /^(\d+(?:\.\d*)?|\.\d+)(?:\s*(mm|cm|m|in|ft|deg|rad)(?![a-z0-9_]))?/.exec(rest);
  if (plain === null) return undefined;
  if (plain[1]!.length > MOST_DIGITS + 1) return { value: Number.NaN, of: 'number', end: position };
  const unit = FACTORS[plain[2] ?? ''];
  const value = Number(plain[1]) * (unit?.factor ?? 1);
  return { value, of: unit?.of ?? 'number', end: position + plain[0].length };
}
