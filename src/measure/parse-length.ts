import { fail, ok, type Result } from '../core/index.ts';
import type { LengthUnit } from './api.ts';
import { type Numeral, type Refusal, readNumber, skipBlanks } from './read-number.ts';
import { refusalToProblem, refuseBySize, signAt } from './refuse.ts';
import { MM_PER, unitAt } from './units.ts';

/** Longest length that is read, mm: 100 m is beyond any base, and keeps arithmetic far from overflow. */
export const LONGEST_LENGTH = 100_000;

const EXPECTED = 'a length such as 730 mm, 73,5 cm, 28 3/4 in or 2\' 4 3/4"';

type Reading = { readonly mm: number } | { readonly refusal: Refusal };

/**
 * A length as a maker types it, in mm: `730`, `73,0 cm`, `1.5 m`, `28 3/4"`, `28-3/4 in`, `2' 4 3/4"`, `-½ in`.
 * `unit` is what a bare number means. Problems carry the column in `text`, what was found and what was expected.
 */
export function parseLength(text: string, options: { readonly unit: LengthUnit }): Result<number> {
  const bySize = refuseBySize(text, EXPECTED);
  const reading = bySize === undefined ? readLength(text, options.unit) : { refusal: bySize };
  if ('refusal' in reading) return fail(refusalToProblem('length', text, reading.refusal));
  return ok(reading.mm);
}

function readLength(text: string, bare: LengthUnit): Reading {
  const { sign, end: start } = signAt(text, skipBlanks(text, 0));
  const first = readNumber(text, skipBlanks(text, start));
  if (first.kind === 'refused') return refuseNumber(first.refusal);
  const unit = unitAt(text, skipBlanks(text, first.numeral.end));
  if (unit === undefined) return readBare(text, first.numeral, sign, bare);
  const mm = first.numeral.value * MM_PER[unit.unit];
  const after = skipBlanks(text, unit.end);
  if (after === text.length) return inRange(sign * mm, start);
  if (unit.unit !== 'ft') return trailing(after);
  return addInches(text, { sign, after, start, whole: first.numeral });
}

/** No unit: what was chosen, unless a fraction shows that inches may be meant. */
function readBare(text: string, numeral: Numeral, sign: 1 | -1, bare: LengthUnit): Reading {
  const after = skipBlanks(text, numeral.end);
  if (after < text.length) return trailing(after);
  if (numeral.fraction && bare === 'mm') {
    const message = 'a fraction needs its unit, because a bare number means mm';
    return {
      refusal: {
        at: numeral.end,
        code: 'unit',
        message,
        expected: `"${text.trim()} in" or "${text.trim()} mm"`,
      },
    };
  }
  return inRange(sign * numeral.value * MM_PER[bare], 0);
}

/** The inches after feet: with their mark or without, after a blank, a dash or nothing. */
function addInches(
  text: string,
  feet: {
    readonly sign: 1 | -1;
    readonly after: number;
    readonly start: number;
    readonly whole: Numeral;
  },
): Reading {
  if (!Number.isInteger(feet.whole.value)) {
    const message = 'feet that inches follow must be a whole number';
    return { refusal: { at: feet.start, code: 'feet', message, expected: 'whole feet, then inches' } };
  }
  const dash = /[-‐‑–]/.test(text[feet.after]!) ? 1 : 0;
  const start = skipBlanks(text, feet.after + dash);
  const inches = readNumber(text, start);
  if (inches.kind === 'refused') return refuseNumber(inches.refusal);
  const unit = unitAt(text, skipBlanks(text, inches.numeral.end));
  if (unit !== undefined && unit.unit !== 'in') {
    const message = 'only inches follow feet';
    return { refusal: { at: inches.numeral.end, code: 'unit', message, expected: 'in or "' } };
  }
  const after = skipBlanks(text, unit?.end ?? inches.numeral.end);
  if (after < text.length) return trailing(after);
  if (inches.numeral.value >= 12) {
    const message = 'inches after feet must be less than 12';
    return { refusal: { at: start, code: 'inches', message, expected: 'less than 12 in' } };
  }
  // Summed as inches, so that 2' 4 3/4" and 28 3/4" are the same to the last bit.
  return inRange(feet.sign * (feet.whole.value * 12 + inches.numeral.value) * MM_PER.in, 0);
}

function refuseNumber(refusal: Refusal): Reading {
  return {
    refusal: refusal.code === 'number' ? { ...refusal, code: 'unreadable', expected: EXPECTED } : refusal,
  };
}

function trailing(at: number): Reading {
  const message = 'a unit or the end of the text should stand here';
  return { refusal: { at, code: 'unreadable', message, expected: EXPECTED } };
}

function inRange(mm: number, at: number): Reading {
  if (Math.abs(mm) <= LONGEST_LENGTH) return { mm: mm === 0 ? 0 : mm };
  const expected = `at most ${LONGEST_LENGTH / 1000} m`;
  return {
    refusal: { at, code: 'too-large', message: `it is more than ${LONGEST_LENGTH / 1000} m`, expected },
  };
}
