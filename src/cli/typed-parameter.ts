import type { Problem } from '../core/index.ts';

/**
 * A problem with a parameter that was typed on the command line: it stands at no line of a file, and its message says what
 * is expected. `names` are the parameters that there are.
 */
export function ofTypedParameter(problem: Problem, names: readonly string[]): Problem {
  const { line: _, column: __, ...rest } = problem;
  const { message } = rest;
  if (message.endsWith('?')) return rest;
  const expected = rest.code === 'parameter.unknown' ? `one of: ${names.join(', ')}` : rest.expected;
  const isSaid = expected === undefined || message.includes(expected);
  return {
    ...rest,
    message: isSaid ? `${message.replace(/\.$/, '')}.` : `${message}; expected ${expected}.`,
  };
}
