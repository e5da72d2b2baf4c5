import { fail, ok, type Result } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Paper, PlanOptions, SheetGrid, SheetPlan } from './api.ts';
import { chooseGrid } from './choose-grid.ts';
import { readsBetterTurned, wholeContentOf } from './grid/content.ts';
import { turnContent } from './grid/pieces.ts';
import { straightTurns } from './grid/straight-turns.ts';
import { layOutPage } from './page-layout.ts';
import { planOnGrid } from './plan-on-grid.ts';

/** Room on a roll beyond the pattern at each end, mm, so that nothing stands at the very cut. */
const END_ROOM = 5;
/** A page no shorter than this, mm: room for the scale bars and the strip. */
const SHORTEST = 180;
/** A slanted pattern must save so much of the roll, as a share of its length, to be worth a turn that is not square. */
const WORTH_A_SLANT = 0.1;

/**
 * Sheets on a roll: one long sheet, as short as the pattern allows, at the straight turn that fits across the roll;
 * where none fits, sheets of the roll's greatest length side by side.
 */
export function planRoll(pattern: Pattern, paper: Paper, { pinned }: PlanOptions): Result<SheetPlan> {
  if (paper.size.kind !== 'roll') throw new Error('a roll was asked for');
  const most = layOutPage(paper, 'portrait');
  if (!most.ok) return fail(...most.problems);
  if (pinned !== undefined) return planPinned(pattern, paper, pinned);
  const { window, page } = most.value;
  const used = { x: page.width - (window.maxX - window.minX), y: page.height - (window.maxY - window.minY) };
  const content = wholeContentOf(pattern);
  let best: { turn: number; length: number; price: number } | undefined;
  for (const turn of [0, Math.PI / 2, ...straightTurns(content)]) {
    const { box } = turnContent(content, turn);
    const width = box.maxX - box.minX;
    // The margins that every correction of scale is sure to keep grow with the page.
    const length = Math.max(SHORTEST, lengthFor(paper, box.maxY - box.minY + 2 * END_ROOM, used.y));
    if (content.edges.length === 0 || width > page.width - used.x || length > paper.size.most) continue;
    const price = turn === 0 || turn === Math.PI / 2 ? length : length * (1 + WORTH_A_SLANT);
    if (best !== undefined && price >= best.price) continue;
    best = { turn, length, price };
  }
  if (best !== undefined) {
    // Turned over the pattern needs the same room: so that most of it reads upright.
    const turn = readsBetterTurned(content, best.turn) ? best.turn + Math.PI : best.turn;
    const { box } = turnContent(content, turn);
    const grid = centredGrid(paper, turn, box, content.centre, best.length);
    return planOnGrid(pattern, paper, grid, best.length);
  }
  const grid = chooseGrid(pattern, { ...paper, orientation: 'portrait' });
  return grid.ok ? planOnGrid(pattern, paper, grid.value) : grid;
}

/** The shortest page, in whole millimetres, whose window is so high. */
function lengthFor(paper: Paper, height: number, guess: number): number {
  for (let length = Math.ceil(height + guess / 2); ; length++) {
    const layout = layOutPage(paper, 'portrait', length);
    if (layout.ok && layout.value.window.maxY - layout.value.window.minY >= height) return length;
    if (length > height + 4 * guess + SHORTEST) return Infinity;
  }
}

function centredGrid(
  paper: Paper,
  turn: number,
  box: { minX: number; maxX: number; minY: number; maxY: number },
  centre: { x: number; y: number },
  length: number,
): SheetGrid {
  const layout = layOutPage(paper, 'portrait', length);
  if (!layout.ok) throw new Error('the length was found with this layout');
  const { cell } = layout.value;
  const left = (box.minX + box.maxX) / 2 - (cell.maxX - cell.minX) / 2;
  const top = (box.minY + box.maxY) / 2 + (cell.maxY - cell.minY) / 2;
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  return {
    orientation: 'portrait',
    turn,
    shift: { x: -(c * centre.x - s * centre.y) - left, y: -(s * centre.x + c * centre.y) - top },
  };
}

/** On a pinned grid the page keeps the shortest whole length that still holds everything on as few sheets. */
function planPinned(pattern: Pattern, paper: Paper, pinned: SheetGrid): Result<SheetPlan> {
  const content = wholeContentOf(pattern);
  if (content.edges.length > 0 && paper.size.kind === 'roll') {
    const { box } = turnContent(content, pinned.turn);
    const c = Math.cos(pinned.turn);
    const s = Math.sin(pinned.turn);
    const below = -(box.minY + s * content.centre.x + c * content.centre.y + pinned.shift.y);
    const length = Math.max(
      SHORTEST,
      lengthFor(paper, below + END_ROOM + paper.overlap / 2, paper.overlap + 40),
    );
    if (length <= paper.size.most) {
      const plan = planOnGrid(pattern, paper, pinned, length);
      if (plan.ok && plan.value.sheets.length === 1) return ok(plan.value);
    }
  }
  return planOnGrid(pattern, paper, pinned);
}
