import type { PatternPrint, PrintMeta, PrintOptions, Sheet, SheetName } from './api.ts';
import { firstPages } from './first-page/first-page.ts';
import type { Page } from './page/ink.ts';
import { sheetPage } from './page/sheet-page.ts';
import { markSeams } from './seam-marks.ts';
import { layoutOf } from './sheets-of-plan.ts';

/** Every page of the patterns in order, or only the sheets asked for. */
export function patternPages(
  prints: readonly PatternPrint[],
  meta: PrintMeta,
  { only, calibration }: PrintOptions = {},
): Page[] {
  return prints.flatMap((print) => {
    const { plan, pattern } = print;
    const corrected = calibration ?? plan.paper.calibration;
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
