import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Edge, Vec } from '../../src/geometry/index.ts';
import {
  cross,
  directionAt,
  distance,
  dot,
  fitArcsToPoints,
  lengthOf,
  nearestOnEdges,
  pointAt,
} from '../../src/geometry/index.ts';
import { bulged, densePoints, outlineArbitrary, TAG } from './random-outlines.ts';

type Options = Parameters<typeof fitArcsToPoints>[2];

function fitted(points: readonly Vec[], options: Options): readonly Edge[] {
  const result = fitArcsToPoints(points, TAG, options);
  if (!result.ok) throw new Error(result.reason);
  const farthest = Math.max(...points.map((p) => nearestOnEdges(result.edges, p).distance));
  expect(farthest).toBeLessThanOrEqual(options.tolerance + 1e-9);
  expect(result.deviation).toBeCloseTo(farthest, 9);
  for (let i = 1; i < result.edges.length; i++)
    expect(result.edges[i]!.from).toEqual(result.edges[i - 1]!.to);
  return result.edges;
}

const along = (edge: Edge, count: number): Vec[] =>
  Array.from({ length: count }, (_, i) => pointAt(edge, i / (count - 1)));
const kink = (a: Edge, b: Edge): number => {
  const [d, e] = [directionAt(a, 1), directionAt(b, 0)];
  return Math.abs(Math.atan2(cross(d, e), dot(d, e)));
};
/** A line and two quarter circles that run on from one another. */
const PATH: readonly Edge[] = [
  bulged({ x: 0, y: 0 }, { x: 100, y: 0 }, 0),
  bulged({ x: 100, y: 0 }, { x: 140, y: 40 }, Math.tan(Math.PI / 8)),
  bulged({ x: 140, y: 40 }, { x: 200, y: 100 }, -Math.tan(Math.PI / 8)),
];
/** A steady stand-in for the tremor of a hand. */
const tremor = (points: readonly Vec[], size: number): Vec[] => {
  let state = 12345;
  const next = (): number => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return (state / 2147483648 - 0.5) * 2 * size;
  };
  return points.map(({ x, y }) => ({ x: x + next(), y: y + next() }));
};

describe('arcs along traced points', () => {
  it('are a line along a line, and one arc along an arc', () => {
    expect(fitted(along(PATH[0]!, 30), { tolerance: 0.01 })).toMatchObject([{ kind: 'line' }]);
    const [arc, ...more] = fitted(along(PATH[1]!, 30), { tolerance: 0.01 });
    expect(more).toEqual([]);
    expect(arc).toMatchObject({ kind: 'arc', turn: 1, radius: expect.closeTo(40, 4) });
    const large = fitted(along(bulged({ x: 10, y: 0 }, { x: 0, y: -10 }, Math.tan((3 * Math.PI) / 8)), 60), {
      tolerance: 0.01,
    });
    expect(large).toMatchObject([{ kind: 'arc', turn: 1, radius: expect.closeTo(10, 3) }]);
  });

  it('sharp: find again as many arcs as the points were taken from', () => {
    const points = PATH.flatMap((edge, i) => along(edge, 25).slice(i === 0 ? 0 : 1));
    expect(fitted(points, { tolerance: 0.01, smooth: false })).toHaveLength(3);
    const kinked = fitted(
      [
        { x: 0, y: 0 },
        { x: 5, y: 0 },
        { x: 10, y: 0 },
        { x: 10, y: 5 },
        { x: 10, y: 10 },
      ],
      { tolerance: 0.1, smooth: false },
    );
    expect(kinked.map(({ kind }) => kind)).toEqual(['line', 'line']);
  });

  it('smooth: join without a kink, through tremor, in few arcs', () => {
    const points = tremor(
      PATH.flatMap((edge, i) => along(edge, 60).slice(i === 0 ? 0 : 1)),
      0.15,
    );
    const edges = fitted(points, { tolerance: 0.4 });
    for (let i = 1; i < edges.length; i++) expect(kink(edges[i - 1]!, edges[i]!)).toBeLessThan(1e-5);
    expect(edges.length).toBeLessThanOrEqual(8);
    expect(edges[0]!.from).toEqual(points[0]);
    expect(edges.at(-1)!.to).toEqual(points.at(-1));
    // And truly along the curve, not to and fro along the tremor.
    const long = PATH.reduce((sum, edge) => sum + lengthOf(edge), 0);
    expect(edges.reduce((sum, edge) => sum + lengthOf(edge), 0) / long).toBeCloseTo(1, 2);
    for (const edge of edges) {
      for (const t of [0.2, 0.5, 0.8])
        expect(nearestOnEdges(PATH, pointAt(edge, t)).distance).toBeLessThan(0.5);
    }
  });

  it('go round without a kink when closed, and meet in the corners that are named', () => {
    const circle = densePoints(
      [bulged({ x: 50, y: 0 }, { x: -50, y: 0 }, 1), bulged({ x: -50, y: 0 }, { x: 50, y: 0 }, 1)],
      0.02,
    );
    const ring = fitted(circle, { tolerance: 0.05, closed: true });
    for (const [i, edge] of ring.entries()) {
      const next = ring[(i + 1) % ring.length]!;
      expect(distance(edge.to, next.from)).toBe(0);
      expect(kink(edge, next)).toBeLessThan(1e-5);
    }
    expect(ring.length).toBeLessThanOrEqual(6);
    const shaky = fitted(tremor(circle, 0.15), { tolerance: 0.3, closed: true });
    expect(kink(shaky.at(-1)!, shaky[0]!)).toBeLessThan(1e-5);
    const square = [0, 1, 2, 3].flatMap((side) =>
      along(
        bulged(
          [
            { x: 0, y: 0 },
            { x: 40, y: 0 },
            { x: 40, y: 40 },
            { x: 0, y: 40 },
          ][side]!,
          [
            { x: 40, y: 0 },
            { x: 40, y: 40 },
            { x: 0, y: 40 },
            { x: 0, y: 0 },
          ][side]!,
          0,
        ),
        11,
      ).slice(0, 10),
    );
    const sides = fitted(square, { tolerance: 0.05, closed: true, corners: [10, 20, 30, 0] });
    expect(sides.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line']);
    const shifted = fitted(square, { tolerance: 0.05, closed: true, corners: [10, 30] });
    expect(shifted[0]!.from).toEqual({ x: 40, y: 0 });
    expect(shifted.at(-1)!.to).toEqual({ x: 40, y: 0 });
  });

  it('hold the tolerance on random outlines, sharp and smooth', () => {
    fc.assert(
      fc.property(outlineArbitrary(0.6), fc.boolean(), (outline, smooth) => {
        fitted(densePoints(outline.edges, 0.5), { tolerance: 0.8, smooth, closed: true });
      }),
      { numRuns: 12, endOnFailure: true },
    );
  });

  it('need points enough', () => {
    expect(
      fitArcsToPoints(
        [
          { x: 0, y: 0 },
          { x: 0, y: 1e-9 },
        ],
        TAG,
        { tolerance: 1 },
      ),
    ).toEqual({ ok: false, reason: 'too-few-points' });
    expect(
      fitArcsToPoints(
        [
          { x: 0, y: 0 },
          { x: 5, y: 0 },
          { x: 0, y: 0 },
        ],
        TAG,
        { tolerance: 1, closed: true },
      ),
    ).toEqual({ ok: false, reason: 'too-few-points' });
    expect(() => fitArcsToPoints([], TAG, { tolerance: 0 })).toThrow(RangeError);
    expect(() => fitArcsToPoints([{ x: Number.NaN, y: 0 }], TAG, { tolerance: 1 })).toThrow(RangeError);
  });
});
