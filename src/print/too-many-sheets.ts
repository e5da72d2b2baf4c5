import type { Problem } from '../core/index.ts';
import type { Paper } from './api.ts';

/** More sheets than this nobody tapes together true. */
export const MOST_SHEETS = 400;

/** What is said of a pattern that is far too large for its paper; about `count` sheets. */
export function tooManySheets(paper: Paper, count: number): Problem {
  return {
    code: 'paper.too-many-sheets',
    message: `The pattern takes about ${count} sheets of ${paper.name}; ${MOST_SHEETS} is the most. Choose larger paper or a roll.`,
    found: `${count} sheets`,
    expected: `${MOST_SHEETS} sheets or fewer`,
  };
}
