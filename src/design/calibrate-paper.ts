import { type Finding, fail, ok, type Problem, type Result } from '../core/index.ts';
import { type LengthUnit, MM_PER, parseLength } from '../measure/index.ts';
import { calibrate, calibrationBars, type Paper, type PaperAxis } from '../print/index.ts';
import type { TypedPaper } from './design-schema.ts';
import { isInches, slipOfReading, wholeInches } from './reading-slip.ts';

type TypedCalibration = NonNullable<TypedPaper['calibration']>;

/** What the maker's rule reads on the bars of the calibration sheet, as typed; an edge left out keeps its factor. */
export type BarReadings = { readonly [axis in PaperAxis]?: string | undefined };

/** What a correction is made of. */
export interface CalibrationTask {
  readonly paper: Paper;
  /** The correction in force, as it is kept: the sheet was printed with it. */
  readonly before: TypedCalibration | undefined;
  readonly readings: BarReadings;
  /** What a bare number means. */
  readonly unit: LengthUnit;
  /** Today by ISO 8601. */
  readonly date: string;
  readonly printer?: string | undefined;
}

/**
 * The factors to print with from now on, from the sheet that was printed with the paper's present factors. A reading in
 * inches is of the bar in inches, one near 100 mm or 4 in of the bar that stands on every sheet. Problems: a reading that is no length, an error beyond the limit, or the reading of
 * earlier the same day, which the factors have in them already.
 */
export function calibratePaper(task: CalibrationTask): Result<{
  readonly calibration: TypedCalibration;
  readonly findings: readonly Finding[];
}> {
  const { paper, readings, unit, date, printer } = task;
  const bars = calibrationBars(paper);
  const factors = { ...paper.calibration };
  const earlier = readingsOfToday(task);
  const kept: { -readonly [axis in PaperAxis]?: number } = {};
  const findings: Finding[] = [];
  const problems: Problem[] = [];
  for (const axis of ['long', 'short'] as const) {
    const typed = readings[axis];
    const was = earlier[axis];
    if (typed === undefined) {
      if (was !== undefined) kept[axis] = was;
      continue;
    }
    const reading = readBar(typed, bars[axis], unit);
    if (!reading.ok) {
      problems.push(...reading.problems);
      continue;
    }
    const { measured, nominal } = reading.value;
    if (isSame(measured, was) && !isSame(measured, nominal)) {
      problems.push(takenTwice(typed, axis, factors[axis]));
      continue;
    }
    const corrected = calibrate(nominal, measured, factors[axis], axis);
    if (!corrected.ok) {
      const slip = slipOfReading({ typed, axis, bars, unit });
      problems.push(...(slip === undefined ? corrected.problems : [slip]));
      continue;
    }
    factors[axis] = corrected.value.factor;
    kept[axis] = measured;
    findings.push(...corrected.value.findings);
  }
  if (problems.length > 0) return fail(...problems);
  return ok({
    calibration: { ...factors, date, ...(printer === undefined ? {} : { printer }), readings: kept },
    findings,
  });
}

/** mm: what was read today of the same printer. */
function readingsOfToday({ before, date, printer }: CalibrationTask): {
  readonly [axis in PaperAxis]?: number | undefined;
} {
  if (before?.date !== date) return {};
  const another = printer !== undefined && before.printer !== undefined && printer !== before.printer;
  return another ? {} : (before.readings ?? {});
}

/** mm: far below what a rule shows. */
const SAME_READING = 1e-6;

function isSame(measured: number, earlier: number | undefined): boolean {
  return earlier !== undefined && Math.abs(measured - earlier) < SAME_READING;
}

function takenTwice(typed: string, axis: PaperAxis, factor: number): Problem {
  return {
    code: 'calibrate.taken-twice',
    message: `The reading "${typed}" of the ${axis} edge was given today already: its correction, × ${factor.toFixed(5)}, is in force. Readings are of a sheet printed with the correction in force: write the sheet again with -o, print it and measure that one.`,
    found: typed,
    expected: 'a reading of a sheet printed since',
  };
}

/** mm: the bars on every sheet of a pattern, 100 mm and 4 in. */
const SHEET_BAR = { mm: 100, in: 4 * MM_PER.in } as const;
/** A reading so near to the bar of a sheet is of that one, not of the longer bar of the calibration sheet. */
const SURELY = 0.1;

/** mm: what was read, and how long that bar is: the calibration sheet's, or that of a pattern's sheet. */
function readBar(
  typed: string,
  bar: number,
  unit: LengthUnit,
): Result<{ readonly measured: number; readonly nominal: number }> {
  const read = parseLength(typed, { unit });
  if (!read.ok) return read;
  const inches = isInches(typed, unit);
  const own = inches ? wholeInches(bar) * MM_PER.in : bar;
  const onSheets = inches ? SHEET_BAR.in : SHEET_BAR.mm;
  const isOfSheet = Math.abs(read.value / onSheets - 1) < Math.min(SURELY, Math.abs(read.value / own - 1));
  return ok({ measured: read.value, nominal: isOfSheet ? onSheets : own });
}
