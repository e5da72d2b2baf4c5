/** Numbers as makers type them, with their place in the text, so that every refusal can point at it. */

/** Fractions that have a character of their own (Unicode, Number Forms and Latin-1). */
const VULGAR: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['½', [1, 2]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['¼', [1, 4]],
  ['¾', [3, 4]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅐', [1, 7]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['⅑', [1, 9]],
  ['⅒', [1, 10]],
]);

/** The widest fraction read: finer than any rule, short enough to stay exact. */
const LARGEST_DENOMINATOR = 1024;
const MOST_DIGITS = 15;

export interface Numeral {
  readonly value: number;
  /** It has a fraction such as 3/4, which a maker writes of inches. */
  readonly fraction: boolean;
  readonly end: number;
}

/** Why no number could be read, and at which index of the text. */
export interface Refusal {
  readonly at: number;
  readonly code: string;
  readonly message: string;
  readonly expected: string;
}

export type NumeralOutcome =
  | { readonly kind: 'numeral'; readonly numeral: Numeral }
  | { readonly kind: 'refused'; readonly refusal: Refusal };

/** Any blank, no-break and thin spaces too. */
export function skipBlanks(text: string, position: number): number {
  let at = position;
  while (at < text.length && /\s/.test(text[at]!)) at += 1;
  return at;
}

/**
 * The unsigned number at `position`: `730`, `73,5`, `.5`, `3/4`, `¾`, `28 3/4`, `28-3/4`, `28¾`.
 * A decimal mark is a point or a comma.
 */
export function readNumber(text: string, position: number): NumeralOutcome {
  const vulgar = fractionAt(text, position);
  if (vulgar !== undefined) return 'at' in vulgar ? refuse(vulgar) : { kind: 'numeral', numeral: vulgar };
  const match = /^(\d*)(?:([.,])(\d*))?/.exec(text.slice(position, position + 40))!;
  const [whole, digits, mark, decimals = ''] = match;
  if (digits === '' && decimals === '') {
    return refuse({ at: position, code: 'number', message: 'a number is missing', expected: 'a number' });
  }
  if (`${digits}${decimals}`.length > MOST_DIGITS) {
    const message = `a number has at most ${MOST_DIGITS} digits`;
    return refuse({ at: position, code: 'number', message, expected: 'fewer digits' });
  }
  if (mark === ',' && /^[1-9]\d{0,2}$/.test(digits!) && decimals.length === 3) {
    const message = `"${whole}" could be ${digits}${decimals} or ${digits}.${decimals}`;
    const expected = `"${digits}${decimals}" or "${digits}.${decimals}"`;
    return refuse({ at: position, code: 'ambiguous', message, expected });
  }
  const end = position + whole.length;
  const value = Number(`${digits || '0'}.${decimals || '0'}`);
  if (mark !== undefined) return { kind: 'numeral', numeral: { value, fraction: false, end } };
  return withFraction(text, { value, fraction: false, end });
}

/** A whole number, and the proper fraction that follows it after blanks, one dash, or nothing. */
function withFraction(text: string, whole: Numeral): NumeralOutcome {
  const afterBlanks = skipBlanks(text, whole.end);
  const dash = /^[-‐‑–]/.test(text.slice(whole.end));
  const start = dash ? whole.end + 1 : afterBlanks;
  const fraction = start === whole.end && !isVulgar(text, start) ? undefined : fractionAt(text, start);
  if (fraction === undefined) return { kind: 'numeral', numeral: whole };
  if ('at' in fraction) return refuse(fraction);
  if (fraction.value >= 1) {
    const message = 'the fraction after a whole number is 1 or more';
    return refuse({ at: start, code: 'fraction', message, expected: 'a fraction below 1, such as 3/4' });
  }
  const numeral = { value: whole.value + fraction.value, fraction: true, end: fraction.end };
  return { kind: 'numeral', numeral };
}

function isVulgar(text: string, position: number): boolean {
  return VULGAR.has(text[position] ?? '');
}

/** `3/4`, `3⁄4` or `¾` at `position`; nothing when there is none; a refusal when it cannot be meant. */
function fractionAt(text: string, position: number): Numeral | Refusal | undefined {
  const known = VULGAR.get(text[position] ?? '');
  if (known !== undefined) return { value: known[0] / known[1], fraction: true, end: position + 1 };
  const match = /^(\d+)[ \u00a0]?[/⁄∕][ \u00a0]?(\d*)/.exec(text.slice(position, position + 40));
  if (match === null) return undefined;
  const [whole, above, below] = match;
  const denominator = Number(below);
  if (below === '' || denominator === 0 || denominator > LARGEST_DENOMINATOR || above!.length > 6) {
    const message = `"${whole}" is not a fraction that a rule shows`;
    const expected = `a denominator from 1 to ${LARGEST_DENOMINATOR}`;
    return { at: position, code: 'fraction', message, expected };
  }
  return { value: Number(above) / denominator, fraction: true, end: position + whole.length };
}

function refuse(refusal: Refusal): NumeralOutcome {
  return { kind: 'refused', refusal };
}
