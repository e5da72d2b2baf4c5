import { describe, expect, test } from 'vitest';
import { chairPlaces, kneeClearance, overhang, thighClearance } from '../../../src/base/statics/index.ts';
import { polygonOutline, type Region } from '../../../src/geometry/index.ts';

const TOP: Region[] = [
  {
    outer: polygonOutline(
      [
        { x: -900, y: -450 },
        { x: 900, y: -450 },
        { x: 900, y: 450 },
        { x: -900, y: 450 },
      ],
      { id: 'top', role: 'left' },
    ),
    holes: [],
  },
];
const corners = (x: number, y: number) => [
  { x: -x, y: -y },
  { x, y: -y },
  { x, y },
  { x: -x, y },
];

describe('overhang', () => {
  const told = (carriers = corners(630, 380), seatedEnds = true) =>
    Object.fromEntries(
      overhang({ top: TOP, carriers, feet: corners(800, 350), seatedEnds }).map((m) => [m.name, m]),
    );

  test('is measured on every side, against what is usual there', () => {
    const found = told();
    expect([found['overhang.left']!.value, found['overhang.right']!.value]).toEqual([270, 270]);
    expect([found['overhang.front']!.value, found['overhang.back']!.value]).toEqual([70, 70]);
    expect(Object.values(found).every(({ holds }) => holds)).toBe(true);
    expect(found['overhang.front']!.most!.value).toBe(100);
    expect(found['overhang.front']!.most!.source).toContain('100 mm');
  });

  test('too short for a sitter at the end, too long against the span', () => {
    expect(told(corners(750, 380))['overhang.left']!.holds).toBe(false);
    expect(told(corners(750, 380), false)['overhang.left']!.holds).toBe(true);
    const long = told(corners(500, 380))['overhang.along']!;
    expect(long.value).toBeCloseTo(0.4, 9);
    expect(long.holds).toBe(false);
  });

  test('carriers in one line have no span to hang over', () => {
    expect(told(corners(630, 0))['overhang.across']!.value).toBe(Infinity);
  });

  test('feet less than two thirds of the top apart are told', () => {
    const feet = corners(800, 290);
    const found = overhang({ top: TOP, carriers: corners(630, 380), feet, seatedEnds: true });
    const across = found.find(({ name }) => name === 'feet.across')!;
    expect(across.value).toBeCloseTo(580 / 900, 9);
    expect(across.holds).toBe(false);
  });
});

describe('knees', () => {
  test('24 in under the rail of a dining table are enough, 23 are not', () => {
    const height = (inches: number) => kneeClearance({ height: inches * 25.4, width: 700 }, 'dining')[0]!;
    expect([height(24).holds, height(23).holds]).toEqual([true, false]);
    expect(height(23).least!.value).toBeCloseTo(609.6, 9);
  });

  test('a desk also asks for depth; what was not measured is not told', () => {
    const desk = kneeClearance({ height: 640, width: 600, depthAtKnee: 400 }, 'desk');
    expect(desk.map(({ name, holds }) => [name, holds])).toEqual([
      ['knees.height', true],
      ['knees.width', true],
      ['knees.depthAtKnee', false],
    ]);
  });

  test('thighs want 6 1/2 in over an 18 in seat', () => {
    expect(thighClearance(24.5 * 25.4).holds).toBe(true);
    expect(thighClearance(24 * 25.4).value).toBeCloseTo(6 * 25.4, 9);
    expect(thighClearance(24 * 25.4).holds).toBe(false);
  });
});

describe('places', () => {
  const side = { between: 1400, along: 1800, arms: false };
  test('two chairs of 20 in and the 4 in between them need 44 in between the feet', () => {
    expect(chairPlaces({ ...side, between: 44 * 25.4 }).places).toBe(2);
    const short = chairPlaces({ ...side, between: 44 * 25.4 - 1 });
    expect([short.places, short.limitedBy]).toEqual([1, 'feet']);
    expect(short.neededForMore).toBeCloseTo(44 * 25.4, 9);
  });

  test('the top must be long enough as well', () => {
    const found = chairPlaces({ between: 2000, along: 1200, arms: false });
    expect([found.places, found.limitedBy]).toEqual([1, 'top']);
  });

  test("arms take room, and the maker's own chairs go before usual ones", () => {
    expect(chairPlaces({ ...side, between: 44 * 25.4, arms: true }).places).toBe(1);
    expect(chairPlaces({ ...side, chair: 400 }).places).toBe(2);
    expect(chairPlaces({ ...side, between: 400, chair: 450 })).toMatchObject({ places: 0, needed: 0 });
  });

  test('tells how much of the top each has', () => {
    const { perPlace } = chairPlaces(side);
    expect(perPlace!.value).toBe(900);
    expect(perPlace!.holds).toBe(true);
  });
});
