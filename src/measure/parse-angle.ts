import { fail, ok, type Result } from '../core/index.ts';
import { type Numeral, type Refusal, readNumber, skipBlanks } from './read-number.ts';
import { refusalToProblem, refuseBySize, signAt } from './refuse.ts';
import { RAD_PER_DEGREE } from './units.ts';

const EXPECTED = "an angle such as 8, 8.5°, 8 deg or 8° 30'";

/** Spellings of degrees, minutes and seconds of arc, in the order in which they must follow each other. */
const MARKS = [
  { name: 'degrees', share: 1, spelling: /^(?:degrees|degree|deg\.?|°|º|d(?![a-z]))/i },
  { name: 'minutes', share: 1 / 60, spelling: /^(?:minutes|minute|min\.?|′|’|'(?!'))/i },
  { name: 'seconds', share: 1 / 3600, spelling: /^(?:seconds|second|sec\.?|″|”|"|''|′′)/i },
] as const;

type Reading = { readonly degrees: number } | { readonly refusal: Refusal };

/**
 * An angle as a maker types it, in radians: `8`, `8.5°`, `8,5 deg`, `8° 30'`, `8 deg 30 min`, `-8° 30' 15"`.
 * A bare number means degrees. At most a full turn either way.
 */
export function parseAngle(text: string): Result<number> {
  const bySize = refuseBySize(text, EXPECTED);
  const reading = bySize === undefined ? readAngle(text) : { refusal: bySize };
  if ('refusal' in reading) return fail(refusalToProblem('angle', text, reading.refusal));
  return ok(reading.degrees * RAD_PER_DEGREE);
}

function readAngle(text: string): Reading {
  const { sign, end } = signAt(text, skipBlanks(text, 0));
  let position = skipBlanks(text, end);
  let degrees = 0;
  let least = 0;
  let before: Numeral | undefined;
  do {
    const number = readNumber(text, position);
    if (number.kind === 'refused') return refuseNumber(number.refusal);
    const mark = skipBlanks(text, number.numeral.end);
    const rank = MARKS.findIndex((each, index) => index >= least && each.spelling.test(text.slice(mark)));
    const bare = rank < 0 && mark === text.length && least < MARKS.length;
    if (rank < 0 && !bare) return refuse(mark, 'degrees, minutes or the end of the text should stand here');
    const taken = MARKS[rank < 0 ? least : rank]!;
    if (before !== undefined && !Number.isInteger(before.value)) {
      return refuse(position, `only whole ${MARKS[least - 1]!.name} can be followed by ${taken.name}`);
    }
    if (taken.share < 1 && before !== undefined && number.numeral.value >= 60) {
      return refuse(position, `${taken.name} must be less than 60`);
    }
    degrees += number.numeral.value * taken.share;
    least = MARKS.indexOf(taken) + 1;
    before = number.numeral;
    position = rank < 0 ? mark : skipBlanks(text, mark + taken.spelling.exec(text.slice(mark))![0].length);
  } while (position < text.length);
  if (degrees > 360) return refuse(0, 'it is more than a full turn', 'too-large');
  return { degrees: degrees === 0 ? 0 : sign * degrees };
}

function refuseNumber(refusal: Refusal): Reading {
  return {
    refusal: refusal.code === 'number' ? { ...refusal, code: 'unreadable', expected: EXPECTED } : refusal,
  };
}

function refuse(at: number, message: string, code = 'unreadable'): Reading {
  return { refusal: { at, code, message, expected: EXPECTED } };
}
