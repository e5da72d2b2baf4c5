import type { Problem } from '../core/index.ts';
import { type LengthUnit, MM_PER, parseLength } from '../measure/index.ts';
import type { PaperAxis } from '../print/index.ts';

/** A reading that is refused, and how it was typed. */
interface RefusedReading {
  readonly typed: string;
  readonly axis: PaperAxis;
  /** mm. */
  readonly bars: Readonly<Record<PaperAxis, number>>;
  /** What a bare number means. */
  readonly unit: LengthUnit;
}

/**
 * What went wrong with a reading that no printer explains, where it would be right in the other unit, of the other bar or
 * of the other bar's edge; undefined where none of these fits, so that the printer is to blame.
 */
export function slipOfReading({ typed, axis, bars, unit }: RefusedReading): Problem | undefined {
  const other = axis === 'long' ? 'short' : 'long';
  const read = lengthIn(typed, unit);
  const elsewhere = unit === 'mm' ? 'in' : 'mm';
  const expected = `${bars[axis]} mm or ${wholeInches(bars[axis])} in, within a few tenths of a millimetre`;
  const say = (message: string): Problem => ({ code: 'calibrate.slip', message, found: typed, expected });

  if (isBare(typed) && nearBar(lengthIn(typed, elsewhere), bars[axis])) {
    return say(
      `"${typed}" for the ${axis} edge has no unit and is taken as ${unit}: did you mean ${elsewhere}? Type "${typed} ${elsewhere}".`,
    );
  }
  if (isInches(typed, unit) && isNear(read, bars[axis])) {
    return say(
      `"${typed}" is what the bar of ${bars[axis]} mm along the ${axis} edge reads in inches: read it in mm, or read the bar of ${wholeInches(bars[axis])} in.`,
    );
  }
  const ofOther = [read, ...(isBare(typed) ? [lengthIn(typed, elsewhere)] : [])];
  if (ofOther.some((length) => nearBar(length, bars[other]))) {
    return say(
      `"${typed}" for the ${axis} edge is what the bar along the ${other} edge reads: are the two readings exchanged?`,
    );
  }
  return undefined;
}

/** Is it typed in inches, or without a unit where that means inches? */
export function isInches(typed: string, unit: LengthUnit): boolean {
  return /in|ft|foot|feet|["'″′”’]/i.test(typed) || (unit === 'in' && !/m/i.test(typed));
}

/** The bar in inches is the longest of whole inches that the bar in mm has room for. */
export function wholeInches(bar: number): number {
  return Math.floor(bar / MM_PER.in);
}

function isBare(typed: string): boolean {
  return !/[a-z"'″′”’]/i.test(typed);
}

function lengthIn(typed: string, unit: LengthUnit): number {
  const read = parseLength(typed, { unit });
  return read.ok ? read.value : Number.NaN;
}

/** As far as a printer may be out. */
const NEAR = 0.015;

function isNear(length: number, bar: number): boolean {
  return Math.abs(length / bar - 1) <= NEAR;
}

function nearBar(length: number, bar: number): boolean {
  return isNear(length, bar) || isNear(length, wholeInches(bar) * MM_PER.in);
}
