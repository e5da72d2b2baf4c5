import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  invertProjection,
  type Projection,
  project,
  projectionFromPoints,
  projectionOfSimilarity,
  projectTwice,
  similarityFromPoints,
  stretchAt,
  transformPoint,
  type Vec,
  vec,
} from '../../src/geometry/index.ts';
import { pointArbitrary } from '../geometry/random-outlines.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Four corners as a camera sees a board: those of a rectangle, each moved by up to a third of its side. */
const quadArbitrary: fc.Arbitrary<Vec[]> = fc
  .record({
    width: between(50, 4000),
    height: between(50, 4000),
    moves: fc.array(pointArbitrary(0.24), { minLength: 4, maxLength: 4 }),
    shift: pointArbitrary(3000),
  })
  .map(({ width, height, moves, shift }) =>
    [vec(0, 0), vec(1, 0), vec(1, 1), vec(0, 1)].map((corner, i) =>
      vec((corner.x + moves[i]!.x) * width + shift.x, (corner.y + moves[i]!.y) * height + shift.y),
    ),
  );

const inside = (quad: readonly Vec[], [a, b]: readonly [number, number]): Vec => {
  const low = vec(quad[0]!.x + (quad[1]!.x - quad[0]!.x) * a, quad[0]!.y + (quad[1]!.y - quad[0]!.y) * a);
  const high = vec(quad[3]!.x + (quad[2]!.x - quad[3]!.x) * a, quad[3]!.y + (quad[2]!.y - quad[3]!.y) * a);
  return vec(low.x + (high.x - low.x) * b, low.y + (high.y - low.y) * b);
};

function projectionBetween(from: readonly Vec[], to: readonly Vec[]): Projection {
  const found = projectionFromPoints(from.map((p, i) => ({ from: p, to: to[i]! })));
  if (found.kind !== 'found') throw new Error(found.kind);
  return found.projection;
}

const share = fc.tuple(between(0, 1), between(0, 1));

function expectNear(p: Vec | undefined, q: Vec, within: number): void {
  expect(p).toBeDefined();
  expect(Math.hypot(p!.x - q.x, p!.y - q.y)).toBeLessThan(within);
}

it('four points go where they should, and every place between them there and back', () => {
  fc.assert(
    fc.property(quadArbitrary, quadArbitrary, share, (from, to, at) => {
      const there = projectionBetween(from, to);
      for (const [i, p] of from.entries()) expectNear(project(p, there), to[i]!, 1e-8);
      const place = inside(from, at);
      expectNear(project(project(place, there)!, invertProjection(there)), place, 1e-7);
    }),
    { numRuns: 300 },
  );
});

it('two in turn do what the two do one after the other', () => {
  fc.assert(
    fc.property(quadArbitrary, quadArbitrary, quadArbitrary, share, (a, b, c, at) => {
      const place = inside(a, at);
      const first = projectionBetween(a, b);
      const second = projectionBetween(b, c);
      expectNear(project(place, projectTwice(first, second)), project(project(place, first)!, second)!, 1e-7);
    }),
  );
});

it('lines stay lines', () => {
  fc.assert(
    fc.property(quadArbitrary, quadArbitrary, share, share, between(0, 1), (from, to, a, b, t) => {
      const there = projectionBetween(from, to);
      const p = inside(from, a);
      const q = inside(from, b);
      const on = vec(p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t);
      const [u, v, w] = [p, q, on].map((each) => project(each, there)!) as [Vec, Vec, Vec];
      const off = (v.x - u.x) * (w.y - u.y) - (v.y - u.y) * (w.x - u.x);
      expect(Math.abs(off)).toBeLessThan(1e-7 * (1 + Math.hypot(v.x - u.x, v.y - u.y)));
    }),
  );
});

it('two known points give the similarity they were taken through, mirrored or not', () => {
  const similarity = fc.record({
    turn: between(-3, 3),
    shift: pointArbitrary(1000),
    scale: between(0.01, 50),
    mirrored: fc.boolean(),
  });
  fc.assert(
    fc.property(similarity, pointArbitrary(500), pointArbitrary(500), pointArbitrary(500), (by, p, q, r) => {
      fc.pre(Math.hypot(p.x - q.x, p.y - q.y) > 1);
      const found = similarityFromPoints(
        [
          { from: p, to: transformPoint(p, by) },
          { from: q, to: transformPoint(q, by) },
        ],
        by.mirrored,
      )!;
      expectNear(transformPoint(r, found), transformPoint(r, by), 1e-6);
      expectNear(project(r, projectionOfSimilarity(by)), transformPoint(r, by), 1e-8);
      const stretch = stretchAt(r, projectionOfSimilarity(by))!;
      expect(stretch.most / by.scale).toBeCloseTo(1, 9);
      expect(stretch.least / by.scale).toBeCloseTo(1, 9);
    }),
  );
});

it('a small step is stretched by no more and no less than is said', () => {
  fc.assert(
    fc.property(quadArbitrary, quadArbitrary, share, between(0, 6.3), (from, to, at, angle) => {
      const there = projectionBetween(from, to);
      const p = inside(from, at);
      const step = 1e-3;
      const q = vec(p.x + step * Math.cos(angle), p.y + step * Math.sin(angle));
      const { most, least } = stretchAt(p, there)!;
      const [u, v] = [project(p, there)!, project(q, there)!];
      const ratio = Math.hypot(u.x - v.x, u.y - v.y) / step;
      expect(ratio).toBeLessThan(most * 1.001 + 1e-6);
      expect(ratio).toBeGreaterThan(least * 0.999 - 1e-6);
    }),
  );
});
