import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outline, Region } from '../../src/geometry/index.ts';
import {
  areaOfOutline,
  areaOfRegions,
  centroidOfRegions,
  circleOutline,
  distance,
  distanceAlong,
  locate,
  momentsOfRegions,
  nearestOnEdges,
  perimeterOfRegions,
  placeAlong,
  pointAlong,
  pointAt,
  polygonOutline,
  reverseEdge,
  slotOutline,
  transformOutline,
  transformPoint,
} from '../../src/geometry/index.ts';
import { bulged, densePoints, outlineArbitrary, pointArbitrary, TAG } from './random-outlines.ts';

const region = (outer: Outline, ...holes: Outline[]): Region => ({ outer, holes });
const rectangle = (w: number, h: number): Outline =>
  polygonOutline(
    [
      { x: 0, y: 0 },
      { x: w, y: 0 },
      { x: w, y: h },
      { x: 0, y: h },
    ],
    TAG,
  );
const reversed = (outline: Outline): Outline => ({ edges: outline.edges.map(reverseEdge).reverse() });
const shoelace = (points: readonly { x: number; y: number }[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + (p.x * q.y - p.y * q.x) / 2;
  }, 0);

describe('area, perimeter, centroid and moments in closed form', () => {
  it('of a circle, wherever it lies and however it turns', () => {
    const c = circleOutline({ x: 1000, y: -700 }, 25, TAG);
    expect(areaOfOutline(c)).toBeCloseTo(Math.PI * 625, 9);
    expect(areaOfOutline(circleOutline({ x: 3, y: 4 }, 25, TAG, -1))).toBeCloseTo(-Math.PI * 625, 9);
    expect(perimeterOfRegions([region(c)])).toBeCloseTo(50 * Math.PI, 10);
    const m = momentsOfRegions([region(c)]);
    expect(m.centroid.x).toBeCloseTo(1000, 9);
    expect(m.centroid.y).toBeCloseTo(-700, 9);
    expect(m.xx).toBeCloseTo((Math.PI / 4) * 25 ** 4, 5);
    expect(m.yy).toBeCloseTo((Math.PI / 4) * 25 ** 4, 5);
    expect(m.xy).toBeCloseTo(0, 5);
  });

  it('of a rectangle: b h³ / 12', () => {
    const m = momentsOfRegions([region(rectangle(40, 90))]);
    expect(m.area).toBeCloseTo(3600, 9);
    expect(m.centroid).toEqual({ x: expect.closeTo(20, 10), y: expect.closeTo(45, 10) });
    expect(m.xx / ((40 * 90 ** 3) / 12)).toBeCloseTo(1, 12);
    expect(m.yy / ((90 * 40 ** 3) / 12)).toBeCloseTo(1, 12);
  });

  it('of a slot, either way round', () => {
    const slot = slotOutline({ x: 0, y: 0 }, { x: 30, y: 40 }, 6, TAG);
    expect(areaOfOutline(slot)).toBeCloseTo(50 * 12 + Math.PI * 36, 9);
    expect(areaOfOutline(slotOutline({ x: 0, y: 0 }, { x: 30, y: 40 }, 6, TAG, -1))).toBeCloseTo(
      -(50 * 12 + Math.PI * 36),
      9,
    );
    expect(perimeterOfRegions([region(slot)])).toBeCloseTo(100 + 12 * Math.PI, 9);
    const single = slotOutline({ x: 5, y: 5 }, { x: 5, y: 5 }, 6, TAG);
    expect(areaOfOutline(single)).toBeCloseTo(Math.PI * 36, 9);
  });

  it('of a half disc: centroid at 4r/3π (handbook value)', () => {
    const half: Outline = {
      edges: [bulged({ x: 10, y: 0 }, { x: -10, y: 0 }, 1), bulged({ x: -10, y: 0 }, { x: 10, y: 0 }, 0)],
    };
    const m = momentsOfRegions([region(half)]);
    expect(m.area).toBeCloseTo(50 * Math.PI, 10);
    expect(m.centroid.y).toBeCloseTo(40 / (3 * Math.PI), 10);
    expect(m.xx).toBeCloseTo((Math.PI / 8 - 8 / (9 * Math.PI)) * 1e4, 6);
    expect(m.yy).toBeCloseTo((Math.PI / 8) * 1e4, 6);
  });

  it('of a Reuleaux triangle: ½ (π − √3) w²', () => {
    const w = 50;
    const [a, b, c] = [
      { x: 0, y: 0 },
      { x: w, y: 0 },
      { x: w / 2, y: (w * Math.sqrt(3)) / 2 },
    ];
    const bulge = Math.tan(Math.PI / 12);
    const outline: Outline = { edges: [bulged(a!, b!, bulge), bulged(b!, c!, bulge), bulged(c!, a!, bulge)] };
    expect(areaOfOutline(outline)).toBeCloseTo(((Math.PI - Math.sqrt(3)) / 2) * w * w, 9);
    expect(perimeterOfRegions([region(outline)])).toBeCloseTo(Math.PI * w, 9);
  });

  it('of a flat arc of a kilometre radius, which keeps its sliver', () => {
    const sagitta = 1e-3;
    const outline: Outline = {
      edges: [
        bulged({ x: 0, y: 0 }, { x: 90, y: 0 }, (2 * sagitta) / 90),
        bulged({ x: 90, y: 0 }, { x: 0, y: 0 }, 0),
      ],
    };
    // Flat segment: ⅔ of chord times sagitta.
    expect(areaOfOutline(outline) / ((2 / 3) * 90 * sagitta)).toBeCloseTo(1, 7);
    expect(momentsOfRegions([region(outline)]).area / ((2 / 3) * 90 * sagitta)).toBeCloseTo(1, 7);
  });

  it('holes are taken out', () => {
    const plate = region(rectangle(100, 60), circleOutline({ x: 25, y: 30 }, 10, TAG, -1));
    const area = 6000 - 100 * Math.PI;
    expect(areaOfRegions([plate])).toBeCloseTo(area, 9);
    expect(centroidOfRegions([plate]).x).toBeCloseTo((6000 * 50 - 100 * Math.PI * 25) / area, 9);
    expect(areaOfRegions([])).toBe(0);
  });
});

describe('area and moments on random outlines', () => {
  it('the area agrees with the polygon of many chords', () => {
    fc.assert(
      fc.property(outlineArbitrary(), (outline) => {
        const points = densePoints(outline.edges, 1e-4);
        const most = 1e-4 * perimeterOfRegions([region(outline)]);
        expect(Math.abs(areaOfOutline(outline) - shoelace(points))).toBeLessThanOrEqual(most);
      }),
      { numRuns: 60 },
    );
  });

  it('turning the loop round flips the sign; moving it changes nothing; moments agree with the area', () => {
    fc.assert(
      fc.property(outlineArbitrary(), fc.double({ min: -3, max: 3, noNaN: true }), (outline, turn) => {
        const area = areaOfOutline(outline);
        expect(areaOfOutline(reversed(outline))).toBeCloseTo(-area, 6);
        const by = { turn, shift: { x: 300, y: -40 }, scale: 1, mirrored: turn > 1 };
        const moved = transformOutline(outline, by);
        expect(areaOfOutline(moved)).toBeCloseTo(area, 6);
        const m = momentsOfRegions([region(outline)]);
        const n = momentsOfRegions([region(moved)]);
        expect(m.area).toBeCloseTo(area, 6);
        if (area > 1000) {
          expect(distance(n.centroid, transformPoint(m.centroid, by))).toBeLessThan(1e-8);
          expect((n.xx + n.yy) / (m.xx + m.yy)).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('nearest place, inside test, distance along', () => {
  it('nothing sampled on the edges is nearer, and the place lies on its edge at that distance', () => {
    fc.assert(
      fc.property(outlineArbitrary(), pointArbitrary(400), (outline, p) => {
        const found = nearestOnEdges(outline.edges, p);
        const edge = outline.edges[found.index]!;
        expect(distance(pointAt(edge, found.t), found.point)).toBeLessThan(1e-9);
        expect(Math.abs(distance(found.point, p) - found.distance)).toBeLessThan(1e-9);
        for (const e of outline.edges) {
          for (let i = 0; i <= 50; i++) {
            expect(distance(pointAt(e, i / 50), p)).toBeGreaterThanOrEqual(found.distance - 1e-9);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  it('from the centre of an arc every place is as near; from beyond its ends, an end', () => {
    const quarter = bulged({ x: 10, y: 0 }, { x: 0, y: 10 }, Math.tan(Math.PI / 8));
    expect(nearestOnEdges([quarter], { x: 0, y: 0 }).distance).toBeCloseTo(10, 12);
    expect(nearestOnEdges([quarter], { x: 12, y: -5 })).toMatchObject({ t: 0, point: { x: 10, y: 0 } });
    expect(nearestOnEdges([quarter], { x: -4, y: 9 })).toMatchObject({ t: 1, point: { x: 0, y: 10 } });
    expect(() => nearestOnEdges([], { x: 0, y: 0 })).toThrow(RangeError);
  });

  it('knows inside from outside as the polygon of many chords does', () => {
    fc.assert(
      fc.property(outlineArbitrary(), pointArbitrary(350), (outline, p) => {
        fc.pre(nearestOnEdges(outline.edges, p).distance > 0.02);
        const points = densePoints(outline.edges, 0.01);
        let turned = 0;
        for (const [i, a] of points.entries()) {
          const b = points[(i + 1) % points.length]!;
          turned += Math.atan2(
            (a.x - p.x) * (b.y - p.y) - (a.y - p.y) * (b.x - p.x),
            (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y),
          );
        }
        const winding = Math.round(turned / (2 * Math.PI));
        expect(locate([region(outline)], p)).toBe(winding > 0 ? 'inside' : 'outside');
      }),
      { numRuns: 200 },
    );
  });

  it('is not misled by a ray through corners, along edges, or by chords through the point', () => {
    const diamond = polygonOutline(
      [
        { x: 0, y: -10 },
        { x: 10, y: 0 },
        { x: 0, y: 10 },
        { x: -10, y: 0 },
      ],
      TAG,
    );
    expect(locate([region(diamond)], { x: -5, y: 0 })).toBe('inside');
    expect(locate([region(diamond)], { x: -15, y: 0 })).toBe('outside');
    const lens: Outline = {
      edges: [bulged({ x: 0, y: 0 }, { x: 20, y: 0 }, 0.5), bulged({ x: 20, y: 0 }, { x: 0, y: 0 }, 0.5)],
    };
    expect(locate([region(lens)], { x: 10, y: 0 })).toBe('inside');
    expect(locate([region(lens)], { x: -1, y: 0 })).toBe('outside');
    expect(locate([region(lens)], { x: 20, y: 0 })).toBe('edge');
    for (const turn of [0, Math.PI / 2, 2, 4]) {
      const by = { turn, shift: { x: 0, y: 0 }, scale: 1, mirrored: false };
      const at = transformPoint({ x: 10, y: 0 }, by);
      expect(locate([region(transformOutline(lens, by))], at)).toBe('inside');
    }
    const plate = region(rectangle(40, 40), circleOutline({ x: 20, y: 20 }, 5, TAG, -1));
    expect(locate([plate], { x: 20, y: 20 })).toBe('outside');
    expect(locate([plate], { x: 20, y: 27 })).toBe('inside');
    expect(locate([plate], { x: 25, y: 20 })).toBe('edge');
    expect(locate([plate], { x: 40, y: 10 })).toBe('edge');
    expect(locate([plate], { x: 40 + 5e-8, y: 10 })).toBe('edge');
    expect(locate([plate], { x: 40 + 5e-7, y: 10 })).toBe('outside');
  });

  it('walks along a loop and finds the way back', () => {
    const plate = rectangle(100, 50);
    expect(pointAlong(plate, 120)).toEqual({ x: 100, y: 20 });
    expect(pointAlong(plate, 300)).toEqual({ x: 0, y: 0 });
    expect(pointAlong(plate, -10)).toEqual({ x: 0, y: 10 });
    expect(placeAlong(plate, 100).direction).toEqual({ x: 0, y: 1 });
    expect(distanceAlong(plate, { x: 130, y: 20 })).toBe(120);
    expect(distanceAlong(plate, { x: 0, y: 0 })).toBe(0);
    fc.assert(
      fc.property(outlineArbitrary(0.2), fc.double({ min: 0, max: 0.999, noNaN: true }), (outline, share) => {
        const s = share * perimeterOfRegions([region(outline)]);
        const p = pointAlong(outline, s);
        expect(distance(pointAlong(outline, distanceAlong(outline, p)), p)).toBeLessThan(1e-8);
      }),
      { numRuns: 60 },
    );
    expect(() => pointAlong(plate, Number.NaN)).toThrow(RangeError);
  });

  it('says so when tags do not match the corners of a polygon', () => {
    expect(() =>
      polygonOutline(
        [
          { x: 0, y: 0 },
          { x: 1, y: 0 },
        ],
        [TAG],
      ),
    ).toThrow(RangeError);
    expect(() => circleOutline({ x: 0, y: 0 }, 0, TAG)).toThrow(RangeError);
    expect(() => slotOutline({ x: 0, y: 0 }, { x: 1, y: 0 }, -1, TAG)).toThrow(RangeError);
  });
});
