import { fail, ok, type Problem, type Result } from '../core/index.ts';
import type { Design } from '../design/index.ts';

/**
 * `name=value` as a maker types it, as a design keeps it: values stay text, except `yes` and `no`, which a design keeps so
 * as well. A name given twice is refused.
 */
export function readAssignments(texts: readonly string[]): Result<Design['parameters']> {
  const problems: Problem[] = [];
  const values = new Map<string, string>();
  for (const text of texts) {
    const [, name, value] = /^\s*([^=\s]+)\s*=\s*(.*?)\s*$/s.exec(text) ?? [];
    if (name === undefined || !value) {
      problems.push(unusable(text, 'name=value, such as splay="8°"'));
    } else if (values.has(name)) {
      problems.push(unusable(text, `${name} once`));
    } else values.set(name, value);
  }
  return problems.length > 0 ? fail(...problems) : ok(Object.fromEntries(values));
}

function unusable(found: string, expected: string): Problem {
  return {
    code: 'command.assignment',
    message: `Found "${found}", expected ${expected}.`,
    found,
    expected,
  };
}
