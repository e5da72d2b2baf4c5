import printing from '../../shared/tables/printing.json';
import { type Finding, fail, ok, type Result } from '../core/index.ts';

/** A correction beyond this is allowed with a caution. */
const SCALE_CAUTION = printing.scaleLimits.caution;
/** A correction beyond this is refused: the printer is fitting the page, and will fit the corrected one too. */
export const SCALE_REFUSED = printing.scaleLimits.refuse;
/** So that a figure typed exactly at a limit falls on its near side, whatever the last bit says. */
const RATIO_ROUNDING = 1e-9;

export type PaperAxis = 'long' | 'short';

/** Are both factors within the limit? */
export function isAllowed({ long, short }: Readonly<Record<PaperAxis, number>>): boolean {
  return [long, short].every((factor) => Math.abs(factor - 1) <= SCALE_REFUSED + RATIO_ROUNDING);
}

/** The correction to print with from now on, and what is to be said about it. */
export interface Correction {
  readonly factor: number;
  readonly findings: readonly Finding[];
}

/**
 * The factor by which the paper's own long or short edge must be printed, from one bar's nominal length, what the
 * maker's rule reads on it (both mm), and the factor the bar was printed with: previous · nominal / measured.
 * Beyond 0.5 % comes with a caution; beyond 1.5 %, at once or added up, it is refused with the likely reason.
 */
export function calibrate(
  nominal: number,
  measured: number,
  previousFactor: number,
  axis: PaperAxis,
): Result<Correction> {
  const factor = (previousFactor * nominal) / measured;
  if (!(measured > 0) || !Number.isFinite(factor) || !(factor > 0)) {
    return fail({
      code: 'calibrate.measured',
      message: 'The length read on the bar must be greater than 0 mm.',
      found: `${measured} mm`,
      expected: `close to ${nominal} mm`,
    });
  }
  const error = measured / nominal - 1;
  const worst = Math.max(Math.abs(factor - 1), Math.abs(nominal / measured - 1));
  if (worst > SCALE_REFUSED + RATIO_ROUNDING) return fail(refusal(error, factor, nominal, measured, axis));
  return ok({
    factor,
    findings: Math.abs(factor - 1) > SCALE_CAUTION + RATIO_ROUNDING ? [caution(factor, axis)] : [],
  });
}

function refusal(error: number, factor: number, nominal: number, measured: number, axis: PaperAxis) {
  const off = `${percent(Math.abs(error))} too ${error < 0 ? 'short' : 'long'}`;
  const fitted = printing.fitToPage.find((row) => Math.abs(measured / nominal - row.factor) < 0.004);
  const reason =
    Math.abs(error) > SCALE_REFUSED
      ? `The printer is fitting the page to the paper${
          fitted === undefined
            ? ''
            : ` (a page made for ${fitted.page} printed on ${fitted.paper} gives this)`
        }: choose "actual size" or 100 % in the print dialog, check that the paper in the tray is the paper asked for, print again and measure again.`
      : `Added to the earlier correction it comes to ${percent(Math.abs(factor - 1))}: begin again from a sheet printed without correction.`;
  return {
    code: 'calibrate.refused',
    message: `Along the ${axis} edge the bar is ${off}. A correction of more than ${percent(SCALE_REFUSED)} is refused. ${reason}`,
    found: `${measured} mm`,
    expected: `${nominal} mm within ${percent(SCALE_REFUSED)}`,
  };
}

function caution(factor: number, axis: PaperAxis): Finding {
  return {
    code: 'calibrate.large',
    severity: 'caution',
    edges: [],
    message: `Along the ${axis} edge the printer is corrected by ${percent(Math.abs(factor - 1))}. Few printers are out by that much: check that the print dialog says 100 %, and measure a second sheet.`,
    measured: { value: Math.abs(factor - 1), unit: 'none' },
    limit: { value: SCALE_CAUTION, unit: 'none' },
    cure: 'Print the calibration sheet again with the correction and measure it again.',
  };
}

function percent(share: number): string {
  return `${(share * 100).toFixed(2).replace(/0$/, '')} %`;
}
