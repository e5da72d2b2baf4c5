import type { PatternPrint, PrintMeta, PrintOptions, Sheet, SheetName } from './api.ts';
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
    const layout = layoutOf(plan);
    const seams = markSeams(plan, pattern);
    const pages = plan.sheets.length + 1;
    const corrected = calibration ?? plan.paper.calibration;
    return plan.sheets
      .filter((sheet) => only === undefined || only.some((name) => isNamed(name, plan.pattern, sheet)))
      .map((sheet) => sheetPage(print, sheet, meta, { layout, seams, calibration: corrected, pages }));
  });
}

function isNamed(name: SheetName, pattern: string, sheet: Sheet): boolean {
  return name.pattern === pattern && name.row === sheet.row && name.place === sheet.place;
}
