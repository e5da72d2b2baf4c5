import table from '../../shared/tables/papers.json';
import printing from '../../shared/tables/printing.json';
import { fail, ok, type Result } from '../core/index.ts';
import type { Margins, Paper } from './api.ts';

const MM_PER_INCH = 25.4;

/** Margin that nearly every office printer can print up to, mm. */
export const SAFE_MARGIN = printing.safeMargin.value;
/** Overlap of neighbouring sheets, mm: half of it lies beyond the seam line on each side. */
export const USUAL_OVERLAP = printing.overlap.value;
/** Longest side that a PDF page may have, mm. */
export const LONGEST_PAGE = printing.pdfLargestSide.value;
/** A roll is cut no longer than this, mm, unless the maker says otherwise. */
const USUAL_ROLL_LENGTH = 3000;
/** Smallest side on which a sheet's own lettering, bars and marks find room, mm. */
const SMALLEST_SIDE = 90;

/** The published sizes by name, in the order of the table, for lists and help texts. */
export function paperNames(): readonly string[] {
  return [...table.sheets, ...table.rolls].map((row) => row.name);
}

/**
 * The size of a paper by its published name (any case): ISO 216 A and B, ANSI/ASME Y14.1, US office and architectural
 * sheets, and roll widths such as `36 in roll`; mm. Nothing when no paper has the name.
 * Source: shared/tables/papers.json.
 */
export function paperNamed(name: string): Pick<Paper, 'name' | 'size'> | undefined {
  const wanted = plain(name);
  for (const row of table.sheets) {
    if (![row.name, ...row.also].some((known) => plain(known) === wanted)) continue;
    const unit = row.unit === 'in' ? MM_PER_INCH : 1;
    return { name: row.name, size: { kind: 'sheet', short: row.short * unit, long: row.long * unit } };
  }
  const roll = table.rolls.find((row) => plain(row.name) === wanted);
  if (roll === undefined) return undefined;
  const width = roll.width * (roll.unit === 'in' ? MM_PER_INCH : 1);
  return { name: roll.name, size: { kind: 'roll', width, most: USUAL_ROLL_LENGTH } };
}

/**
 * The paper with usual margins and overlap, nothing calibrated, turned whichever way needs fewer sheets.
 * Lengths in mm.
 */
export function paperOf(
  named: Pick<Paper, 'name' | 'size'>,
  asked: Partial<Omit<Paper, 'name' | 'size'>> = {},
): Paper {
  return {
    ...named,
    orientation: asked.orientation ?? 'fewest',
    margins: asked.margins ?? allRound(SAFE_MARGIN),
    overlap: asked.overlap ?? USUAL_OVERLAP,
    calibration: asked.calibration ?? { long: 1, short: 1 },
  };
}

/** The same margin on all four sides, mm. */
export function allRound(margin: number): Margins {
  return { top: margin, right: margin, bottom: margin, left: margin };
}

/** A sheet size that the maker typed, two sides in mm in either order. */
export function sheetOf(name: string, side: number, other: number): Result<Pick<Paper, 'name' | 'size'>> {
  const short = Math.min(side, other);
  const long = Math.max(side, other);
  if (!(short >= SMALLEST_SIDE) || !(long <= LONGEST_PAGE)) {
    return fail({
      code: 'paper.size',
      message: `A sheet of ${round(side)} × ${round(other)} mm cannot carry a pattern: sides from ${SMALLEST_SIDE} to ${LONGEST_PAGE} mm are possible.`,
      found: name,
      expected: `sides from ${SMALLEST_SIDE} to ${LONGEST_PAGE} mm`,
    });
  }
  return ok({ name, size: { kind: 'sheet', short, long } });
}

/** A roll whose width the maker typed, mm; cut to at most `most` mm. */
export function rollOf(
  name: string,
  width: number,
  most = USUAL_ROLL_LENGTH,
): Result<Pick<Paper, 'name' | 'size'>> {
  if (!(width >= SMALLEST_SIDE) || !(width <= LONGEST_PAGE) || !(most >= width) || !(most <= LONGEST_PAGE)) {
    return fail({
      code: 'paper.size',
      message: `A roll ${round(width)} mm wide and cut to at most ${round(most)} mm cannot be used: a width from ${SMALLEST_SIDE} mm and a length from the width to ${LONGEST_PAGE} mm are possible.`,
      found: name,
      expected: `a width from ${SMALLEST_SIDE} mm, a length up to ${LONGEST_PAGE} mm`,
    });
  }
  return ok({ name, size: { kind: 'roll', width, most } });
}

function plain(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
