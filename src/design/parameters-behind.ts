import type { Problem } from '../core/index.ts';
import type { Form } from '../sketch/index.ts';
import type { Design } from './design-schema.ts';

/** More names than this help nobody to find the one to change. */
const MOST_NAMED = 6;

/**
 * A check of the form that fails speaks of what the form calculates; this adds which parameters that follows from, with what
 * was typed for them. Other problems stay as they are.
 */
export function nameParameters(problem: Problem, form: Form, typed: Design['parameters']): Problem {
  if (problem.code !== 'form.check' || problem.expected === undefined) return problem;
  const behind = namesBehind(problem.expected, form);
  const parameters = behind.filter((name) => Object.hasOwn(form.data.parameters, name));
  const names = parameters.slice(0, MOST_NAMED);
  if (names.length === 0) return problem;
  // What a point comes from is most of the drawing.
  const isPart = names.length < parameters.length || behind.some((name) => isPoint(name, form));
  const words = names.map((name) => (Object.hasOwn(typed, name) ? `${name} = ${typed[name]}` : name));
  return {
    ...problem,
    message: `${problem.message}; it depends on ${words.join(', ')}${isPart ? ' among others' : ''}`,
  };
}

/** What an expression is made of: what it names first, then what is behind the values that it names. */
export function namesBehind(expression: string, { data }: Form): readonly string[] {
  const seen = new Set(namesIn(expression));
  // A set goes on to what is added to it while it is gone through.
  for (const name of seen) {
    if (data.values === undefined || !Object.hasOwn(data.values, name)) continue;
    for (const inner of namesIn(data.values[name]!.source.text)) seen.add(inner);
  }
  return [...seen];
}

function isPoint(name: string, { data }: Form): boolean {
  return data.points !== undefined && Object.hasOwn(data.points, name);
}

function namesIn(expression: string): readonly string[] {
  return expression.match(/[a-z][a-z0-9_]*/g) ?? [];
}
