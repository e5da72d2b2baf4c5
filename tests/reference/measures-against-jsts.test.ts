import fc from 'fast-check';
import Centroid from 'jsts/org/locationtech/jts/algorithm/Centroid.js';
import SimplePointInAreaLocator from 'jsts/org/locationtech/jts/algorithm/locate/SimplePointInAreaLocator.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory, { type JstsGeometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, it } from 'vitest';
import type { Edge, Outline, Region, Vec } from '../../src/geometry/index.ts';
import {
  areaOfRegions,
  centroidOfRegions,
  circleOutline,
  distance,
  lengthOf,
  locate,
  momentsOfRegions,
  nearestOnEdges,
  perimeterOfRegions,
} from '../../src/geometry/index.ts';
import { bulged, densePoints, outlineArbitrary, pointArbitrary, TAG } from '../geometry/random-outlines.ts';

/** Reference: jsts 2.12.1, a general-purpose topology library. It knows no arcs: chords stray by no more than this (mm). */
const SAGITTA = 1e-3;
const factory = new GeometryFactory();

function ringOf(outline: Outline): JstsGeometry {
  const points = densePoints(outline.edges, SAGITTA);
  return factory.createLinearRing([...points, points[0]!].map(({ x, y }) => new Coordinate(x, y)));
}

/** A loop that does not cross itself, with a round hole about the origin. */
const plateArbitrary: fc.Arbitrary<Region> = outlineArbitrary(0.25).map((outer) => ({
  outer,
  holes: [circleOutline({ x: 1, y: 2 }, 6, TAG, -1)],
}));
const polygonOf = ({ outer, holes }: Region): JstsGeometry =>
  factory.createPolygon(ringOf(outer), holes.map(ringOf));
const edgesOf = ({ outer, holes }: Region): Edge[] => [outer, ...holes].flatMap(({ edges }) => edges);

describe('measures of regions agree with jsts', () => {
  it('area, perimeter and centroid', () => {
    fc.assert(
      fc.property(plateArbitrary, (plate) => {
        const theirs = polygonOf(plate);
        fc.pre(IsValidOp.isValid(theirs));
        const round = perimeterOfRegions([plate]);
        expect(Math.abs(areaOfRegions([plate]) - theirs.getArea())).toBeLessThan(SAGITTA * round);
        expect(Math.abs(round - theirs.getLength())).toBeLessThan(1e-3 * round);
        const { x, y } = centroidOfRegions([plate]);
        const middle = Centroid.getCentroid(theirs);
        expect(distance({ x, y }, middle)).toBeLessThan(0.01);
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  it('distance to the boundary, and inside or outside', () => {
    fc.assert(
      fc.property(plateArbitrary, pointArbitrary(350), (plate, p) => {
        const theirs = polygonOf(plate);
        fc.pre(IsValidOp.isValid(theirs));
        const { distance: away } = nearestOnEdges(edgesOf(plate), p);
        const at = new Coordinate(p.x, p.y);
        const rings = [plate.outer, ...plate.holes].map((loop) =>
          DistanceOp.distance(ringOf(loop), factory.createPoint(at)),
        );
        expect(Math.abs(away - Math.min(...rings))).toBeLessThan(2 * SAGITTA);
        if (away < 2 * SAGITTA) return;
        const side = SimplePointInAreaLocator.locate(at, theirs) === 0 ? 'inside' : 'outside';
        expect(locate([plate], p)).toBe(side);
      }),
      { numRuns: 80, endOnFailure: true },
    );
  });
});

describe('the length of an arc', () => {
  it('is the integral of its speed: Simpson’s rule on the circle y = √(r² − x²)', () => {
    // From x = 0 to x = 0.6 r the arc rises no more than to 37°, where the integrand is smooth.
    const r = 80;
    const edge = bulged({ x: 0.6 * r, y: 0.8 * r }, { x: 0, y: r }, Math.tan(Math.asin(0.6) / 4));
    const speed = (x: number): number => r / Math.sqrt(r * r - x * x);
    const n = 200;
    const h = (0.6 * r) / n;
    let sum = speed(0) + speed(0.6 * r);
    for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * speed(i * h);
    expect(lengthOf(edge)).toBeCloseTo((sum * h) / 3, 8);
  });
});

describe('moments of area', () => {
  it('agree with a sum over a fine grid of places that jsts calls inside', () => {
    const shape: Region = {
      outer: {
        edges: [
          bulged({ x: 0, y: 0 }, { x: 40, y: 0 }, 0.3),
          bulged({ x: 40, y: 0 }, { x: 40, y: 30 }, 0),
          bulged({ x: 40, y: 30 }, { x: 0, y: 20 }, -0.2),
          bulged({ x: 0, y: 20 }, { x: 0, y: 0 }, 0.5),
        ],
      },
      holes: [circleOutline({ x: 20, y: 8 }, 5, TAG, -1)],
    };
    const theirs = polygonOf(shape);
    const step = 0.25;
    const inside: Vec[] = [];
    for (let x = -20 + step / 2; x < 60; x += step) {
      for (let y = -20 + step / 2; y < 50; y += step) {
        if (SimplePointInAreaLocator.locate(new Coordinate(x, y), theirs) === 0) inside.push({ x, y });
      }
    }
    const m = momentsOfRegions([shape]);
    const area = inside.length * step * step;
    const cx = inside.reduce((sum, p) => sum + p.x, 0) / inside.length;
    const cy = inside.reduce((sum, p) => sum + p.y, 0) / inside.length;
    const sum = (of: (p: Vec) => number): number =>
      inside.reduce((total, p) => total + of(p), 0) * step * step;
    expect(m.area / area).toBeCloseTo(1, 2);
    expect(m.xx / sum((p) => (p.y - cy) ** 2)).toBeCloseTo(1, 2);
    expect(m.yy / sum((p) => (p.x - cx) ** 2)).toBeCloseTo(1, 2);
    expect(m.xy / sum((p) => (p.x - cx) * (p.y - cy))).toBeCloseTo(1, 1);
  });
});
