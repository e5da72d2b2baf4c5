import type { Problem } from '../core/index.ts';
import { type LengthUnit, parseLength } from '../measure/index.ts';
import type { TypedLength } from './design-schema.ts';

/** Reads one typed length after another, so that a maker sees every fault at once. */
export interface MeasureReader {
  /**
   * A length in mm, at least `least` and at most `most`. What cannot be read or used is noted among the problems and
   * gives NaN, which nobody may use once there are problems.
   */
  readonly length: (typed: TypedLength, path: string, range: LengthRange) => number;
  readonly problems: readonly Problem[];
}

/** mm, both allowed. */
export interface LengthRange {
  readonly least: number;
  readonly most: number;
}

export function measureReader(unit: LengthUnit): MeasureReader {
  const problems: Problem[] = [];
  const refuse = (path: string, problem: Problem): number => {
    // The column counts in the typed text, not in the file.
    const { column: _, ...rest } = problem;
    problems.push({ ...rest, path, message: `${path}: ${problem.message}` });
    return Number.NaN;
  };
  const length = (typed: TypedLength, path: string, range: LengthRange): number => {
    const read = parseLength(String(typed), { unit });
    if (!read.ok) return refuse(path, read.problems[0]!);
    const { least, most } = range;
    if (read.value >= least && read.value <= most) return read.value;
    const expected = `from ${least} mm to ${most} mm`;
    return refuse(path, {
      code: 'design.out-of-range',
      message: `${typed} is ${round(read.value)} mm; possible is ${expected}.`,
      found: `${round(read.value)} mm`,
      expected,
    });
  };
  return { length, problems };
}

function round(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
