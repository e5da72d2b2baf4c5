import { describe, expect, test } from 'vitest';
import {
  type BeamLoad,
  type BeamSupport,
  bendBeam,
  rectangleSection,
  sagOf,
} from '../../src/base/statics/index.ts';

const L = 1200;
const STIFFNESS = 3e9;
const W = 500;
const rest = (at: number): BeamSupport => ({ at, kind: 'rest' });
const fixed = (at: number): BeamSupport => ({ at, kind: 'fixed' });
const ENDS = [rest(0), rest(L)];
const CLAMPED = [fixed(0), fixed(L)];
const spread = (from = 0, to = L): BeamLoad => ({ kind: 'spread', from, to, perLength: W / (to - from) });
const point = (at: number, force = W): BeamLoad => ({ kind: 'point', at, force });

const bent = (supports: readonly BeamSupport[], loads: readonly BeamLoad[], length = L) =>
  bendBeam({ length, supports, loads, stiffness: STIFFNESS })!;

/* Wood Handbook FPL-GTR-190, Eq. 9-2 and Table 9-1 (read): deflection by bending k_b W L³ / (E I). */
describe('deflection constants of the Wood Handbook, Table 9-1', () => {
  test.each([
    ['uniform load, both ends simply supported, midspan', ENDS, [spread()], L / 2, 5 / 384],
    ['uniform load, both ends clamped, midspan', CLAMPED, [spread()], L / 2, 1 / 384],
    ['load at midspan, simply supported, midspan', ENDS, [point(L / 2)], L / 2, 1 / 48],
    ['load at midspan, clamped, midspan', CLAMPED, [point(L / 2)], L / 2, 1 / 192],
    [
      'halves at the outer quarters, midspan',
      ENDS,
      [point(L / 4, W / 2), point((3 * L) / 4, W / 2)],
      L / 2,
      11 / 768,
    ],
    [
      'halves at the outer quarters, under a load',
      ENDS,
      [point(L / 4, W / 2), point((3 * L) / 4, W / 2)],
      L / 4,
      1 / 96,
    ],
    ['uniform load, cantilever, free end', [fixed(0)], [spread()], L, 1 / 8],
    ['load at its free end, cantilever, free end', [fixed(0)], [point(L)], L, 1 / 3],
  ] as const)('%s', (_, supports, loads, at, constant) => {
    expect((bent(supports, loads).sagAt(at) * STIFFNESS) / (W * L ** 3)).toBeCloseTo(constant, 10);
  });
});

/* Beam formulas as printed in a pocket book of civil engineering formulas, Fig. 2.2 (pages read), W the whole load. */
describe('cases of a pocket book of formulas', () => {
  test('fixed at one end, supported at the other, uniform load: 5/8 and 3/8, 0.0054 WL³/EI at 0.4215 L', () => {
    const supports = [rest(0), fixed(L)];
    const { reactions, momentAt } = bent(supports, [spread()]);
    expect(reactions[0]! / W).toBeCloseTo(3 / 8, 10);
    expect(reactions[1]! / W).toBeCloseTo(5 / 8, 10);
    expect(momentAt(L, L / 2) / (W * L)).toBeCloseTo(-1 / 8, 10);
    expect(momentAt((3 * L) / 8) / (W * L)).toBeCloseTo(9 / 128, 10);
    const section = rectangleSection(20, 60);
    const found = sagOf({ length: L, supports, loads: [spread()], section, elasticity: 1e4, rupture: 90 })!;
    const span = found.spans[0]!;
    expect(span.at / L).toBeCloseTo(0.4215, 4);
    expect((span.first * 1e4 * section.secondMoment) / (W * L ** 3)).toBeCloseTo(0.0054, 4);
  });

  test('overhanging both supports, half the load at each end: Wa²(3L + 2a)/12EI down there, WaL²/16EI up between', () => {
    const a = 300;
    const beam = bent([rest(a), rest(a + L)], [point(0, W / 2), point(L + 2 * a, W / 2)], L + 2 * a);
    expect(beam.sagAt(0)).toBeCloseTo((W * a * a * (3 * L + 2 * a)) / (12 * STIFFNESS), 10);
    expect(beam.sagAt(a + L / 2)).toBeCloseTo(-(W * a * L * L) / (16 * STIFFNESS), 10);
    expect(beam.momentAt(a + L / 2)).toBeCloseTo(-(W * a) / 2, 6);
  });

  // A page of beam formulas (read): F a² (L + a) / 3EI at the tip; F a L² / (9 √3 EI) upwards between, at L / √3.
  test('one overhang, load at its tip', () => {
    const a = 400;
    const loads = [point(L + a)];
    const section = rectangleSection(25, 80);
    const { spans } = sagOf({
      length: L + a,
      supports: ENDS,
      loads,
      section,
      elasticity: 11000,
      rupture: 90,
    })!;
    const stiffness = 11000 * section.secondMoment;
    expect(spans.map(({ kind }) => kind)).toEqual(['span', 'overhang']);
    expect(spans[1]!.first).toBeCloseTo((W * a * a * (L + a)) / (3 * stiffness), 9);
    expect(spans[1]!.at).toBe(L + a);
    expect(spans[0]!.first).toBeCloseTo(-(W * a * L * L) / (9 * Math.sqrt(3) * stiffness), 9);
    expect(spans[0]!.at).toBeCloseTo(L / Math.sqrt(3), 5);
  });

  // Two equal spans under a uniform load carry 3/8, 10/8 and 3/8 of one span's load (usual table of continuous beams, from memory).
  test('two equal spans', () => {
    const { reactions } = bent([rest(0), rest(L / 2), rest(L)], [spread()]);
    for (const [i, share] of [3 / 16, 10 / 16, 3 / 16].entries())
      expect(reactions[i]! / W).toBeCloseTo(share, 9);
  });
});

/*
 * A published joist calculation to Eurocode 5 (read): 80 × 240 mm, 1.55 kN/m over 6300 mm, moment 7.69 kNm (printed 7689937.5 Nmm), section modulus
 * 768000 mm³, bending stress 10.01 N/mm².
 */
test('bending stress of a published floor joist', () => {
  const found = sagOf({
    length: 6300,
    supports: [rest(0), rest(6300)],
    loads: [{ kind: 'spread', from: 0, to: 6300, perLength: 1.55 }],
    section: rectangleSection(80, 240),
    elasticity: 11000,
    rupture: 24,
  })!;
  expect(found.moment).toBeCloseTo(7689937.5, 1);
  expect(found.stress).toBeCloseTo(10.01, 2);
});
