import { type Finding, fail, ok, type Problem, type Result } from '../core/index.ts';
import { type LengthUnit, MM_PER, parseLength } from '../measure/index.ts';
import { calibrate, calibrationBars, type Paper, type PaperAxis } from '../print/index.ts';
import type { TypedPaper } from './design-schema.ts';

type TypedCalibration = NonNullable<TypedPaper['calibration']>;

/** What the maker's rule reads on the bars of the calibration sheet, as typed; an edge left out keeps its factor. */
export type BarReadings = { readonly [axis in PaperAxis]?: string | undefined };

/** What a correction is made of. */
export interface CalibrationTask {
  readonly paper: Paper;
  readonly readings: BarReadings;
  /** What a bare number means. */
  readonly unit: LengthUnit;
  /** Today by ISO 8601. */
  readonly date: string;
  readonly printer?: string | undefined;
}

/**
 * The factors to print with from now on, from the sheet that was printed with the paper's present factors. A reading in
 * inches is of the bar in inches. Problems: a reading that is no length, or an error beyond the limit.
 */
export function calibratePaper({ paper, readings, unit, date, printer }: CalibrationTask): Result<{
  readonly calibration: TypedCalibration;
  readonly findings: readonly Finding[];
}> {
  const bars = calibrationBars(paper);
  const factors = { ...paper.calibration };
  const findings: Finding[] = [];
  const problems: Problem[] = [];
  for (const axis of ['long', 'short'] as const) {
    const typed = readings[axis];
    if (typed === undefined) continue;
    const reading = readBar(typed, bars[axis], unit);
    const corrected = reading.ok
      ? calibrate(reading.value.nominal, reading.value.measured, factors[axis], axis)
      : reading;
    if (corrected.ok) {
      factors[axis] = corrected.value.factor;
      findings.push(...corrected.value.findings);
    } else problems.push(...corrected.problems);
  }
  if (problems.length > 0) return fail(...problems);
  return ok({
    calibration: { ...factors, date, ...(printer === undefined ? {} : { printer }) },
    findings,
  });
}

/** mm: what was read, and how long that bar is. */
function readBar(
  typed: string,
  bar: number,
  unit: LengthUnit,
): Result<{ readonly measured: number; readonly nominal: number }> {
  const read = parseLength(typed, { unit });
  if (!read.ok) return read;
  const inches = /in|ft|foot|feet|["'″′”’]/i.test(typed) || (unit === 'in' && !/m/i.test(typed));
  const nominal = inches ? Math.floor(bar / MM_PER.in) * MM_PER.in : bar;
  return ok({ measured: read.value, nominal });
}
