import type { z } from 'zod';
import type { Problem } from '../../core/index.ts';
import { suggest } from '../parameters/suggest.ts';
import type { Place } from '../source/place.ts';
import type { Complaint } from './complaint.ts';

type Issue = z.core.$ZodIssue;

const MOST_PROBLEMS = 20;
/** Sections kept for later grammars. */
const LATER: readonly string[] = ['frames', 'trims'];

/** Problems with their places from what the schema has to say, in the order of the file. */
export function issuesToProblems(
  issues: readonly Issue[],
  places: ReadonlyMap<string, Place>,
  file: string,
  keys: readonly string[],
): readonly Problem[] {
  const problems = issues
    .flatMap((issue) => toProblems(issue, places, keys))
    .map((each) => ({ ...each, file }));
  problems.sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
  return problems.slice(0, MOST_PROBLEMS);
}

function toProblems(issue: Issue, places: ReadonlyMap<string, Place>, keys: readonly string[]): Problem[] {
  const path = issue.path.join('.');
  const place = placeOf(path, places);
  if (issue.code === 'custom' && issue.params?.complaint !== undefined) {
    const { place: own, ...complaint } = issue.params.complaint as Complaint;
    return [{ ...complaint, ...(own ?? place) }];
  }
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.slice(0, MOST_PROBLEMS).map((key) => {
      const at = places.get(`${path}#${key}`) ?? place;
      if (path === '' && LATER.includes(key)) {
        const message = `"${key}" belongs to a later grammar: 1 to 3 are read`;
        return { code: 'form.later', message, found: key, ...at };
      }
      // A key of the grammar that does not belong here was not misspelt.
      const near = keys.includes(key) ? undefined : suggest(key, keys);
      const message = `there is no "${key}" in ${path === '' ? 'a form' : path}${near === undefined ? '' : `: did you mean "${near}"?`}`;
      return { code: 'form.unknown-key', message, found: key, ...at };
    });
  }
  const missing = !places.has(path);
  const expected = issue.message;
  const last = String(issue.path.at(-1) ?? 'the form');
  const message = missing ? `${last} is missing: ${expected}` : `${last} should be ${expected}`;
  return [{ code: missing ? 'form.missing' : 'form.shape', message, expected, ...place, path }];
}

/** The place of a path, or of the nearest thing around it that is in the file. */
function placeOf(path: string, places: ReadonlyMap<string, Place>): Place {
  let around = path;
  for (;;) {
    const cut = around.lastIndexOf('.');
    const key = places.get(`${around.slice(0, Math.max(0, cut))}#${around.slice(cut + 1)}`);
    const place = key ?? places.get(around);
    if (place !== undefined) return { ...place, path };
    if (around === '') return { line: 1, column: 1, path };
    around = cut < 0 ? '' : around.slice(0, cut);
  }
}
