import { describe, expect, test } from 'vitest';
import type { Pattern } from '../../src/drawing/index.ts';
import { boundsOfEdges, lengthOf, pointAt, transformPoint, type Vec } from '../../src/geometry/index.ts';
import type { SheetPlan } from '../../src/print/api.ts';
import { paperNamed, paperOf } from '../../src/print/papers.ts';
import { planSheets } from '../../src/print/plan-sheets.ts';
import { seamsOf } from '../../src/print/seams.ts';
import { layoutOf } from '../../src/print/sheets-of-plan.ts';
import {
  archedStretcher,
  crescent,
  kneeLeg,
  leaningLeg,
  panelLeg,
  patternOf,
  text,
} from './support/patterns.ts';

function planOf(pattern: Pattern, paper: string, asked = {}, options = {}): SheetPlan {
  const plan = planSheets(pattern, paperOf(paperNamed(paper)!, asked), options);
  if (!plan.ok) throw new Error(plan.problems[0]!.message);
  return plan.value;
}

/** Places along all of the pattern's lines, 2 mm apart. */
function pointsOf(pattern: Pattern): Vec[] {
  return pattern.scene.marks.flatMap((mark) =>
    mark.kind === 'text'
      ? []
      : mark.edges.flatMap((edge) => {
          const count = Math.ceil(lengthOf(edge) / 2);
          return Array.from({ length: count + 1 }, (_, i) => pointAt(edge, i / count));
        }),
  );
}

/** Points that no sheet shows. */
function lostPoints(plan: SheetPlan, pattern: Pattern): Vec[] {
  const { window } = layoutOf(plan);
  const room = 1e-6;
  return pointsOf(pattern).filter((point) =>
    plan.sheets.every(({ toPage }) => {
      const { x, y } = transformPoint(point, toPage);
      return (
        x < window.minX - room || x > window.maxX + room || y < window.minY - room || y > window.maxY + room
      );
    }),
  );
}

/** Sheets that can be reached from the first over seams. */
function reached(plan: SheetPlan): number {
  const seen = new Set([plan.sheets[0]]);
  for (const sheet of seen) {
    for (const { sheets } of seamsOf(plan)) {
      if (sheet && sheets.includes(sheet)) for (const other of sheets) seen.add(other);
    }
  }
  return seen.size;
}

const PATTERNS = [leaningLeg(), kneeLeg(), archedStretcher(), panelLeg(), crescent()];

describe.each(['A4', 'Letter', 'A3', 'Legal'])('on %s', (paper) => {
  test.each(PATTERNS.map((pattern) => [pattern.name, pattern] as const))(
    '%s lies on its sheets whole, and all of them hang together',
    (_, pattern) => {
      const plan = planOf(pattern, paper);
      expect(lostPoints(plan, pattern)).toEqual([]);
      expect(reached(plan)).toBe(plan.sheets.length);
    },
  );
});

test('empty sheets are left out', () => {
  const plan = planOf(panelLeg(900, 1000), 'A4', { orientation: 'portrait' });
  expect(plan.sheets.length).toBeLessThan(plan.rows * plan.places);
  expect(lostPoints(plan, panelLeg(900, 1000))).toEqual([]);
});

test('two far ends that meet only over empty paper are joined by it', () => {
  const square = (x: number, y: number) => {
    const corners = [
      { x, y },
      { x: x + 30, y },
      { x: x + 30, y: y + 30 },
      { x, y: y + 30 },
    ];
    return corners.map((from, i) => ({
      kind: 'line' as const,
      from,
      to: corners[(i + 1) % 4]!,
      tag: { id: 'side', role: 'sawn' as const },
    }));
  };
  const pattern = patternOf('apart', [square(0, 0), square(400, 500)]);
  const plan = planOf(pattern, 'A4');
  expect(reached(plan)).toBe(plan.sheets.length);
  expect(lostPoints(plan, pattern)).toEqual([]);
});

test('rows are counted from the top and places from the left', () => {
  const plan = planOf(kneeLeg(), 'A4');
  const [first] = plan.sheets;
  for (const sheet of plan.sheets) {
    expect(sheet.row).toBeGreaterThanOrEqual(first!.row);
    const down = first!.toPage.shift.y - sheet.toPage.shift.y;
    const right = first!.toPage.shift.x - sheet.toPage.shift.x;
    expect(Math.sign(Math.round(-down)) + 0).toBe(Math.sign(sheet.row - first!.row));
    expect(Math.sign(Math.round(right)) + 0).toBe(Math.sign(sheet.place - first!.place));
  }
  expect(plan.sheets.map(({ page }) => page)).toEqual(plan.sheets.map((_, i) => i + 2));
});

test('a pinned grid is kept to the last bit, and gives the same sheets', () => {
  const plan = planOf(kneeLeg(), 'Letter');
  const again = planOf(kneeLeg(), 'Letter', {}, { pinned: plan.grid });
  expect(again).toEqual(plan);
});

test('on a pinned grid a pattern that has grown gets new sheets and keeps the others where they were', () => {
  const before = planOf(leaningLeg(700), 'A4');
  const after = planOf(leaningLeg(980), 'A4', {}, { pinned: before.grid });
  expect(after.grid).toEqual(before.grid);
  expect(after.sheets.length).toBeGreaterThan(before.sheets.length);
  expect(lostPoints(after, leaningLeg(980))).toEqual([]);
});

test('an upright pattern is preferred where it needs no more sheets', () => {
  const quarter = planOf(leaningLeg(700, 0), 'A3').grid.turn / (Math.PI / 2);
  expect(Math.abs(quarter - Math.round(quarter))).toBeLessThan(1e-9);
});

test('seams keep off corners and joints where the same number of sheets allows it', () => {
  const joint = { x: 60, y: 350 };
  const pattern = { ...leaningLeg(690, 0), keepOffSeams: [{ at: joint, clearance: 25 }] };
  const plan = planOf(pattern, 'A4', { orientation: 'portrait' });
  const at = transformPoint(joint, {
    turn: plan.grid.turn,
    shift: plan.grid.shift,
    scale: 1,
    mirrored: false,
  });
  for (const { from, to } of seamsOf(plan)) {
    const x = Math.max(from.x - at.x, 0, at.x - to.x);
    const y = Math.max(from.y - at.y, 0, at.y - to.y);
    expect(Math.hypot(x, y)).toBeGreaterThanOrEqual(25 - 1e-9);
  }
});

test.each(['A3', '36 in roll'])('lettering stands upright rather than on its head: %s', (paper) => {
  const pattern = patternOf(
    'named',
    [],
    [
      ...leaningLeg(400, 0).scene.marks.filter((mark) => mark.kind === 'path'),
      text('Leg, upside down', { x: 50, y: 200 }, 7, Math.PI),
    ],
  );
  const plan = planOf(pattern, paper);
  // Turned by a quarter it is read from the right.
  const angle = plan.grid.turn + Math.PI;
  expect(Math.abs(Math.cos(angle)) > 0.02 ? Math.cos(angle) : Math.sin(angle)).toBeGreaterThan(0);
  expect(lostPoints(plan, pattern)).toEqual([]);
});

describe('a roll', () => {
  test('is one long sheet, no longer than need be', () => {
    const pattern = archedStretcher();
    const plan = planOf(pattern, '24 in roll');
    expect(plan.sheets).toHaveLength(1);
    const { minY, maxY } = boundsOfEdges(
      pattern.scene.marks.flatMap((mark) => (mark.kind === 'path' ? mark.edges : [])),
    );
    expect(plan.page.height).toBeLessThan(1180 + 90);
    expect(maxY - minY).toBeLessThan(plan.page.height);
    expect(lostPoints(plan, pattern)).toEqual([]);
  });

  test('too narrow for the pattern, it takes strips side by side', () => {
    const plan = planOf(panelLeg(900, 1000), '24 in roll');
    expect(plan.sheets).toHaveLength(2);
    expect(lostPoints(plan, panelLeg(900, 1000))).toEqual([]);
    expect(reached(plan)).toBe(2);
  });

  test('keeps its pinned grid', () => {
    const plan = planOf(kneeLeg(), '36 in roll');
    const again = planOf(kneeLeg(), '36 in roll', {}, { pinned: plan.grid });
    expect(again.grid).toEqual(plan.grid);
    expect(lostPoints(again, kneeLeg())).toEqual([]);
  });
});

test('a pattern with nothing in it takes no sheets', () => {
  expect(planOf(patternOf('nothing', []), 'A4').sheets).toEqual([]);
});

describe('a pattern far too large for its paper is refused, and quickly', () => {
  test.each([
    [90_000, 300],
    [14_000, 14_000],
  ])('%i × %i mm on A6', (width, height) => {
    const plan = planSheets(panelLeg(width, height), paperOf(paperNamed('A6')!, { orientation: 'portrait' }));
    expect(plan).toMatchObject({ ok: false, problems: [{ code: 'paper.too-many-sheets' }] });
  });
});
