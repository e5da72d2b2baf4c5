import type { z } from 'zod';
import { fail, ok, type Problem, type Result } from '../core/index.ts';
import { type JsonPath, type JsonSource, type Place, placeKey, placeOfValue } from './json-source.ts';

/**
 * A read file checked by a schema. Each problem says where, what was found, and what was expected.
 * Codes: `<prefix>.unknown-name`, `<prefix>.missing`, `<prefix>.unusable`.
 */
export function checkBySchema<T>(source: JsonSource, schema: z.ZodType<T>, prefix: string): Result<T> {
  const parsed = schema.safeParse(source.value, { error: expectationOf });
  if (parsed.success) return ok(parsed.data);
  const problems = parsed.error.issues.flatMap((issue) => problemsOfIssue(issue, source, prefix));
  const mistyped = new Set(
    problems.filter(({ code }) => code.endsWith('.unknown-name')).map((each) => nameKey(each, each.expected)),
  );
  // What is missing only because its name was mistyped is said of the mistyped name.
  return fail(
    ...problems.filter(
      (problem) => !(problem.code.endsWith('.missing') && mistyped.has(nameKey(problem, lastStep(problem)))),
    ),
  );
}

function nameKey({ path = '' }: Problem, name: string | undefined): string {
  return `${path.split('.').slice(0, -1).join('.')}\0${name}`;
}

function lastStep({ path = '' }: Problem): string {
  return `"${path.split('.').at(-1)}"`;
}

/** Problems met later (in the form, a length, the tooling), shown where their values stand in the file. */
export function placeProblems(source: JsonSource, problems: readonly Problem[]): readonly Problem[] {
  return problems.map((problem) => {
    if (problem.file !== undefined || problem.path === undefined) return { file: source.file, ...problem };
    return { ...problem, file: source.file, ...placeOfValue(source, problem.path.split('.')) };
  });
}

function problemsOfIssue(issue: z.core.$ZodIssue, source: JsonSource, prefix: string): readonly Problem[] {
  const path = issue.path.filter((step) => typeof step !== 'symbol');
  if (issue.code === 'unrecognized_keys') {
    const wanted = issue.message.split('\n');
    return issue.keys.map((name, index) =>
      problemAt(source, [...path, name], `${prefix}.unknown-name`, `"${name}"`, wanted[index]!, (p) =>
        source.names.get(placeKey(p)),
      ),
    );
  }
  const value = valueAt(source.value, path);
  const missing = value === undefined;
  const code = missing ? `${prefix}.missing` : `${prefix}.unusable`;
  const found = missing ? 'nothing' : inWords(value);
  return [problemAt(source, path, code, found, issue.message, (p) => placeOfValue(source, p))];
}

function valueAt(value: unknown, path: JsonPath): unknown {
  return path.reduce<unknown>(
    (inside, step) =>
      typeof inside === 'object' && inside !== null && Object.hasOwn(inside, step)
        ? (inside as Record<string | number, unknown>)[step]
        : undefined,
    value,
  );
}

function problemAt(
  source: JsonSource,
  path: JsonPath,
  code: string,
  found: string,
  expected: string,
  place: (path: JsonPath) => Place | undefined,
): Problem {
  const where = wordsOf(path);
  const subject = where ? `${where}: found` : 'Found';
  const message = `${subject} ${found}, expected ${expected}.`;
  return { code, message, file: source.file, path: where, ...place(path), found, expected };
}

function wordsOf(path: JsonPath): string {
  return path.join('.');
}

/** What a value ought to have been, in a maker's words, where its schema does not say so itself. */
function expectationOf(issue: z.core.$ZodRawIssue): string | undefined {
  switch (issue.code) {
    case 'invalid_type':
      return KINDS[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(' or ');
    case 'too_small':
      return `at least ${issue.minimum}${issue.origin === 'array' ? ' entries' : ''}`;
    case 'too_big':
      return `at most ${issue.maximum}${issue.origin === 'string' ? ' characters' : ''}`;
    case 'invalid_union':
    case 'invalid_key':
    case 'invalid_element':
    case 'not_multiple_of':
      return 'a value of another kind';
    default:
      return undefined;
  }
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text in double quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'names and values in { }',
  record: 'names and values in { }',
  array: 'a list in [ ]',
};

function inWords(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'names and values in { }';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
