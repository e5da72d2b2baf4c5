/** Failures once found, each named by its mechanism and drawn plainly. */
import { describe, expect, it } from 'vitest';
import {
  areaOfRegions,
  directionAt,
  fairBatten,
  findFaults,
  intersectRegions,
  locate,
  offsetRegions,
  type Region,
  subtractRegions,
  symmetricDifference,
  uniteRegions,
} from '../../src/geometry/index.ts';
import { ADVERSARIAL } from '../cases/outlines/adversarial.ts';
import { circleAt, loopThrough, penAt, regionOf } from '../cases/outlines/pen.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { faultsOfOffset } from './check-offset.ts';
import { isInside } from './oracle.ts';

const ring = (count: number, radius: number, bulgeOf: (i: number) => number, x = 0, y = 0): Region => {
  const points = Array.from({ length: count }, (_, i) => {
    const a = (2 * Math.PI * i) / count;
    return { x: x + radius * Math.cos(a), y: y + radius * Math.sin(a) };
  });
  return regionOf(
    loopThrough(
      points,
      points.map((_, i) => bulgeOf(i)),
    ),
  );
};

describe('joints a hair from tangent', () => {
  // Parallels end within the tolerance of each other's circle and leave tails too near the source to be told from what is kept.
  const exact = Math.tan(Math.PI / 62);
  for (const off of [1e-9, 1e-8, 1e-7, 3e-7, 1e-6, 3e-6, 1e-5, 1e-4, 1e-3]) {
    it(`off by ${off} of the bulge keep every loop closed`, () => {
      const regions = [ring(31, 100, (i) => exact * (1 + off * Math.cos(2.3 * i)))];
      for (const by of [2, 10, 19.05, -2, -40]) {
        expect(faultsOfOffset(regions, by, offsetRegions(regions, by), randomFrom(5))).toEqual([]);
      }
    });
  }
});

describe('a side on a circle of ten kilometres and more', () => {
  // Its own parallel was judged nearer to it than the offset by the last digits of so large a radius; nothing of the outline was left.
  for (const radius of [1.3e7, -1.3e7, 4e6, 1e8]) {
    it(`keeps the whole offset (radius ${radius} mm)`, () => {
      const corners = [
        [0, 0],
        [57, -2],
        [70, 700],
        [20, 700.5],
      ].map(([x, y]) => ({ x: x!, y: y! }));
      const regions = [regionOf(loopThrough(corners, [0, 700 / (4 * radius), 0, 700 / (4 * radius)]))];
      for (const by of [-6.35, 2, -1.5875, 19.05]) {
        expect(faultsOfOffset(regions, by, offsetRegions(regions, by), randomFrom(5))).toEqual([]);
      }
    });
  }
});

describe('a side on a huge circle that turns off the next one by a hair', () => {
  // The circles cross farther along, by their last digits, than the parallels run past each other: the loop came apart and nothing was left.
  for (const radius of [8.66e6, -8.66e6, 2e7, -2e7, 4.3e8]) {
    it(`keeps the whole offset (radius ${radius} mm)`, () => {
      // Heading, then for each edge how far it turns off the one before (rad), its curvature (1/mm) and its length (mm).
      const edges = [
        [0, 1 / 1450, 45],
        [9e-5, 1 / radius, 45],
        [7e-5, -1 / 1270, 45],
        [2e-4, 1 / radius, 45],
      ] as const;
      let heading = Math.PI / 2;
      const at = { x: 60, y: 0 };
      const points = [{ x: 0, y: 0 }, { ...at }];
      const bulges: number[] = [0];
      for (const [off, bend, long] of edges) {
        heading += off;
        const chord = (2 * Math.sin((bend * long) / 2)) / bend;
        at.x += chord * Math.cos(heading + (bend * long) / 2);
        at.y += chord * Math.sin(heading + (bend * long) / 2);
        heading += bend * long;
        points.push({ ...at });
        bulges.push(Math.tan((bend * long) / 4));
      }
      points.push({ x: 0, y: at.y });
      bulges.push(0, 0);
      const regions = [regionOf(loopThrough(points, bulges))];
      expect(findFaults(regions)).toEqual([]);
      for (const by of [-0.5244, -1.5875, -6.35, 2, 19.05]) {
        expect(faultsOfOffset(regions, by, offsetRegions(regions, by), randomFrom(5))).toEqual([]);
      }
    });
  }
});

describe('circles that differ by about the snap', () => {
  // One pair of quarters merged and the other did not; the crossing between them was taken for an end already met.
  for (const [dx, dy] of [
    [-2.913e-9, 8.937e-9],
    [5e-9, 5e-9],
    [1.2e-8, 0],
    [0, -9.99e-9],
  ] as const) {
    it(`moved by (${dx}, ${dy}) still unite to one disc`, () => {
      const a = [regionOf(circleAt(36, 12, 4.501392361125909))];
      const b = [regionOf(circleAt(36 + dx, 12 + dy, 4.501392361125909))];
      const area = areaOfRegions(a);
      expect(areaOfRegions(uniteRegions(a, b))).toBeCloseTo(area, 5);
      expect(areaOfRegions(intersectRegions(a, b))).toBeCloseTo(area, 5);
      expect(areaOfRegions(symmetricDifference(a, b))).toBeLessThan(1e-6);
    });
  }
});

describe('discs that overlap by less than can be told', () => {
  // Booleans took a lens of up to a nanometre for a touch, while validity called one of a tenth of it a crossing.
  const depths = [-1e-8, -5e-10, 1e-12, 1e-10, 3e-10, 1e-9, 2e-9, 1e-8, 1e-7];
  for (const radius of [37, 100, 1000]) {
    it(`touch: radii of 100 and ${radius} mm, side by side and one in the other`, () => {
      const a = [regionOf(circleAt(0, 0, 100))];
      for (const depth of depths) {
        for (const apart of [radius + 100 - depth, Math.abs(radius - 100) + depth]) {
          const b = [regionOf(circleAt(apart * Math.cos(0.5), apart * Math.sin(0.5), radius))];
          const results = [uniteRegions, intersectRegions, subtractRegions, symmetricDifference].map(
            (combine) => combine(a, b),
          );
          for (const result of results) expect(findFaults(result), `${apart}`).toEqual([]);
          const sum = areaOfRegions(results[0]!) + areaOfRegions(results[1]!);
          expect(sum).toBeCloseTo(areaOfRegions(a) + areaOfRegions(b), 6);
        }
      }
    });
  }

  it('but discs that overlap by more cross', () => {
    const b = regionOf(circleAt((200 - 3e-8) * Math.cos(0.5), (200 - 3e-8) * Math.sin(0.5), 100));
    expect(findFaults([regionOf(circleAt(0, 0, 100)), b]).map(({ kind }) => kind)).toEqual(['crossing']);
  });
});

it('a batten that runs straight for an arc’s length has no kink where it does', () => {
  // The arc of 80 km radius became a line between its ends, half its turn off the arcs on either side.
  const degree = Math.PI / 180;
  const [leaving, arriving] = [89, 92].map((a) => pt(Math.cos(a * degree), Math.sin(a * degree)));
  const tag = { id: 'curve', role: 'routed' } as const;
  const nails = [pt(4, 0), pt(16, 120), pt(-1, 240), pt(0, 360)];
  const found = fairBatten(nails, { leaving: leaving!, arriving: arriving! }, tag);
  const edges = found.ok ? found.edges : [];
  expect(edges.filter(({ kind }) => kind === 'line')).toHaveLength(1);
  for (const [i, edge] of edges.slice(1).entries()) {
    const [p, q] = [directionAt(edges[i]!, 1), directionAt(edge, 0)];
    expect(Math.abs(p.x * q.y - p.y * q.x)).toBeLessThan(1e-12);
  }
});

it('a long thin touch of two nearly equal circles is placed on the circle', () => {
  // The foot on the line of centres, a micrometre long, was 0.008 mm inside.
  const bulge = Math.tan(Math.PI / 90);
  const a = [ring(45, 100, (i) => bulge * (1 + 1e-5 * Math.cos(1.7 * i)))];
  const b = [ring(45, 100, (i) => bulge * (1 + 1e-5 * Math.cos(2.9 * i + 1)), 1.2e-8)];
  for (const result of [
    uniteRegions(a, b),
    subtractRegions(a, b),
    subtractRegions(b, a),
    intersectRegions(a, b),
  ]) {
    expect(findFaults(result).filter(({ kind }) => kind !== 'overlap')).toEqual([]);
  }
});

it('cusps that nearly coincide part only where they can be told apart', () => {
  const arbelos = (x: number, y: number): Region[] => {
    const pen = penAt(x, y)
      .arcTo(x + 73.25, y, x + 36.625, y, -1)
      .arcTo(x + 100, y, x + 86.625, y, -1);
    return [regionOf(pen.arcTo(x, y, x + 50, y, 1).close())];
  };
  for (const dy of [1e-9, 1e-8, 7e-8, 1e-6, 1e-4]) {
    const both = [uniteRegions, intersectRegions, subtractRegions, symmetricDifference].map((combine) =>
      combine(arbelos(0, 0), arbelos(1e-11, dy)),
    );
    for (const result of both) expect(findFaults(result), `moved by ${dy}`).toEqual([]);
    expect(areaOfRegions(both[0]!) + areaOfRegions(both[1]!)).toBeCloseTo(
      2 * areaOfRegions(arbelos(0, 0)),
      5,
    );
  }
});

it('an arc of a micrometre whose chord is askew changes nothing far away', () => {
  // Its ends were snapped a hair off its circle; its chord, made longer, passed on the wrong side of far points.
  const circle = penAt(100, 0).arcTo(100 * Math.cos(2), 100 * Math.sin(2), 0, 0, 1);
  const p = { x: 100 * Math.cos(2) - 1e-7, y: 100 * Math.sin(2) - 6e-8 };
  const outer = circle.arcTo(p.x, p.y, 0, 0, 1).lineTo(-100, -100).lineTo(100, -100).close();
  const regions = [regionOf(outer)];
  for (let k = 0; k < 200; k++) {
    const r = randomFrom(k);
    const q = { x: r.between(-120, 120), y: r.between(-120, 120) };
    const found = locate(regions, q);
    if (found !== 'edge') expect(found === 'inside', `${q.x}, ${q.y}`).toBe(isInside(regions, q));
  }
});

it('a spike that turns back through itself within a nanometre does not swallow the region', () => {
  // A reversed arc of 0.01 micrometre at a corner leaves no parallel to close the loop by.
  const pen = penAt(74.55942808883265, 0);
  pen.arcTo(74.55942612867038, -0.000010766777343116103, 74.5594008, -0.0000002, -1);
  const loop = pen.lineTo(64.97, 47.2).lineTo(-60, 50).lineTo(-60, -50).lineTo(65.5, -47.6).close(0.1);
  const grown = offsetRegions([regionOf(loop)], 1);
  expect(areaOfRegions(grown)).toBeGreaterThan(areaOfRegions([regionOf(loop)]));
});

it('a rounded square shrunk by its own radius has square corners and no loose arcs', () => {
  const square = [regionOf(loopThrough([pt(0, 0), pt(30, 0), pt(30, 30), pt(0, 30)]))];
  for (const r of [1, 3.175, 6.35]) {
    const back = offsetRegions(offsetRegions(square, r), -r);
    expect(back[0]!.outer.edges).toHaveLength(4);
  }
});

describe('arcs of kilometres among many edges', () => {
  // What of such an arc lies too near a corner was cut out up to a micrometre too far, past the crossing that bounds the offset.
  for (const seed of [7, 8, 10]) {
    it(`are trimmed short of what is kept, draw ${seed}`, () => {
      const regions = ADVERSARIAL['random ring']!(randomFrom(seed), 1_000);
      for (const by of [2, -2]) {
        const result = offsetRegions(regions, by);
        expect(result.length).toBeGreaterThan(0);
        expect(faultsOfOffset(regions, by, result, randomFrom(5))).toEqual([]);
      }
    });
  }
});

const pt = (x: number, y: number) => ({ x, y });
