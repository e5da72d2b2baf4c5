import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BeamLoad,
  type BeamSupport,
  bendBeam,
  rectangleSection,
  sagOf,
  sectionOfRegions,
} from '../../../src/base/statics/index.ts';
import { polygonOutline, type Region } from '../../../src/geometry/index.ts';
import { woodCalled } from '../../../src/materials/index.ts';

const rest = (at: number): BeamSupport => ({ at, kind: 'rest' });
const TAG = { id: 'edge', role: 'left' } as const;
const rectangle = (x: number, y: number, width: number, depth: number): Region => ({
  outer: polygonOutline(
    [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + depth },
      { x, y: y + depth },
    ],
    TAG,
  ),
  holes: [],
});

const LENGTH = 1500;
const STIFFNESS = 2e9;
const loads = fc.array(
  fc.oneof(
    fc.record({
      kind: fc.constant('point' as const),
      at: fc.integer({ min: 0, max: LENGTH }),
      force: fc.integer({ min: 1, max: 900 }),
    }),
    fc
      .tuple(
        fc.integer({ min: 0, max: LENGTH - 1 }),
        fc.integer({ min: 1, max: LENGTH }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
      )
      .filter(([from, to]) => to > from)
      .map(([from, to, perLength]): BeamLoad => ({ kind: 'spread', from, to, perLength })),
  ),
  { minLength: 1, maxLength: 4 },
);
const supports = fc
  .uniqueArray(fc.integer({ min: 0, max: 15 }), { minLength: 2, maxLength: 4 })
  .chain((places) =>
    fc.tuple(
      ...places.map((k) =>
        fc
          .constantFrom('rest', 'rest', 'fixed')
          .map((kind): BeamSupport => ({ at: k * 100, kind: kind as 'rest' })),
      ),
    ),
  );

describe('a bent beam', () => {
  test('is carried: forces and moments balance, it lies on its supports, and is held where fixed', () => {
    fc.assert(
      fc.property(supports, loads, (held, pressing) => {
        const beam = bendBeam({ length: LENGTH, supports: held, loads: pressing, stiffness: STIFFNESS })!;
        const total = pressing.reduce(
          (sum, load) => sum + (load.kind === 'point' ? load.force : load.perLength * (load.to - load.from)),
          0,
        );
        expect(beam.reactions.reduce((a, b) => a + b, 0) / total).toBeCloseTo(1, 6);
        const scale = (total * LENGTH ** 3) / STIFFNESS;
        for (const { at, kind } of held) {
          expect(Math.abs(beam.sagAt(at)) / scale).toBeLessThan(1e-7);
          if (kind === 'fixed') expect((Math.abs(beam.slopeAt(at)) * LENGTH) / scale).toBeLessThan(1e-6);
        }
        if (!held.some(({ at }) => at === LENGTH))
          expect(Math.abs(beam.momentAt(LENGTH)) / (total * LENGTH)).toBeLessThan(1e-6);
      }),
    );
  });

  test('curves everywhere as its moment says, and slopes as its curve does', () => {
    fc.assert(
      fc.property(supports, loads, fc.integer({ min: 1, max: 99 }), (held, pressing, k) => {
        const beam = bendBeam({ length: LENGTH, supports: held, loads: pressing, stiffness: STIFFNESS })!;
        const x = (k / 100) * LENGTH + 0.37;
        fc.pre(beam.breaks.every((at) => Math.abs(at - x) > 0.3));
        const h = 0.25;
        const total = pressing.length * 1000;
        const curvature = (beam.slopeAt(x + h) - beam.slopeAt(x - h)) / (2 * h);
        expect(Math.abs(-STIFFNESS * curvature - beam.momentAt(x)) / (total * LENGTH)).toBeLessThan(1e-6);
        const slope = (beam.sagAt(x + h) - beam.sagAt(x - h)) / (2 * h);
        expect(Math.abs(slope - beam.slopeAt(x)) / ((total * LENGTH ** 2) / STIFFNESS)).toBeLessThan(1e-6);
      }),
    );
  });

  test('sags under two loads by what it sags under each', () => {
    const held = [rest(100), rest(1200)];
    const a: BeamLoad = { kind: 'point', at: 400, force: 300 };
    const b: BeamLoad = { kind: 'spread', from: 700, to: 1500, perLength: 0.5 };
    const sag = (pressing: readonly BeamLoad[]): number =>
      bendBeam({ length: LENGTH, supports: held, loads: pressing, stiffness: STIFFNESS })!.sagAt(650);
    expect(sag([a, b])).toBeCloseTo(sag([a]) + sag([b]), 9);
  });

  test('is none when nothing holds it', () => {
    const given = { length: LENGTH, loads: [], stiffness: STIFFNESS };
    expect(bendBeam({ ...given, supports: [rest(300)] })).toBeUndefined();
    expect(bendBeam({ ...given, supports: [rest(300), rest(300)] })).toBeUndefined();
  });
});

describe('a section', () => {
  test('drawn as a rectangle is that rectangle', () => {
    const drawn = sectionOfRegions([rectangle(50, -7, 22, 90)]);
    const said = rectangleSection(22, 90);
    expect(drawn.secondMoment).toBeCloseTo(said.secondMoment, 3);
    expect(drawn.toFibre).toBeCloseTo(said.toFibre, 9);
  });

  // Parallel axes, worked by hand: flange 60 × 20 on a web 20 × 60.
  test('drawn as a T bends about its own middle', () => {
    const { secondMoment, toFibre } = sectionOfRegions([rectangle(20, 0, 20, 60), rectangle(0, 60, 60, 20)]);
    expect(toFibre).toBeCloseTo(50, 9);
    expect(secondMoment).toBeCloseTo(
      (20 * 60 ** 3) / 12 + 1200 * 20 ** 2 + (60 * 20 ** 3) / 12 + 1200 * 20 ** 2,
      3,
    );
  });
});

describe('sag', () => {
  const oak = woodCalled('white oak')!;
  const railOf = (perLength: number) =>
    sagOf({
      length: 1400,
      supports: [rest(0), rest(1400)],
      loads: [{ kind: 'spread', from: 0, to: 1400, perLength }],
      section: rectangleSection(22, 60),
      elasticity: oak.modulusOfElasticity,
      rupture: oak.modulusOfRupture,
    })!;

  test('is told against what one designs for and what shows, before and after creep', () => {
    // 5 w L⁴ / 384 E I reaches L/600 at this load.
    const atLimit =
      (384 * oak.modulusOfElasticity * rectangleSection(22, 60).secondMoment) / (5 * 600 * 1400 ** 3);
    const [under, over, far] = [0.99, 1.01, 1.06].map((k) => railOf(k * atLimit).spans[0]!);
    expect([under!.overDesign, under!.shows]).toEqual([false, false]);
    expect([over!.overDesign, over!.shows]).toEqual([true, false]);
    expect([far!.overDesign, far!.shows]).toEqual([true, true]);
    expect(over!.later).toBeCloseTo(1.5 * over!.first, 9);
    expect(over!.at).toBeCloseTo(700, 4);
  });

  test('a quarter of the strength may be used', () => {
    const { allowed, stress, strong } = railOf(2);
    expect(allowed).toBeCloseTo(oak.modulusOfRupture / 4, 9);
    expect(stress).toBeCloseTo((2 * 1400 ** 2) / 8 / ((22 * 60 ** 2) / 6), 6);
    expect(strong).toBe(stress <= allowed);
    expect(railOf(0.1).strong).toBe(true);
  });

  test('the greatest of every stretch is the greatest of many places looked at', () => {
    fc.assert(
      fc.property(supports, loads, (held, pressing) => {
        const section = rectangleSection(20, 50);
        const elasticity = STIFFNESS / section.secondMoment;
        const found = sagOf({
          length: LENGTH,
          supports: held,
          loads: pressing,
          section,
          elasticity,
          rupture: 90,
        })!;
        const beam = bendBeam({ length: LENGTH, supports: held, loads: pressing, stiffness: STIFFNESS })!;
        for (const { from, to, first } of found.spans) {
          for (let k = 0; k <= 40; k++) {
            const looked = Math.abs(beam.sagAt(from + ((to - from) * k) / 40));
            expect(looked).toBeLessThanOrEqual(Math.abs(first) * (1 + 1e-6) + 1e-9);
          }
        }
        for (let k = 0; k <= 60; k++)
          expect(Math.abs(beam.momentAt((LENGTH * k) / 60))).toBeLessThanOrEqual(
            Math.abs(found.moment) * (1 + 1e-6) + 1e-3,
          );
      }),
    );
  });
});
