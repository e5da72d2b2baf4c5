import type { Result } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Paper, PlanOptions, SheetGrid, SheetPlan } from './api.ts';
import { chooseGrid } from './choose-grid.ts';
import { planOnGrid } from './plan-on-grid.ts';
import { planRoll } from './plan-roll.ts';

/** Shifts are kept to a thousandth of a millimetre where that needs no more sheets: neat numbers in the design. */
const NEAT = 1000;

/**
 * The sheets that a pattern takes on a paper: every point of its linework and texts on some sheet, empty sheets left out,
 * all sheets joined by seams. The grid is the pinned one or, without it, the one that `chooseGrid` finds.
 * A roll is one long sheet where the pattern fits across it. Problems when the paper leaves no room.
 */
export function planSheets(pattern: Pattern, paper: Paper, options: PlanOptions = {}): Result<SheetPlan> {
  if (paper.size.kind === 'roll') return planRoll(pattern, paper, options);
  if (options.pinned !== undefined) return planOnGrid(pattern, paper, options.pinned);
  const grid = chooseGrid(pattern, paper);
  if (!grid.ok) return grid;
  const plan = planOnGrid(pattern, paper, grid.value);
  if (!plan.ok) return plan;
  const neat = planOnGrid(pattern, paper, neatGrid(grid.value));
  return neat.ok && neat.value.sheets.length <= plan.value.sheets.length ? neat : plan;
}

function neatGrid(grid: SheetGrid): SheetGrid {
  const neat = (value: number): number => Math.round(value * NEAT) / NEAT;
  return { ...grid, shift: { x: neat(grid.shift.x), y: neat(grid.shift.y) } };
}
