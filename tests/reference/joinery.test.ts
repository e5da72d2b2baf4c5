import { describe, expect, test } from 'vitest';
import { glueArea, layOutDowels, layOutLooseTenons, layOutTenon } from '../../src/base/joint-rules/index.ts';
import { polygonOutline, type Region } from '../../src/geometry/index.ts';
import { GLUE_PRESSURE } from '../../src/materials/index.ts';

const INCH = 25.4;
const TAG = { id: 'contact', role: 'joint' } as const;
const GRAIN = [
  { x: 0, y: 0, z: 1 },
  { x: 1, y: 0, z: 0 },
] as const;

function joint(length: number, thick: number, behind: readonly [number, number]) {
  const corners = [
    { x: 0, y: 0 },
    { x: length, y: 0 },
    { x: length, y: thick },
    { x: 0, y: thick },
  ];
  const contact: Region[] = [{ outer: polygonOutline(corners, TAG), holes: [] }];
  return { contact, behind, grain: GRAIN };
}

/* Bits and chisels by sixteenths. Proportions as printed in articles of the trade (read): common practice. */
const TOOLS = [3, 4, 5, 6, 7, 8].map((sixteenths) => (sixteenths * INCH) / 16);

describe('tenons of the trade', () => {
  function tenonOn(thick: number, own = {}) {
    const outcome = layOutTenon(joint(4 * INCH, thick, [Infinity, 2.75 * INCH]), TOOLS, own);
    if (!outcome.fits) throw new Error(JSON.stringify(outcome.fault));
    return outcome.layout;
  }

  test('3/4 in stock takes 1/4 in, and 1 1/4 in of length: five thicknesses', () => {
    const { size } = tenonOn(0.75 * INCH);
    expect(size.thickness / INCH).toBeCloseTo(1 / 4, 9);
    expect(size.length / INCH).toBeCloseTo(1.25, 9);
  });

  test('7/8 in stock takes 1/4 or 5/16 in', () => {
    expect([4, 5]).toContain((tenonOn(0.875 * INCH).size.thickness / INCH) * 16);
  });

  test('a stretcher of 1/2 in takes 3/16 in, where its maker leaves thinner walls', () => {
    expect((tenonOn(INCH / 2, { wall: INCH / 8 }).size.thickness / INCH) * 16).toBeCloseTo(3, 9);
  });

  test('a mortise is 1/16 to 1/8 in deeper than its tenon, and goes two thirds into the leg', () => {
    const { size, mortiseDepth } = tenonOn(1.5 * INCH);
    const deeper = (mortiseDepth - size.length) / INCH;
    expect(deeper).toBeGreaterThanOrEqual(1 / 16 - 1e-9);
    expect(deeper).toBeLessThanOrEqual(1 / 8);
    expect(mortiseDepth).toBeLessThanOrEqual((2 / 3) * 2.75 * INCH + 1e-9);
  });

  test('mortises take one half to two thirds of a rail', () => {
    for (const thick of [0.75, 1, 1.25]) {
      const { size } = tenonOn(thick * INCH);
      expect(size.width / (4 * INCH)).toBeGreaterThanOrEqual(1 / 2);
      expect(size.width / (4 * INCH)).toBeLessThanOrEqual(2 / 3 + 1e-9);
    }
  });
});

/* A dowel maker's guide and a forum of the trade (read): 3/8 in for 3/4 in stock, 2 1/2 in long, about 1/16 in empty at the bottoms together. */
test('3/4 in stock takes dowels of 3/8 in where those are what the maker has', () => {
  const outcome = layOutDowels(joint(4 * INCH, 0.75 * INCH, [Infinity, 2 * INCH]), [
    { diameter: (3 / 8) * INCH, length: 2.5 * INCH },
  ]);
  if (!outcome.fits) throw new Error(JSON.stringify(outcome.fault));
  const { into, mortise, places } = outcome.layout;
  expect(into.map((depth) => depth / INCH)).toEqual([1.25, 1.25]);
  expect((mortise[0] + mortise[1] - into[0] - into[1]) / INCH).toBeCloseTo(1 / 16, 9);
  expect(places.length).toBeGreaterThanOrEqual(2);
});

// Common practice, from memory: 25 to 40 mm into each part of a table rail; two in line in rails over about 100 mm.
test('a table rail of 110 × 24 takes two loose tenons in line', () => {
  const outcome = layOutLooseTenons(joint(110, 24, [Infinity, 55]), [
    { thickness: 8, width: 32, length: 50 },
  ]);
  if (!outcome.fits) throw new Error(JSON.stringify(outcome.fault));
  expect(outcome.layout.places).toHaveLength(2);
  expect(outcome.layout.into[1]).toBe(25);
});

// A cylinder's wall, π d h, and that half of a round hole across the grain is end grain (geometry).
test('half the wall of a dowel hole bored across the fibres is end grain, none of one bored along them', () => {
  const hole = [{ from: { x: 0, y: 0 }, to: { x: 0, y: 0 }, radius: 4 }];
  const across = glueArea(hole, 20, { x: 0.6, y: 0.8, z: 0 });
  expect(across.total).toBeCloseTo(Math.PI * 8 * 20, 6);
  expect(across.longGrain / across.total).toBeCloseTo(0.5, 2);
  expect(glueArea(hole, 20, { x: 0, y: 0, z: -2 }).longGrain).toBeCloseTo(across.total, 6);
});

test('a mortise along the fibres glues on its broad walls, one across them only at its ends', () => {
  const mortise = [{ from: { x: 0, y: 0 }, to: { x: 30, y: 0 }, radius: 4 }];
  const halfRound = 4 * Math.PI;
  expect(glueArea(mortise, 10, { x: 1, y: 0, z: 0 }).longGrain / 10).toBeCloseTo(60 + halfRound, 3);
  expect(glueArea(mortise, 10, { x: 0, y: 1, z: 0 }).longGrain / 10).toBeCloseTo(halfRound, 3);
});

// Wood Handbook FPL-GTR-190, ch. 10 (read in a page that quotes it): 100 to 247 psi.
test('glue wants 100 psi on light woods to about 250 on dense ones', () => {
  expect(GLUE_PRESSURE.lightest.value / 0.00689475729).toBeCloseTo(100, 0);
  expect(GLUE_PRESSURE.densest.value / 0.00689475729).toBeCloseTo(247, 0);
});
