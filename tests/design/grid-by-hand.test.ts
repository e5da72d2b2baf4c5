import { describe, expect, test } from 'vitest';
import { compute, type Design, isGridPinned, moveGrid, searchGrid } from '../../src/design/index.ts';
import { transformPoint, vec } from '../../src/geometry/index.ts';
import { sheetsAsTaped } from '../../src/print/index.ts';
import { sampleDesign } from './sample-design.ts';

const leg = sampleDesign('splayed-leg', ['leg']);

function planOf(design: Design) {
  const computed = compute(design);
  if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
  return computed.value.patterns[0]!.plan;
}

describe('sheets moved by hand', () => {
  test('lie where they were put, to a billionth of a millimetre, and stay there', () => {
    const before = planOf(leg);
    const moved = moveGrid(leg, before, { shift: vec(12.5, -7), turn: 0.01, about: vec(100, -150) });
    const after = planOf(moved);
    expect(isGridPinned(leg, before)).toBe(false);
    expect(isGridPinned(moved, after)).toBe(true);
    expect(Math.sin(after.grid.turn - before.grid.turn)).toBeCloseTo(Math.sin(0.01), 11);
    const still = { x: 100, y: -150 };
    const { turn, shift } = before.grid;
    const cos = Math.cos(-turn);
    const sin = Math.sin(-turn);
    const from = { x: still.x - shift.x, y: still.y - shift.y };
    const under = { x: cos * from.x - sin * from.y, y: sin * from.x + cos * from.y };
    const now = transformPoint(under, sheetsAsTaped(after).pattern);
    expect(now.x).toBeCloseTo(still.x + 12.5, 6);
    expect(now.y).toBeCloseTo(still.y - 7, 6);
  });

  test('are left to the search again, with the sheets that it found before', () => {
    const before = planOf(leg);
    const moved = moveGrid(leg, before, { shift: vec(90, 40) });
    const again = searchGrid(moved, planOf(moved));
    expect(again.grids).toEqual(leg.grids);
    expect(planOf(again)).toEqual(before);
  });

  test('are told as they lie taped: cells meet at the seams and windows overlap by the overlap asked for', () => {
    const plan = planOf(leg);
    const { sheets, seams, pattern } = sheetsAsTaped(plan);
    expect(sheets.map(({ name }) => name)).toEqual(
      plan.sheets.map(({ row, place }) => `row ${row}, sheet ${place}`),
    );
    for (const { from, to } of seams) {
      const upright = from.x === to.x;
      const beside = sheets.filter(({ cell }) =>
        upright
          ? Math.abs(cell.minX - from.x) < 1e-9 || Math.abs(cell.maxX - from.x) < 1e-9
          : Math.abs(cell.minY - from.y) < 1e-9 || Math.abs(cell.maxY - from.y) < 1e-9,
      );
      expect(beside.length).toBeGreaterThanOrEqual(2);
    }
    for (const { cell, window, paper } of sheets) {
      expect(cell.minX - window.minX).toBeCloseTo(plan.paper.overlap / 2, 9);
      expect(window.maxY - cell.maxY).toBeCloseTo(plan.paper.overlap / 2, 9);
      expect(paper.maxX - paper.minX).toBeCloseTo(plan.page.width, 9);
    }
    // The plan's own numbers: a place of the pattern on a sheet's page is that place in the taped frame.
    for (const [at, sheet] of plan.sheets.entries()) {
      const onPage = transformPoint(vec(40, 300), sheet.toPage);
      const taped = transformPoint(vec(40, 300), pattern);
      expect(taped.x).toBeCloseTo(sheets[at]!.paper.minX + onPage.x, 9);
      expect(taped.y).toBeCloseTo(sheets[at]!.paper.minY + onPage.y, 9);
    }
  });
});
