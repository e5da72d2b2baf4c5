import { fail, ok, type Result } from '../core/index.ts';
import { readNumber, skipBlanks } from './read-number.ts';
import { refusalToProblem, refuseBySize, signAt } from './refuse.ts';

const RATIO = 'a number such as 0.6, 3/5 or 60 %';

/** A plain number as a maker types it: `0.6`, `0,6`, `3/5`, `60 %`. */
export function parseRatio(text: string): Result<number> {
  const refusal = refuseBySize(text, RATIO);
  if (refusal !== undefined) return fail(refusalToProblem('ratio', text, refusal));
  const { sign, end } = signAt(text, skipBlanks(text, 0));
  const number = readNumber(text, skipBlanks(text, end));
  if (number.kind === 'refused') {
    return fail(refusalToProblem('ratio', text, { ...number.refusal, expected: RATIO }));
  }
  const after = skipBlanks(text, number.numeral.end);
  const percent = text[after] === '%';
  const last = percent ? skipBlanks(text, after + 1) : after;
  if (last < text.length)
    return fail(
      refusalToProblem('ratio', text, {
        at: last,
        code: 'unreadable',
        message: `${RATIO} was expected`,
        expected: RATIO,
      }),
    );
  const value = number.numeral.value / (percent ? 100 : 1);
  return ok(value === 0 ? 0 : sign * value);
}
