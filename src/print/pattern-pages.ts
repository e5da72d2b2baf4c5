import type { PatternPrint, PrintMeta, PrintOptions, Sheet, SheetName } from './api.ts';
import { isAllowed } from './calibrate.ts';
import { firstPages } from './first-page/first-page.ts';
import type { Page } from './page/ink.ts';
import { sheetPage } from './page/sheet-page.ts';
import { markSeams } from './seam-marks.ts';
import { nameOfSheet } from './seams.ts';
import { layoutOf } from './sheets-of-plan.ts';

/**
 * Every page of the patterns in order, or only the sheets asked for. Throws on a correction beyond the
 * limit and on sheets that there are not.
 */
export function patternPages(
  prints: readonly PatternPrint[],
  meta: PrintMeta,
  { only, calibration }: PrintOptions = {},
): Page[] {
  for (const { pattern, row, place } of only ?? []) {
    const plan = prints.find((print) => print.plan.pattern === pattern)?.plan;
    if (!plan?.sheets.some((sheet) => sheet.row === row && sheet.place === place)) {
      throw new RangeError(`${pattern} has no ${nameOfSheet({ row, place })}`);
    }
  }
  return prints.flatMap((print) => {
    const { plan, pattern } = print;
    const corrected = calibration ?? plan.paper.calibration;
    if (!isAllowed(corrected)) throw new RangeError(`no sheet is printed with ${JSON.stringify(corrected)}`);
    const layout = layoutOf(plan);
    const seams = markSeams(plan, pattern);
    // What does not fit on the first page follows the sheets, so that their page numbers do not depend on it.
    const [first, ...more] = firstPages(print, meta, corrected, (extra) => plan.sheets.length + 1 + extra);
    const pages = plan.sheets.length + 1 + more.length;
    const sheets = plan.sheets
      .filter((sheet) => only === undefined || only.some((name) => isNamed(name, plan.pattern, sheet)))
      .map((sheet) => sheetPage(print, sheet, meta, { layout, seams, calibration: corrected, pages }));
    return only === undefined && first !== undefined ? [first, ...sheets, ...more] : sheets;
  });
}

function isNamed(name: SheetName, pattern: string, sheet: Sheet): boolean {
  return name.pattern === pattern && name.row === sheet.row && name.place === sheet.place;
}
