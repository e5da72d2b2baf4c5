import { type Vec, vec } from '../geometry/index.ts';
import type { Sheet, SheetPlan } from './api.ts';
import { stepOf } from './page-layout.ts';
import { besideOf, layoutOf } from './sheets-of-plan.ts';

/**
 * Where two sheets join. Places are in the plan's own frame: the pattern turned and shifted by the grid, its corner at
 * the upper left of row 1, sheet 1 as the grid was chosen; mm, y up.
 */
export interface Seam {
  /** `1a` joins two sheets beside each other in row 1, `a1` one above the other in place 1; `a` is the first such seam. */
  readonly name: string;
  readonly kind: 'side' | 'row';
  /** Left and right, or upper and lower. */
  readonly sheets: readonly [Sheet, Sheet];
  /** The lower or left end of the line where cells meet, and the other. */
  readonly from: Vec;
  readonly to: Vec;
}

/** All seams of a plan, by row and place: first those beside, then those below each sheet. */
export function seamsOf(plan: SheetPlan): Seam[] {
  const step = stepOf(layoutOf(plan));
  return plan.sheets.flatMap((sheet) => {
    const { right, below } = besideOf(plan, sheet);
    const corner = cornerOf(plan, sheet);
    const seams: Seam[] = [];
    if (right !== undefined) {
      const x = corner.x + step.x;
      seams.push({
        name: `${sheet.row}${letterOf(sheet.place)}`,
        kind: 'side',
        sheets: [sheet, right],
        from: vec(x, corner.y),
        to: vec(x, corner.y + step.y),
      });
    }
    if (below !== undefined) {
      seams.push({
        name: `${letterOf(sheet.row)}${sheet.place}`,
        kind: 'row',
        sheets: [sheet, below],
        from: corner,
        to: vec(corner.x + step.x, corner.y),
      });
    }
    return seams;
  });
}

/** Lower left corner of a sheet's cell in the plan's frame. */
export function cornerOf(plan: SheetPlan, sheet: Sheet): Vec {
  const { cell } = layoutOf(plan);
  return {
    x: cell.minX - (sheet.toPage.shift.x - plan.grid.shift.x),
    y: cell.minY - (sheet.toPage.shift.y - plan.grid.shift.y),
  };
}

/** a, b … z, aa, ab … */
function letterOf(count: number): string {
  const rest = Math.floor((count - 1) / 26);
  return (rest > 0 ? letterOf(rest) : '') + String.fromCharCode(97 + ((count - 1) % 26));
}

/** `row 2, sheet 3`: how sheets are called everywhere. */
export function nameOfSheet({ row, place }: Pick<Sheet, 'row' | 'place'>): string {
  return `row ${row}, sheet ${place}`;
}
