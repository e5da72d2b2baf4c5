import type { Sheet, SheetPlan } from './api.ts';
import { layOutPage, type PageLayout } from './page-layout.ts';

/** The layout of every page of a plan. */
export function layoutOf(plan: SheetPlan): PageLayout {
  const { paper, grid, page } = plan;
  const long = grid.orientation === 'portrait' ? page.height : page.width;
  const layout = layOutPage(paper, grid.orientation, paper.size.kind === 'roll' ? long : undefined);
  if (!layout.ok) throw new Error(layout.problems[0]?.message);
  return layout.value;
}

/** The sheets that share a seam with a sheet: left, right, above and below, where there are any. */
export function besideOf(
  plan: SheetPlan,
  { row, place }: Pick<Sheet, 'row' | 'place'>,
): Readonly<Record<'left' | 'right' | 'above' | 'below', Sheet | undefined>> {
  const at = (toPlace: number, toRow: number): Sheet | undefined =>
    plan.sheets.find((sheet) => sheet.row === row + toRow && sheet.place === place + toPlace);
  return { left: at(-1, 0), right: at(1, 0), above: at(0, -1), below: at(0, 1) };
}
