import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { supportPolygon, tipping } from '../../../src/base/statics/index.ts';
import {
  circleOutline,
  cross,
  locate,
  offsetRegions,
  polygonOutline,
  type Region,
  subtract,
  type Vec,
} from '../../../src/geometry/index.ts';

const TAG = { id: 'top', role: 'left' } as const;
const region = (points: readonly Vec[]): Region[] => [{ outer: polygonOutline(points, TAG), holes: [] }];
const rectangle = (x: number, y: number): Region[] =>
  region([
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ]);
const named = (points: readonly Vec[]) => points.map((at, i) => ({ name: `foot ${i}`, at }));
const SQUARE = named([
  { x: -300, y: -300 },
  { x: 300, y: -300 },
  { x: 300, y: 300 },
  { x: -300, y: 300 },
]);
const MIDDLE = { x: 0, y: 0 };

describe('what a base stands on', () => {
  test('is its outermost feet, anticlockwise, without those on a side', () => {
    const feet = [
      ...SQUARE,
      ...named([
        { x: 0, y: -300 },
        { x: 10, y: 20 },
      ]),
    ];
    expect(supportPolygon(feet).map(({ at }) => [at.x, at.y])).toEqual([
      [-300, -300],
      [300, -300],
      [300, 300],
      [-300, 300],
    ]);
  });

  test('is two ends when all feet stand in one line, and one foot when in one place', () => {
    expect(supportPolygon(named([0, 5, 2].map((x) => ({ x, y: 2 * x })))).map(({ at }) => at.x)).toEqual([
      0, 5,
    ]);
    expect(supportPolygon(named([MIDDLE, MIDDLE]))).toHaveLength(1);
  });
});

describe('tipping', () => {
  test('a top that stays within its feet never tips', () => {
    const { worst, lines, stands } = tipping({
      feet: SQUARE,
      mass: 30,
      centre: MIDDLE,
      top: rectangle(340, 340),
    });
    expect(stands).toBe(true);
    expect(worst).toBeUndefined();
    expect(lines.map(({ outside }) => outside)).toEqual([-10, -10, -10, -10]);
  });

  test('what does not stand by itself is tipped by nothing', () => {
    const found = tipping({ feet: SQUARE, mass: 30, centre: { x: 0, y: 301 }, top: rectangle(600, 600) });
    expect(found.stands).toBe(false);
    expect(found.worst!.load).toEqual({ newtons: 0, kilograms: 0 });
    expect(found.worst!.inside).toBe(-1);
    const line = tipping({ feet: SQUARE.slice(0, 2), mass: 30, centre: MIDDLE, top: rectangle(600, 600) });
    expect(line.stands).toBe(false);
  });

  test('on three feet the worst place of a round top lies between two of them', () => {
    const feet = named(
      [90, 210, 330].map((d) => ({
        x: 300 * Math.cos((d * Math.PI) / 180),
        y: 300 * Math.sin((d * Math.PI) / 180),
      })),
    );
    const top: Region[] = [{ outer: circleOutline(MIDDLE, 450, TAG), holes: [] }];
    const { worst, lines } = tipping({ feet, mass: 20, centre: MIDDLE, top });
    for (const { load } of lines) expect(load!.kilograms).toBeCloseTo((20 * 150) / (400 - 150), 6);
    expect(Math.hypot(worst!.at.x, worst!.at.y)).toBeCloseTo(400, 6);
  });

  test('a top narrower than 100 mm is loaded along its middle', () => {
    const feet = named([
      { x: -200, y: -20 },
      { x: 200, y: -20 },
      { x: 200, y: 20 },
      { x: -200, y: 20 },
    ]);
    const { fromEdge, lines } = tipping({ feet, mass: 5, centre: MIDDLE, top: rectangle(500, 40) });
    expect(fromEdge).toBeGreaterThan(39.8);
    expect(fromEdge).toBeLessThanOrEqual(40);
    expect(Math.abs(lines[0]!.at.y)).toBeLessThan(0.2);
  });

  test('turning the whole piece changes nothing', () => {
    const turned =
      (by: number) =>
      (p: Vec): Vec => ({
        x: Math.cos(by) * p.x - Math.sin(by) * p.y + 40,
        y: Math.sin(by) * p.x + Math.cos(by) * p.y - 25,
      });
    const top = [
      { x: -700, y: -300 },
      { x: 700, y: -350 },
      { x: 600, y: 380 },
      { x: -500, y: 350 },
    ];
    const load = (by: number): number => {
      const move = turned(by);
      const feet = SQUARE.map(({ name, at }) => ({ name, at: move(at) }));
      return tipping({ feet, mass: 25, centre: move({ x: 20, y: -10 }), top: region(top.map(move)) }).worst!
        .load!.newtons;
    };
    for (const by of [0.3, 1.2, 2.5]) expect(load(by)).toBeCloseTo(load(0), 6);
  });

  const place = (reach: number) =>
    fc.record({
      x: fc.double({ min: -reach, max: reach, noNaN: true }),
      y: fc.double({ min: -reach, max: reach, noNaN: true }),
    });
  const isWithin = (corners: readonly { readonly at: Vec }[], p: Vec): boolean =>
    corners.every(
      ({ at }, i) => cross(subtract(corners[(i + 1) % corners.length]!.at, at), subtract(p, at)) >= 0,
    );

  test('just under the load said, no place of the top 50 mm in tips it; just over, the place said does', () => {
    fc.assert(
      fc.property(
        fc.array(place(500), { minLength: 3, maxLength: 7 }),
        fc.array(place(900), { minLength: 30, maxLength: 30 }),
        fc.boolean(),
        (places, tried, isRound) => {
          const feet = named(places);
          const corners = supportPolygon(feet);
          fc.pre(corners.length >= 3);
          const centre = {
            x: corners.reduce((s, { at }) => s + at.x, 0) / corners.length,
            y: corners.reduce((s, { at }) => s + at.y, 0) / corners.length,
          };
          const top: Region[] = isRound
            ? [{ outer: circleOutline(MIDDLE, 600, TAG), holes: [] }]
            : rectangle(800, 450);
          const { worst, stands } = tipping({ feet, mass: 30, centre, top });
          fc.pre(stands && worst !== undefined && worst.inside > 1e-6);
          const kilograms = worst!.load!.kilograms;
          // Weight and load together press where their common centre lies.
          const presses = (load: number, p: Vec): Vec => ({
            x: (30 * centre.x + load * p.x) / (30 + load),
            y: (30 * centre.y + load * p.y) / (30 + load),
          });
          const inset = offsetRegions(top, -50);
          for (const p of tried) {
            if (locate(inset, p) !== 'outside')
              expect(isWithin(corners, presses(0.9999 * kilograms, p))).toBe(true);
          }
          expect(isWithin(corners, presses(1.0001 * kilograms, worst!.at))).toBe(false);
          expect(isWithin(corners, presses(0.9999 * kilograms, worst!.at))).toBe(true);
          expect(locate(offsetRegions(top, -49.999), worst!.at)).not.toBe('outside');
        },
      ),
    );
  });
});
