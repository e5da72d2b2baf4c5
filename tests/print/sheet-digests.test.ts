import { describe, expect, test } from 'vitest';
import type { Mark, Pattern } from '../../src/drawing/index.ts';
import { circleOutline, transformPoint, vec } from '../../src/geometry/index.ts';
import { digestOfText } from '../../src/print/digest-of-text.ts';
import { paperNamed, paperOf } from '../../src/print/papers.ts';
import { planSheets } from '../../src/print/plan-sheets.ts';
import { sheetDigests } from '../../src/print/sheet-digests.ts';
import { layoutOf } from '../../src/print/sheets-of-plan.ts';
import { leaningLeg, text } from './support/patterns.ts';

const paper = paperOf(paperNamed('A4')!);

function planOf(pattern: Pattern, options = {}) {
  const plan = planSheets(pattern, paper, options);
  if (!plan.ok) throw new Error(plan.problems[0]!.message);
  return plan.value;
}

function withMark(pattern: Pattern, mark: Mark): Pattern {
  return { ...pattern, scene: { ...pattern.scene, marks: [...pattern.scene.marks, mark] } };
}

const hole = (x: number, y: number, radius = 6): Mark => ({
  kind: 'path',
  role: 'part',
  edges: circleOutline(vec(x, y), radius, { id: 'hole', role: 'routed' }, -1).edges,
  closed: true,
});

const FACTS = {
  part: 'Leg',
  hand: 'left hand',
  quantity: 2,
  other: { hand: 'right hand', quantity: 2 },
};

describe('a sheet is printed again only when what it shows has changed', () => {
  const leg = leaningLeg();
  const plan = planOf(leg);
  const before = sheetDigests(plan, leg, FACTS);
  const changedBy = (pattern: Pattern): number[] => {
    const after = sheetDigests(planOf(pattern, { pinned: plan.grid }), pattern, FACTS);
    return after.flatMap((digest, i) => (digest === before[i] ? [] : [i]));
  };
  /** The sheets whose windows hold a point. */
  const showing = (x: number, y: number): number[] => {
    const { window } = layoutOf(plan);
    return plan.sheets.flatMap(({ toPage }, i) => {
      const p = transformPoint(vec(x, y), toPage);
      return p.x > window.minX && p.x < window.maxX && p.y > window.minY && p.y < window.maxY ? [i] : [];
    });
  };

  test('nothing changed, nothing printed', () => {
    expect(changedBy(leaningLeg())).toEqual([]);
    expect(new Set(before).size).toBe(plan.sheets.length);
  });

  test.each([
    [60, 640],
    [110, 120],
  ])('a hole at %i, %i changes the sheets that show it, and no other', (x, y) => {
    expect(changedBy(withMark(leg, hole(x, y)))).toEqual(showing(x, y));
    expect(showing(x, y).length).toBeLessThan(plan.sheets.length);
  });

  test('a word changes its sheet', () => {
    expect(changedBy(withMark(leg, text('drill 6', vec(60, 640), 2.5)))).toEqual(showing(60, 640));
  });

  test('a change below what is printed changes nothing', () => {
    const nudged = withMark(leg, hole(60, 640));
    const again = withMark(leg, hole(60 + 1e-6, 640));
    const digests = sheetDigests(planOf(nudged, { pinned: plan.grid }), nudged, FACTS);
    expect(sheetDigests(planOf(again, { pinned: plan.grid }), again, FACTS)).toEqual(digests);
  });

  test('a corrected scale changes every sheet', () => {
    const corrected = { ...plan, paper: { ...paper, calibration: { long: 1.002, short: 1 } } };
    for (const [i, digest] of sheetDigests(corrected, leg, FACTS).entries())
      expect(digest).not.toBe(before[i]);
  });

  test.each([
    { ...FACTS, quantity: 6 },
    { ...FACTS, other: { ...FACTS.other, quantity: 6 } },
  ])('how many are made stands on every sheet: %j', (facts) => {
    for (const [i, digest] of sheetDigests(plan, leg, facts).entries()) expect(digest).not.toBe(before[i]);
  });
});

test('fingerprints of many near texts are all different', () => {
  const digests = new Set(Array.from({ length: 20_000 }, (_, i) => digestOfText(`L 0,${i} 0,${i + 1}`)));
  expect(digests.size).toBe(20_000);
});
