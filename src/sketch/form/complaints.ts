import type { Problem } from '../../core/index.ts';
import { suggest } from '../parameters/suggest.ts';
import type { Place } from '../source/place.ts';

/** Collects what is wrong with a form, each with its place in the file. */
export interface Complaints {
  readonly problems: readonly Problem[];
  readonly add: (
    place: Place,
    code: string,
    message: string,
    more?: { found?: string; expected?: string },
  ) => void;
}

export function collectComplaints(file: string): Complaints {
  const problems: Problem[] = [];
  return {
    problems,
    add: (place, code, message, more = {}) => problems.push({ code, message, file, ...place, ...more }),
  };
}

/** `there is no outline "lge": did you mean "leg"?` */
export function noSuch(what: string, name: string, candidates: readonly string[]): string {
  const near = suggest(name, candidates);
  return `there is no ${what} "${name.slice(0, 40)}"${near === undefined ? '' : `: did you mean "${near}"?`}`;
}

/** Problems in the order of the file, no more than anyone reads. */
export function inOrder(problems: readonly Problem[]): readonly Problem[] {
  const sorted = problems.toSorted(
    (a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0),
  );
  return sorted.slice(0, 20);
}
