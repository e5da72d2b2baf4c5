import { describe, expect, test } from 'vitest';
import { line } from '../../src/geometry/index.ts';
import { layOutPage, stepOf } from '../../src/print/page-layout.ts';
import { paperNamed, paperOf } from '../../src/print/papers.ts';
import { planSheets } from '../../src/print/plan-sheets.ts';
import { cloudOf, findsFewer } from '../print/support/brute-sheets.ts';
import {
  archedStretcher,
  crescent,
  kneeLeg,
  leaningLeg,
  panelLeg,
  patternOf,
} from '../print/support/patterns.ts';

const HALF_DEGREES = Array.from({ length: 360 }, (_, i) => (i * Math.PI) / 360);

/** Everything tried: every turn of the list and every shift on the lattice, both ways of holding the paper. */
function fewer(pattern: ReturnType<typeof kneeLeg>, paperName: string, turns = HALF_DEGREES, lattice = 2) {
  const paper = paperOf(paperNamed(paperName)!);
  const plan = planSheets(pattern, paper);
  if (!plan.ok) throw new Error(plan.problems[0]!.message);
  const cloud = cloudOf(pattern);
  for (const orientation of ['portrait', 'landscape'] as const) {
    const layout = layOutPage(paper, orientation);
    if (!layout.ok) throw new Error('no room');
    const { x, y } = stepOf(layout.value);
    const found = findsFewer(
      cloud,
      { stepX: x, stepY: y, overlap: paper.overlap },
      plan.value.sheets.length,
      turns,
      lattice,
    );
    if (found !== undefined) return { planned: plan.value.sheets.length, orientation, ...found };
  }
  return undefined;
}

describe('a search over every half degree and 2 mm finds no fewer sheets', () => {
  test.each([
    ['a leaning leg', leaningLeg(), 'A4'],
    ['a knee leg', kneeLeg(), 'A4'],
    ['an arched stretcher', archedStretcher(), 'Letter'],
    ['a crescent lying askew', crescent(), 'A4'],
    ['a panel leg with a window', panelLeg(), 'A4'],
  ])('for %s', (_, pattern, paper) => {
    expect(fewer(pattern, paper)).toBeUndefined();
  });
});

describe('on random outlines', () => {
  test.each(Array.from({ length: 5 }, (_, i) => i + 1))('seed %i', (seed) => {
    const random = numbers(seed);
    const corners = Array.from({ length: 3 + Math.floor(random() * 5) }, () => ({
      x: random() * 520,
      y: random() * 620,
    }));
    const edges = corners.map((from, i) =>
      line(from, corners[(i + 1) % corners.length]!, { id: 'side', role: 'sawn' }),
    );
    const turns = HALF_DEGREES.filter((_, i) => i % 9 === seed % 9);
    expect(fewer(patternOf(`seed ${seed}`, [edges]), 'A4', turns, 5)).toBeUndefined();
  });
});

/** Park–Miller generator: the same numbers in [0, 1) for the same seed. */
function numbers(seed: number): () => number {
  let state = seed * 7919;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
