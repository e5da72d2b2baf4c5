import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { battenSpline } from '../../src/geometry/fairing/batten-spline.ts';
import { pointOfCubic } from '../../src/geometry/fairing/cubic.ts';
import type { Edge, Vec } from '../../src/geometry/index.ts';
import {
  angleOf,
  cross,
  directionAt,
  distance,
  dot,
  FAIRING_TOLERANCE,
  fairBatten,
  nearestOnEdges,
  pointAt,
  unit,
} from '../../src/geometry/index.ts';
import { TAG } from './random-outlines.ts';

const LEG: readonly Vec[] = [
  { x: 0, y: 0 },
  { x: 18, y: 180 },
  { x: 45, y: 420 },
  { x: 60, y: 700 },
];
const ARCH: readonly Vec[] = [
  { x: 0, y: 0 },
  { x: 150, y: 34 },
  { x: 300, y: 45 },
  { x: 450, y: 34 },
  { x: 600, y: 0 },
];

function edgesOf(...args: Parameters<typeof fairBatten>): readonly Edge[] {
  const result = fairBatten(...args);
  if (!result.ok) throw new Error(`not faired: ${result.reason} at nail ${result.nail}`);
  return result.edges;
}

const kink = (a: Edge, b: Edge): number => {
  const [d, e] = [directionAt(a, 1), directionAt(b, 0)];
  return Math.abs(Math.atan2(cross(d, e), dot(d, e)));
};

/** Farthest of either from the other: of 400 places to a span from the arcs, and of 9 places on every arc from the spline. */
function hausdorff(
  edges: readonly Edge[],
  nails: readonly Vec[],
  ends: Parameters<typeof battenSpline>[1],
): number {
  const cubics = battenSpline(nails, ends);
  const spline = cubics.flatMap((cubic) =>
    Array.from({ length: 401 }, (_, i) => ({ cubic, u: i / 400, p: pointOfCubic(cubic, i / 400) })),
  );
  const there = Math.max(...spline.map(({ p }) => nearestOnEdges(edges, p).distance));
  const onArcs = edges.flatMap((edge) => Array.from({ length: 9 }, (_, i) => pointAt(edge, i / 8)));
  const back = onArcs.map((q) => {
    let [nearest, least] = [spline[0]!, Infinity];
    for (const place of spline) {
      const squared = (place.p.x - q.x) ** 2 + (place.p.y - q.y) ** 2;
      if (squared < least) [nearest, least] = [place, squared];
    }
    let [low, high] = [Math.max(0, nearest.u - 1 / 400), Math.min(1, nearest.u + 1 / 400)];
    for (let i = 0; i < 30; i++) {
      const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
      const isLower =
        distance(pointOfCubic(nearest.cubic, a), q) < distance(pointOfCubic(nearest.cubic, b), q);
      if (isLower) high = b;
      else low = a;
    }
    return distance(pointOfCubic(nearest.cubic, low), q);
  });
  return Math.max(there, ...back);
}

describe('the spline of a batten', () => {
  it('is the natural spline in closed form: 3/2 u − u³/2 up to the middle nail of three even chords', () => {
    const [rising] = battenSpline(
      [
        { x: 0, y: 0 },
        { x: 3, y: 4 },
        { x: 6, y: 0 },
      ],
      {},
    );
    for (const u of [0.25, 0.5, 0.8]) {
      expect(pointOfCubic(rising!, u)).toEqual({
        x: expect.closeTo(3 * u, 12),
        y: expect.closeTo(4 * (1.5 * u - 0.5 * u ** 3), 12),
      });
    }
  });

  it('has no jump of slope or of second derivative at a nail, by differences', () => {
    const cubics = battenSpline(LEG, { leaving: { x: 0, y: 1 } });
    const chord = (i: number): number => distance(LEG[i]!, LEG[i + 1]!);
    for (let i = 1; i < cubics.length; i++) {
      const d = 1e-3;
      const back = (k: number): Vec => pointOfCubic(cubics[i - 1]!, 1 - (k * d) / chord(i - 1));
      const ahead = (k: number): Vec => pointOfCubic(cubics[i]!, (k * d) / chord(i));
      for (const axis of ['x', 'y'] as const) {
        const left = (3 * back(0)[axis] - 4 * back(1)[axis] + back(2)[axis]) / (2 * d);
        const right = (-3 * ahead(0)[axis] + 4 * ahead(1)[axis] - ahead(2)[axis]) / (2 * d);
        expect(right).toBeCloseTo(left, 6);
        const bendLeft = (back(0)[axis] - 2 * back(100)[axis] + back(200)[axis]) / (100 * d) ** 2;
        const bendRight = (ahead(0)[axis] - 2 * ahead(100)[axis] + ahead(200)[axis]) / (100 * d) ** 2;
        expect(bendRight).toBeCloseTo(bendLeft, 4);
      }
    }
  });
});

describe('a batten curve in arcs', () => {
  it.each([
    ['a leg, free ends', LEG, {}],
    ['a leg with its end directions', LEG, { leaving: { x: 0, y: 1 }, arriving: { x: 0.2, y: 1 } }],
    ['an arch', ARCH, {}],
    [
      'two nails and two directions',
      [LEG[0]!, LEG[2]!],
      { leaving: { x: 1, y: 1 }, arriving: { x: -1, y: 2 } },
    ],
  ] as const)('of %s keeps nails, ends, tangents and the tolerance', (_, nails, ends) => {
    const edges = edgesOf(nails, ends, TAG);
    const held = Object.fromEntries(Object.entries(ends).map(([key, way]) => [key, unit(way)]));
    expect(hausdorff(edges, nails, held)).toBeLessThanOrEqual(FAIRING_TOLERANCE);
    expect(edges[0]!.from).toEqual(nails[0]);
    expect(edges.at(-1)!.to).toEqual(nails.at(-1));
    for (const nail of nails) expect([edges[0]!.from, ...edges.map(({ to }) => to)]).toContainEqual(nail);
    for (let i = 1; i < edges.length; i++) {
      expect(edges[i]!.from).toEqual(edges[i - 1]!.to);
      expect(kink(edges[i - 1]!, edges[i]!)).toBeLessThan(1e-9);
    }
    if ('leaving' in ends) expect(distance(directionAt(edges[0]!, 0), held.leaving!)).toBeLessThan(1e-12);
    if ('arriving' in ends)
      expect(distance(directionAt(edges.at(-1)!, 1), held.arriving!)).toBeLessThan(1e-12);
  });

  it('says truly how far it strays', () => {
    const result = fairBatten(ARCH, {}, TAG);
    expect(result.ok && result.deviation).toBeCloseTo(hausdorff(edgesOf(ARCH, {}, TAG), ARCH, {}), 4);
  });

  it('takes few arcs: fewer than could be of pairs tangent to the spline, and about twice as many for an eighth of the tolerance', () => {
    // Pairs tangent to the curve at every break stray by k h³ / 324 where curvature changes at the rate k: their least
    // number follows from ∫ ∛k ds; see arcs-along-cubic.ts. Here k is taken by differences of the turning of chords.
    const count = edgesOf(ARCH, {}, TAG, 1e-4).length;
    const points = battenSpline(ARCH, {}).flatMap((c) =>
      Array.from({ length: 300 }, (_, i) => pointOfCubic(c, i / 300)),
    );
    const ways = points
      .slice(1)
      .map((p, i) => ({ at: angleOf({ x: p.x - points[i]!.x, y: p.y - points[i]!.y }), p }));
    const bends = ways.slice(1).map(({ at, p }, i) => (at - ways[i]!.at) / distance(p, ways[i]!.p));
    let sum = 0;
    for (let i = 1; i < bends.length; i++) {
      const ds = distance(ways[i]!.p, ways[i + 1]!.p);
      sum += Math.cbrt(Math.abs(bends[i]! - bends[i - 1]!) / ds) * ds;
    }
    expect(count).toBeLessThan(0.88 * 2 * (sum / Math.cbrt(324 * 1e-4)));
    const finer = edgesOf(ARCH, {}, TAG, 1e-4 / 8).length;
    expect(finer / count).toBeGreaterThan(1.65);
    expect(finer / count).toBeLessThan(2.2);
  });

  it('of nails in line is straight', () => {
    const edges = edgesOf(
      [
        { x: 0, y: 0 },
        { x: 100, y: 50 },
        { x: 300, y: 150 },
      ],
      {},
      TAG,
    );
    expect(edges.every(({ kind }) => kind === 'line')).toBe(true);
    expect(
      edgesOf(
        [
          { x: 0, y: 0 },
          { x: 100, y: 50 },
        ],
        {},
        TAG,
      ),
    ).toHaveLength(1);
  });

  it('of mirrored nails is its own mirror image, edge by edge', () => {
    const edges = edgesOf(ARCH, {}, TAG);
    for (const [i, edge] of edges.entries()) {
      const twin = edges[edges.length - 1 - i]!;
      expect(distance({ x: 600 - edge.from.x, y: edge.from.y }, twin.to)).toBeLessThan(1e-6);
    }
    expect(edgesOf(ARCH, {}, TAG)).toEqual(edges);
  });

  it('holds on random nails', () => {
    const step = fc.record({
      on: fc.double({ min: 60, max: 300, noNaN: true }),
      off: fc.double({ min: -40, max: 40, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(step, { minLength: 2, maxLength: 7 }), fc.boolean(), (steps, isClamped) => {
        let y = 0;
        const nails = steps.map(({ on, off }) => {
          y += on;
          return { x: off, y };
        });
        const ends = isClamped ? { leaving: { x: 0.6, y: 0.8 }, arriving: { x: 0, y: 1 } } : {};
        const edges = edgesOf(nails, ends, TAG);
        expect(hausdorff(edges, nails, ends)).toBeLessThanOrEqual(FAIRING_TOLERANCE);
        for (let i = 1; i < edges.length; i++) expect(kink(edges[i - 1]!, edges[i]!)).toBeLessThan(1e-5);
        for (const nail of nails) expect(nearestOnEdges(edges, nail).distance).toBe(0);
      }),
      { numRuns: 12, endOnFailure: true },
    );
  });
});

describe('nails that no batten can follow', () => {
  it('are named: too few, two in one place, turning back', () => {
    expect(fairBatten([], {}, TAG)).toMatchObject({ ok: false, reason: 'too-few-nails' });
    expect(fairBatten([LEG[0]!], {}, TAG)).toMatchObject({ ok: false, reason: 'too-few-nails', at: LEG[0] });
    const doubled = [LEG[0]!, LEG[1]!, { x: 18 + 1e-9, y: 180 }, LEG[3]!];
    expect(fairBatten(doubled, {}, TAG)).toMatchObject({ ok: false, reason: 'coincident-nails', nail: 1 });
    const back = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 50, y: 0 },
    ];
    expect(fairBatten(back, {}, TAG)).toMatchObject({
      ok: false,
      reason: 'reversal',
      at: { x: 100, y: 0 },
      nail: 1,
    });
    const away = fairBatten(
      [
        { x: 0, y: 0 },
        { x: 100, y: 0 },
      ],
      { leaving: { x: -1, y: 0.1 } },
      TAG,
    );
    expect(away).toMatchObject({ ok: false, reason: 'reversal', nail: 0 });
  });

  it('and a programmer who passes no number is told so', () => {
    expect(() => fairBatten([LEG[0]!, { x: Number.NaN, y: 0 }], {}, TAG)).toThrow(RangeError);
    expect(() => fairBatten(LEG, { leaving: { x: 0, y: 0 } }, TAG)).toThrow(RangeError);
    expect(() => fairBatten(LEG, {}, TAG, 0)).toThrow(RangeError);
  });
});
