import { fail, ok, type Result } from '../core/index.ts';
import { refusalToProblem, refuseBySize } from './refuse.ts';

const COUNT = 'a whole number such as 4';

/** A whole number as a maker types it. */
export function parseCount(text: string): Result<number> {
  const refusal = refuseBySize(text, COUNT);
  if (refusal !== undefined) return fail(refusalToProblem('count', text, refusal));
  const match = /^\s*(\d{1,9})\s*/.exec(text);
  const last = match?.[0].length ?? 0;
  if (match === null || last < text.length) {
    return fail(
      refusalToProblem('count', text, {
        at: last,
        code: 'unreadable',
        message: `${COUNT} was expected`,
        expected: COUNT,
      }),
    );
  }
  return ok(Number(match[1]));
}
