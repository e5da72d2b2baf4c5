import type { Problem } from '../core/index.ts';
import { parseRatio } from '../measure/index.ts';

/**
 * A percentage as typed, as a share: `45 %`, or a bare number of percent. What cannot be read or lies outside the range (in %) is noted
 * among the problems and gives the least.
 */
export function percentOf(
  typed: string | number,
  path: string,
  range: { readonly least: number; readonly most: number },
  problems: Problem[],
): number {
  const text = String(typed).trim();
  const read = parseRatio(text.endsWith('%') ? text : `${text} %`);
  if (read.ok && read.value >= range.least / 100 && read.value <= range.most / 100) return read.value;
  const expected = `a percentage from ${range.least} % to ${range.most} %`;
  problems.push({
    code: 'design.out-of-range',
    message: `${path}: found ${typed}, expected ${expected}.`,
    path,
    found: String(typed),
    expected,
  });
  return range.least / 100;
}
