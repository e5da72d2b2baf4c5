import fc from 'fast-check';
import paperCore from 'paper/dist/paper-core.js';
import { describe, expect, it } from 'vitest';
import {
  cubicOfQuadratic,
  curvatureOfCubic,
  directionOfCubic,
  pointOfCubic,
} from '../../src/geometry/fairing/cubic.ts';
import type { Edge } from '../../src/geometry/index.ts';
import {
  cross,
  fitArcsToBezier,
  lengthOf,
  nearestOnEdges,
  readSvgPath,
  subtract,
  writeSvgPath,
} from '../../src/geometry/index.ts';
import { outlineArbitrary, TAG } from '../geometry/random-outlines.ts';

/** Reference: paper 0.12.20, a general-purpose vector graphics library, which reads path data by a parser of its own. */
const core = paperCore as unknown as paper.PaperScope;
const scope = new core.PaperScope();
scope.setup(new core.Size(1, 1));
scope.settings.insertItems = false;

const number = fc.integer({ min: -200_000, max: 200_000 }).map((n) => (n / 1000).toFixed(3));
const radius = fc.integer({ min: 100_000, max: 150_000 }).map((n) => (n / 1000).toFixed(3));
const flag = fc.constantFrom('0', '1');
const command = (letters: string, ...args: fc.Arbitrary<string>[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...letters), fc.constantFrom(' ', ','), ...args)
    .map(([c, gap, ...a]) => c + a.join(gap));
const commandArbitrary = fc.oneof(
  command('Ll', number, number),
  command('Hh', number),
  command('Vv', number),
  command('Cc', number, number, number, number, number, number),
  command('Ss', number, number, number, number),
  command('Qq', number, number, number, number),
  command('Tt', number, number),
  command('Aa', radius, radius, number, flag, flag, number, number),
);
const pathArbitrary = fc
  .tuple(
    number,
    number,
    fc.array(commandArbitrary, { minLength: 1, maxLength: 8 }),
    fc.constantFrom('', 'Z', 'z'),
  )
  .map(([x, y, commands, end]) => `M${x} ${y}${commands.join('')}${end}`);

/** Along its points: paper's own length is off by 0.2 % at near cusps. */
function lengthOfCurve(curve: paper.Curve): number {
  let long = 0;
  let before = curve.point1;
  for (let i = 1; i <= 2000; i++) {
    const at = curve.getPointAtTime(i / 2000);
    long += Math.hypot(at.x - before.x, at.y - before.y);
    before = at;
  }
  return long;
}

function read(d: string): Edge[] {
  const result = readSvgPath(d, TAG, { yAxis: 'up' });
  if (!result.ok) throw new Error(`${d}: ${result.problems[0]!.message}`);
  return result.value.flatMap(({ edges }) => [...edges]);
}

describe('path data, read as paper reads them', () => {
  it('give the same line: every command, absolute and relative', () => {
    fc.assert(
      fc.property(pathArbitrary, (d) => {
        const edges = read(d);
        const theirs = new scope.CompoundPath(d);
        const long = (theirs.children as paper.Path[])
          .flatMap(({ curves }) => curves)
          .reduce((sum, c) => sum + lengthOfCurve(c), 0);
        fc.pre(long > 1);
        // Its arcs are cubics of up to a quarter turn, off by 3e-4 of the radius, which may grow to 450 mm to reach.
        expect(Math.abs(edges.reduce((sum, e) => sum + lengthOf(e), 0) - long)).toBeLessThan(
          0.05 + 3e-3 * long,
        );
        for (const path of theirs.children as paper.Path[]) {
          for (const curve of path.curves) {
            for (let i = 0; i <= 12; i++) {
              const p = curve.getPointAtTime(i / 12);
              expect(nearestOnEdges(edges, { x: p.x, y: p.y }).distance).toBeLessThan(0.005 + 3e-4 * 450);
            }
          }
        }
      }),
      { numRuns: 80, endOnFailure: true },
    );
  });

  it('written from lines and arcs come back as the same shape', () => {
    fc.assert(
      fc.property(outlineArbitrary(), (outline) => {
        const theirs = new scope.CompoundPath(writeSvgPath(outline.edges, true, 6, 'up'));
        for (const curve of (theirs.children[0] as paper.Path).curves) {
          for (const t of [0, 0.5, 1]) {
            const p = curve.getPointAtTime(t);
            expect(nearestOnEdges(outline.edges, { x: p.x, y: p.y }).distance).toBeLessThan(0.15);
          }
        }
      }),
      { numRuns: 50, endOnFailure: true },
    );
  });
});

describe('cubic Bézier curves, judged by paper', () => {
  const place = fc.oneof(
    fc.constant(0),
    fc.integer({ min: -100_000, max: 100_000 }).map((n) => n / 1000),
  );
  const point = fc.record({ x: place, y: place });

  it('have the same points, directions and curvature', () => {
    fc.assert(
      fc.property(
        point,
        point,
        point,
        point,
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (p0, p1, p2, p3, u) => {
          const cubic = { p0, p1, p2, p3 };
          const curve = new scope.Curve(p0, scopeVector(p0, p1), scopeVector(p3, p2), p3);
          fc.pre(curve.getWeightedTangentAtTime(u).length > 1);
          const at = curve.getPointAtTime(u);
          const [p, way] = [pointOfCubic(cubic, u), directionOfCubic(cubic, u)];
          expect(Math.hypot(p.x - at.x, p.y - at.y)).toBeLessThan(1e-9);
          expect(
            Math.hypot(way.x - curve.getTangentAtTime(u).x, way.y - curve.getTangentAtTime(u).y),
          ).toBeLessThan(1e-9);
          const theirs = curve.getCurvatureAtTime(u);
          // How it changes along the curve, by differences of paper's curvature.
          const d = 1e-5;
          const rise = curve.getCurvatureAtTime(u + d) - curve.getCurvatureAtTime(u - d);
          const run = 2 * d * curve.getWeightedTangentAtTime(u).length;
          const { change } = curvatureOfCubic(cubic, u);
          const size = 1 / curve.getWeightedTangentAtTime(u).length;
          if (size < 0.01) expect(Math.abs(change - rise / run)).toBeLessThan(1e-6 + 1e-3 * Math.abs(change));
          expect(Math.abs(curvatureOfCubic(cubic, u).curvature - theirs)).toBeLessThan(
            1e-9 + 1e-9 * Math.abs(theirs),
          );
        },
      ),
      { numRuns: 300 },
    );
  });

  it('lie within the tolerance of the arcs that stand for them, cusps and loops included', () => {
    fc.assert(
      fc.property(point, point, point, point, fc.constantFrom(0.005, 0.1), (p0, p1, p2, p3, tolerance) => {
        fc.pre(Math.hypot(p0.x - p3.x, p0.y - p3.y) > 1);
        const { edges, deviation } = fitArcsToBezier({ p0, p1, p2, p3 }, TAG, tolerance);
        expect(deviation).toBeLessThanOrEqual(tolerance);
        expect(edges[0]!.from).toEqual(p0);
        expect(edges.at(-1)!.to).toEqual(p3);
        const curve = new scope.Curve(p0, scopeVector(p0, p1), scopeVector(p3, p2), p3);
        for (let i = 0; i <= 200; i++) {
          const p = curve.getPointAtTime(i / 200);
          expect(nearestOnEdges(edges, { x: p.x, y: p.y }).distance).toBeLessThanOrEqual(tolerance);
        }
        // Nothing is drawn twice or left out, save to and fro on one straight line.
        const isStraight = [p1, p2].every((p) => Math.abs(cross(subtract(p3, p0), subtract(p, p0))) < 1);
        if (isStraight) return;
        const long = lengthOfCurve(curve);
        const total = edges.reduce((sum, e) => sum + lengthOf(e), 0);
        expect(Math.abs(total - long)).toBeLessThan(1e-3 * long + 10 * tolerance);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('of second degree are raised without change', () => {
    const [a, b, c] = [
      { x: 0, y: 0 },
      { x: 30, y: 60 },
      { x: 90, y: -10 },
    ];
    const raised = cubicOfQuadratic(a!, b!, c!);
    for (const u of [0.2, 0.5, 0.9]) {
      const v = 1 - u;
      expect(pointOfCubic(raised, u).x).toBeCloseTo(2 * v * u * 30 + u * u * 90, 12);
      expect(pointOfCubic(raised, u).y).toBeCloseTo(2 * v * u * 60 - u * u * 10, 12);
    }
  });

  function scopeVector(from: { x: number; y: number }, to: { x: number; y: number }): paper.Point {
    return new scope.Point(to.x - from.x, to.y - from.y);
  }
});
