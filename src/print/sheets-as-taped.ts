import type { Box, Similarity, Vec } from '../geometry/index.ts';
import type { SheetPlan } from './api.ts';
import { cornerOf, nameOfSheet, type Seam, seamsOf } from './seams.ts';
import { layoutOf } from './sheets-of-plan.ts';

/** One sheet as it lies taped, in the plan's frame: mm, y up, the paper upright. */
export interface TapedSheet {
  /** `row 2, sheet 3`. */
  readonly name: string;
  readonly row: number;
  readonly place: number;
  /** Page of the pattern's PDF. */
  readonly page: number;
  /** The paper with its margins, what it shows of the pattern, and its own cell up to the seams. */
  readonly paper: Box;
  readonly window: Box;
  readonly cell: Box;
}

export interface TapedSheets {
  readonly sheets: readonly TapedSheet[];
  readonly seams: readonly Pick<Seam, 'name' | 'from' | 'to'>[];
  /** From the pattern's plane to the plan's frame. */
  readonly pattern: Similarity;
}

/** The sheets of a plan as they lie when taped together, with the pattern turned and shifted under them. */
export function sheetsAsTaped(plan: SheetPlan): TapedSheets {
  const { window, cell, page } = layoutOf(plan);
  const { turn, shift } = plan.grid;
  const sheets = plan.sheets.map((sheet): TapedSheet => {
    const corner = cornerOf(plan, sheet);
    const by = { x: corner.x - cell.minX, y: corner.y - cell.minY };
    return {
      name: nameOfSheet(sheet),
      row: sheet.row,
      place: sheet.place,
      page: sheet.page,
      paper: moved({ minX: 0, minY: 0, maxX: page.width, maxY: page.height }, by),
      window: moved(window, by),
      cell: moved(cell, by),
    };
  });
  const seams = seamsOf(plan).map(({ name, from, to }) => ({ name, from, to }));
  return { sheets, seams, pattern: { turn, scale: 1, mirrored: false, shift } };
}

function moved({ minX, minY, maxX, maxY }: Box, by: Vec): Box {
  return { minX: minX + by.x, minY: minY + by.y, maxX: maxX + by.x, maxY: maxY + by.y };
}
