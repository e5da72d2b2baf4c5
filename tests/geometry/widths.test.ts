import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Edge, Outline, Region, Vec } from '../../src/geometry/index.ts';
import {
  chordAlong,
  circleOutline,
  clipEdges,
  clipEdgesToRegions,
  curvatureComb,
  distance,
  lengthOf,
  line,
  locate,
  neckOf,
  offsetRegions,
  pointAt,
  polygonOutline,
  reverseEdge,
  slotOutline,
  tightPlaces,
  transformRegion,
} from '../../src/geometry/index.ts';
import { bulged, outlineArbitrary, pointArbitrary, TAG, tagged } from './random-outlines.ts';

const region = (outer: Outline, ...holes: Outline[]): Region => ({ outer, holes });
const polygon = (...points: [number, number][]): Outline =>
  polygonOutline(
    points.map(([x, y]) => ({ x, y })),
    points.map((_, i) => tagged(`side-${i}`)),
  );
const rectangle = (w: number, h: number): Region => region(polygon([0, 0], [w, 0], [w, h], [0, h]));
const ACROSS: Vec = { x: 1, y: 0 };
/** An L of two 100 mm limbs 40 wide, inside corner at (40, 40). */
const ELL = region(polygon([0, 0], [100, 0], [100, 40], [40, 40], [40, 100], [0, 100]));

describe('the chord along a direction', () => {
  it('of a rectangle is its width, whatever the length of the direction', () => {
    expect(chordAlong([rectangle(80, 30)], { x: 20, y: 10 }, { x: 7, y: 0 })).toEqual({
      from: { x: 0, y: 10 },
      to: { x: expect.closeTo(80, 9), y: 10 },
      length: expect.closeTo(80, 9),
    });
    const steep = chordAlong([rectangle(80, 30)], { x: 40, y: 15 }, { x: 3, y: 4 });
    expect(steep!.length).toBeCloseTo(30 / 0.8, 9);
  });

  it('ends at a hole, and runs past a hole that it only touches', () => {
    const plate = region(rectangle(80, 30).outer, circleOutline({ x: 50, y: 15 }, 5, TAG, -1));
    expect(chordAlong([plate], { x: 10, y: 15 }, ACROSS)!.length).toBeCloseTo(45, 9);
    expect(chordAlong([plate], { x: 10, y: 20 }, ACROSS)!.length).toBeCloseTo(80, 6);
    expect(chordAlong([plate], { x: 50, y: 15 }, ACROSS)).toBeUndefined();
  });

  it('runs along an edge, through a corner, and not where there is nothing', () => {
    expect(chordAlong([ELL], { x: 10, y: 40 }, ACROSS)!.length).toBeCloseTo(100, 6);
    expect(chordAlong([ELL], { x: 20, y: 60 }, { x: 1, y: -1 })!.length).toBeCloseTo(80 * Math.SQRT2, 6);
    expect(chordAlong([ELL], { x: 80, y: 80 }, ACROSS)).toBeUndefined();
    expect(chordAlong([ELL], { x: 0, y: 0 }, { x: 1, y: -1 })).toBeUndefined();
    expect(chordAlong([], { x: 0, y: 0 }, ACROSS)).toBeUndefined();
    expect(() => chordAlong([ELL], { x: 0, y: 0 }, { x: 0, y: 0 })).toThrow(RangeError);
  });

  it('on random outlines is the run of inside places round p', () => {
    fc.assert(
      fc.property(
        outlineArbitrary(0.2),
        pointArbitrary(250),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (outline, p, angle) => {
          const shape = region(outline);
          const direction = { x: Math.cos(angle), y: Math.sin(angle) };
          const chord = chordAlong([shape], p, direction);
          if (chord === undefined) {
            expect(locate([shape], p)).not.toBe('inside');
            return;
          }
          for (let i = 0; i <= 40; i++) {
            const at = {
              x: chord.from.x + (i / 40) * (chord.to.x - chord.from.x),
              y: chord.from.y + (i / 40) * (chord.to.y - chord.from.y),
            };
            expect(locate([shape], at)).not.toBe('outside');
          }
          for (const end of [chord.from, chord.to]) expect(locate([shape], end)).toBe('edge');
        },
      ),
      { numRuns: 100, endOnFailure: true },
    );
  });
});

describe('the neck', () => {
  it('of plain shapes is known', () => {
    expect(neckOf(rectangle(80, 30))).toMatchObject({ width: 30 });
    expect(neckOf(region(circleOutline({ x: 5, y: 5 }, 12, TAG)))!.width).toBeCloseTo(24, 9);
    expect(neckOf(region(slotOutline({ x: 0, y: 0 }, { x: 60, y: 30 }, 9, TAG)))!.width).toBeCloseTo(18, 9);
    expect(neckOf(ELL)!.width).toBe(40);
    expect(neckOf(region(polygon([0, 0], [100, 0], [50, 87])))).toBeUndefined();
    const quarters = [0, 1, 2, 3].map((i) => {
      const at = (k: number): Vec => ({
        x: 12 * Math.round(Math.cos((k * Math.PI) / 2)),
        y: 12 * Math.round(Math.sin((k * Math.PI) / 2)),
      });
      return bulged(at(i), at(i + 1), Math.tan(Math.PI / 8));
    });
    expect(neckOf(region({ edges: quarters }))!.width).toBeCloseTo(24, 9);
  });

  it('of a tapered leg is its width at the narrow end', () => {
    const leg = region(polygon([0, 0], [60, 0], [50, 700], [10, 700]));
    const neck = neckOf(leg)!;
    expect(neck.width).toBe(40);
    // A head cut askew leaves the width between the sides.
    const askew = neckOf(region(polygon([0, 0], [60, 0], [60, 740], [0, 700])))!;
    expect(askew.width).toBe(60);
    expect([neck.between[0].id, neck.between[1].id].sort()).toEqual(['side-1', 'side-3']);
  });

  it('is measured from the point of a notch, and never across a gap', () => {
    const notched = polygon([0, 0], [100, 0], [100, 60], [56, 60], [50, 15], [44, 60], [0, 60]);
    expect(neckOf(region(notched))!.width).toBe(15);
    // The only sides that face each other do so across the dip between them.
    const dipped = polygon([0, 90], [50, 20], [100, 90], [100, 100], [50, 80], [0, 100]);
    expect(neckOf(region(dipped))).toBeUndefined();
  });

  it('between a window and an edge, or two windows, is the wall between', () => {
    const window = (x: number): Outline => ({
      edges: polygon([x, 40], [x + 30, 40], [x + 30, 60], [x, 60])
        .edges.map(reverseEdge)
        .reverse(),
    });
    expect(neckOf(region(rectangle(200, 100).outer, window(12)))!.width).toBe(12);
    expect(neckOf(region(rectangle(200, 100).outer, window(60), window(97)))!.width).toBe(7);
    const ring = region(circleOutline({ x: 0, y: 0 }, 50, TAG), circleOutline({ x: 10, y: 0 }, 30, TAG, -1));
    expect(neckOf(ring)!.width).toBeCloseTo(10, 9);
  });

  it('of two discs joined by a waist is where shrinking parts them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 20, noNaN: true }),
        fc.double({ min: 0.2, max: 0.6, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (half, bulge, turn) => {
          // A bar 60 + 2 half wide, waisted from both sides by arcs.
          const rise = 50 * bulge;
          const y = half + rise;
          const edges: Edge[] = [
            bulged({ x: -50, y: -y }, { x: 50, y: -y }, -bulge),
            line({ x: 50, y: -y }, { x: 100, y: -y }, TAG),
            line({ x: 100, y: -y }, { x: 100, y }, TAG),
            line({ x: 100, y }, { x: 50, y }, TAG),
            bulged({ x: 50, y }, { x: -50, y }, -bulge),
            line({ x: -50, y }, { x: -100, y }, TAG),
            line({ x: -100, y }, { x: -100, y: -y }, TAG),
            line({ x: -100, y: -y }, { x: -50, y: -y }, TAG),
          ];
          const by = { turn, shift: { x: 10, y: 20 }, scale: 1, mirrored: false };
          const shape = transformRegion(region({ edges }), by);
          const { width } = neckOf(shape)!;
          expect(width).toBeCloseTo(2 * half, 6);
          expect(offsetRegions([shape], 1e-3 - width / 2)).toHaveLength(1);
          expect(offsetRegions([shape], -1e-3 - width / 2)).toHaveLength(2);
        },
      ),
      { numRuns: 25, endOnFailure: true },
    );
  });
});

describe('places where a disc does not fit', () => {
  it('from outside: an inside corner keeps r (√2 − 1) of wood, of area r² (1 − π/4) (common practice)', () => {
    const places = tightPlaces([ELL], 10, 'outside');
    expect(places).toHaveLength(1);
    expect(places[0]!.at).toEqual({ x: expect.closeTo(40, 6), y: expect.closeTo(40, 6) });
    expect(places[0]!.reach).toBeCloseTo(10 * (Math.SQRT2 - 1), 6);
    expect(places[0]!.area).toBeCloseTo(100 * (1 - Math.PI / 4), 6);
    expect([...places[0]!.edges].sort()).toEqual(['side-2', 'side-3']);
  });

  it('from inside: the five outside corners, and limbs narrower than the disc', () => {
    expect(tightPlaces([ELL], 10, 'inside')).toHaveLength(5);
    const thin = region(
      polygon([0, 0], [100, 0], [100, 100], [60, 100], [60, 112], [40, 112], [40, 100], [0, 100]),
    );
    const [limb, ...corners] = tightPlaces([thin], 15, 'inside');
    expect(limb!.edges).toEqual(expect.arrayContaining(['side-3', 'side-4', 'side-5']));
    expect(limb!.reach).toBeCloseTo(Math.hypot(10, 12 + Math.sqrt(125)) - 15, 6);
    expect(corners).toHaveLength(4);
    expect(tightPlaces([rectangle(10, 10)], 6, 'inside')).toMatchObject([
      { reach: Infinity, area: expect.closeTo(100, 6) },
    ]);
  });

  it('a hollow of the disc’s own radius fits it; a sharper one does not', () => {
    const hollow = region({
      edges: [
        line({ x: 0, y: 0 }, { x: 100, y: 0 }, TAG),
        line({ x: 100, y: 0 }, { x: 100, y: 60 }, TAG),
        line({ x: 100, y: 60 }, { x: 60, y: 60 }, TAG),
        bulged({ x: 60, y: 60 }, { x: 40, y: 60 }, -1, tagged('scoop')),
        line({ x: 40, y: 60 }, { x: 0, y: 60 }, TAG),
        line({ x: 0, y: 60 }, { x: 0, y: 0 }, TAG),
      ],
    });
    expect(tightPlaces([hollow], 9.9, 'outside')).toEqual([]);
    const [place] = tightPlaces([hollow], 12, 'outside');
    expect(place!.edges).toEqual(['scoop']);
    expect(place!.at).toEqual({ x: expect.closeTo(50, 6), y: expect.closeTo(50, 6) });
    // A disc of 12 over a mouth of 20 sinks in by 12 − √(12² − 10²).
    expect(place!.reach).toBeCloseTo(10 - (12 - Math.sqrt(44)), 6);
    expect(() => tightPlaces([hollow], 0, 'inside')).toThrow(RangeError);
  });
});

describe('clipping edges to regions', () => {
  it('agrees with the box where the region is one', () => {
    fc.assert(
      fc.property(outlineArbitrary(), (outline) => {
        const within = clipEdgesToRegions(outline.edges, [rectangle(120, 90)]);
        const boxed = clipEdges(outline.edges, { minX: 0, minY: 0, maxX: 120, maxY: 90 });
        const total = (chains: Edge[][]): number => chains.flat().reduce((sum, e) => sum + lengthOf(e), 0);
        expect(total(within)).toBeCloseTo(total(boxed), 5);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('keeps what runs along the boundary and stops at a hole', () => {
    const plate = region(rectangle(80, 30).outer, circleOutline({ x: 40, y: 15 }, 5, TAG, -1));
    const across = clipEdgesToRegions([line({ x: -10, y: 15 }, { x: 90, y: 15 }, tagged('grain'))], [plate]);
    expect(across.map((chain) => chain.map(lengthOf))).toEqual([
      [expect.closeTo(35, 9)],
      [expect.closeTo(35, 9)],
    ]);
    expect(across.flat().every(({ tag }) => tag.id === 'grain')).toBe(true);
    const along = clipEdgesToRegions([line({ x: -10, y: 30 }, { x: 90, y: 30 }, TAG)], [plate]);
    expect(along.flat().map(lengthOf)).toEqual([expect.closeTo(80, 6)]);
    const inner = circleOutline({ x: 20, y: 15 }, 5, TAG);
    expect(clipEdgesToRegions(inner.edges, [plate])).toEqual([inner.edges]);
    expect(clipEdgesToRegions(inner.edges, [])).toEqual([]);
  });
});

describe('the curvature comb', () => {
  it('stands out of a bend by curvature times scale, and not at all from a line', () => {
    const edges = [
      line({ x: 0, y: 0 }, { x: 10, y: 0 }, TAG),
      bulged({ x: 10, y: 0 }, { x: 20, y: 10 }, Math.tan(Math.PI / 8)),
    ];
    const teeth = curvatureComb(edges, 500, 4);
    expect(teeth).toHaveLength(4 + 5);
    for (const { foot, tip, curvature } of teeth.slice(0, 4)) {
      expect(tip).toEqual(foot);
      expect(curvature).toBe(0);
    }
    for (const { foot, tip, curvature } of teeth.slice(4)) {
      expect(curvature).toBeCloseTo(0.1, 12);
      expect(distance(foot, tip)).toBeCloseTo(50, 9);
      expect(distance(tip, { x: 10, y: 10 })).toBeCloseTo(60, 9);
    }
    expect(teeth.at(-1)!.foot).toEqual(pointAt(edges[1]!, 1));
    expect(() => curvatureComb(edges, 500, 0)).toThrow(RangeError);
  });

  it('of a curve that arcs stand for comes near the curvature of the curve itself, without their steps', () => {
    // Arcs along a clothoid, whose curvature grows with the way along it (Euler's spiral), from −0.002 to 0.006 1/mm over 400 mm.
    const rate = 0.008 / 400;
    const curvatureAt = (way: number): number => -0.002 + rate * way;
    const ends = Array.from({ length: 21 }, (_, i) => i * 20);
    const edges: Edge[] = [];
    let at = { x: 0, y: 0 };
    for (const [i, from] of ends.slice(0, -1).entries()) {
      const to = ends[i + 1]!;
      const heading = (way: number): number => -0.002 * way + (rate * way * way) / 2;
      const curvature = (heading(to) - heading(from)) / (to - from);
      const turn = curvature > 0 ? 1 : -1;
      const radius = 1 / Math.abs(curvature);
      const angle = heading(from);
      const centre = { x: at.x - turn * radius * Math.sin(angle), y: at.y + turn * radius * Math.cos(angle) };
      const end = {
        x: centre.x + turn * radius * Math.sin(heading(to)),
        y: centre.y - turn * radius * Math.cos(heading(to)),
      };
      edges.push({ kind: 'arc', from: at, to: end, centre, radius, turn, tag: TAG });
      at = end;
    }
    const worst = (of: 'arcs' | 'curve'): number => {
      let way = 0;
      const teeth = curvatureComb(edges, 500, 5, of);
      return Math.max(
        ...teeth.map(({ curvature, foot }, i) => {
          way += i === 0 ? 0 : distance(teeth[i - 1]!.foot, foot);
          return Math.abs(curvature - curvatureAt(way));
        }),
      );
    };
    expect(worst('arcs')).toBeGreaterThan(0.0001);
    expect(worst('curve')).toBeLessThan(1e-6);
  });
});
