import { fail, ok, type Result } from '../core/index.ts';
import { readNumber, skipBlanks } from './read-number.ts';
import { refusalToProblem, refuseBySize, signAt } from './refuse.ts';

const EXPECTED = 'a temperature such as 21 °C, 70 °F or 21';

/** Read after the number: the degree sign may be left out. */
const UNIT = /^(?:°\s*)?([CF])?\s*$/i;

/** A temperature in °C: `21`, `21 °C`, `70 °F`, `-5 C`. A bare number is in °C. */
export function parseTemperature(text: string): Result<number> {
  const bySize = refuseBySize(text, EXPECTED);
  if (bySize !== undefined) return fail(refusalToProblem('temperature', text, bySize));
  const { sign, end } = signAt(text, skipBlanks(text, 0));
  const number = readNumber(text, skipBlanks(text, end));
  if (number.kind === 'refused')
    return fail(refusalToProblem('temperature', text, { ...number.refusal, expected: EXPECTED }));
  const at = skipBlanks(text, number.numeral.end);
  const unit = UNIT.exec(text.slice(at));
  if (unit === null) {
    const message = '°C or °F was expected';
    return fail(
      refusalToProblem('temperature', text, { at, code: 'unreadable', message, expected: EXPECTED }),
    );
  }
  const value = sign * number.numeral.value;
  return ok(unit[1]?.toUpperCase() === 'F' ? ((value - 32) * 5) / 9 : value);
}
