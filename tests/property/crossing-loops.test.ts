/** Many loops, and loops that cross very often: what they hold is judged place by place by plain sums over all edges, and areas by formulas. */
import { describe, expect, it } from 'vitest';
import {
  areaOfOutline,
  areaOfRegions,
  circleOutline,
  clipEdgesToRegions,
  type FillRule,
  findFaults,
  lengthOf,
  line,
  type Outline,
  type Region,
  regionsFromLoops,
  simplifyRegions,
  uniteRegions,
} from '../../src/geometry/index.ts';
import {
  latticeOfBars,
  latticeOfCircles,
  randomChords,
  ringOfBowTies,
  scribbledRing,
  sieve,
  TAG,
} from '../cases/outlines/crossing-loops.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { boxOf, distanceTo, edgesOf, reverseLoop, turnsRound } from './oracle.ts';

const LOOPS: Record<string, (r: Random) => Outline[]> = {
  'a ring of bow-ties': (r) => [ringOfBowTies(r, r.whole(8, 400))],
  'a scribbled ring': (r) => [scribbledRing(r, r.whole(8, 300), r.between(2, 9), false)],
  'a scribbled ring with arcs': (r) => [scribbledRing(r, r.whole(8, 300), r.between(2, 7), true)],
  'random chords': (r) => [randomChords(r, r.whole(5, 60))],
  'two rings across each other': (r) => [scribbledRing(r, 90, 4, true), scribbledRing(r, 80, 4, true)],
};

const RULES: Record<FillRule, (turns: number) => boolean> = {
  nonzero: (turns) => turns !== 0,
  odd: (turns) => turns % 2 !== 0,
  positive: (turns) => turns > 0,
};

const asRegions = (loops: readonly Outline[]): Region[] => loops.map((outer) => ({ outer, holes: [] }));

describe('regions from loops that cross themselves', () => {
  for (const [name, draw] of Object.entries(LOOPS)) {
    it(`are valid and hold what ${name} winds round`, () => {
      for (let seed = 1; seed <= 5; seed++) {
        const random = randomFrom(seed * 7727);
        const loops = draw(random);
        const given = edgesOf(asRegions(loops));
        const { minX, minY, maxX, maxY } = boxOf(asRegions(loops));
        const places = Array.from({ length: 150 }, () => ({
          x: random.between(minX, maxX),
          y: random.between(minY, maxY),
        })).filter((p) => distanceTo(given, p) > 1e-6);
        for (const [rule, holds] of Object.entries(RULES) as [FillRule, (turns: number) => boolean][]) {
          const regions = regionsFromLoops(loops, rule);
          const label = `seed ${seed}, ${rule}`;
          expect(findFaults(regions), label).toEqual([]);
          const found = edgesOf(regions);
          for (const p of places) {
            const wound = turnsRound(given, p);
            expect(turnsRound(found, p), `${label} at (${p.x}, ${p.y})`).toBe(holds(wound) ? 1 : 0);
          }
        }
      }
    });

    it(`of ${name}: all is what winds one way and what winds the other`, () => {
      for (let seed = 11; seed <= 14; seed++) {
        const loops = draw(randomFrom(seed));
        const area = (given: readonly Outline[], rule: FillRule): number =>
          areaOfRegions(regionsFromLoops(given, rule));
        const ways = area(loops, 'positive') + area(loops.map(reverseLoop), 'positive');
        const all = area(loops, 'nonzero');
        expect(Math.abs(ways - all) / all, `seed ${seed}`).toBeLessThan(1e-9);
      }
    });
  }
});

describe('lattices', () => {
  it('of bars across bars are one region with a hole in every mesh', () => {
    const count = 40;
    const regions = regionsFromLoops(latticeOfBars(count));
    expect(regions).toHaveLength(1);
    expect(regions[0]!.holes).toHaveLength((count - 1) ** 2);
    expect(areaOfRegions(regions)).toBeCloseTo(2 * count * (3 * count + 1) - count * count, 6);
    expect(findFaults(regions)).toEqual([]);
  });

  it('of circles that overlap have the area of all less a lens for every two neighbours', () => {
    const across = 40;
    const r = 1.125;
    const circles = asRegions(latticeOfCircles(across, r));
    const isDark = (k: number): boolean => (k + Math.floor(k / across)) % 2 === 0;
    const regions = uniteRegions(
      circles.filter((_, k) => isDark(k)),
      circles.filter((_, k) => !isDark(k)),
    );
    const lens = 2 * r * r * Math.acos(1 / r) - Math.sqrt(4 * r * r - 4);
    expect(regions).toHaveLength(1);
    expect(regions[0]!.holes).toHaveLength((across - 1) ** 2);
    const expected = across * across * Math.PI * r * r - 2 * across * (across - 1) * lens;
    expect(areaOfRegions(regions)).toBeCloseTo(expected, 6);
    expect(findFaults(regions)).toEqual([]);
  });

  it('of circles that touch stay circles', () => {
    const circles = asRegions(latticeOfCircles(30, 1));
    const regions = uniteRegions(circles.slice(0, 451), circles.slice(451));
    expect(regions).toHaveLength(900);
    for (const { outer } of regions) expect(areaOfOutline(outer)).toBeCloseTo(Math.PI, 9);
    expect(findFaults(regions)).toEqual([]);
  });
});

describe('rings in each other', () => {
  it('each keep their own hole', () => {
    const circle = (radius: number, turn: 1 | -1 = 1): Outline =>
      circleOutline({ x: 3, y: -2 }, radius, TAG, turn);
    const rings = Array.from({ length: 150 }, (_, i) => ({
      outer: circle(2 * i + 2),
      holes: [circle(2 * i + 1, -1)],
    }));
    const regions = uniteRegions(rings, []);
    expect(regions).toHaveLength(rings.length);
    for (const { outer, holes } of regions) {
      expect(holes).toHaveLength(1);
      const radius = Math.sqrt(areaOfOutline(outer) / Math.PI);
      expect(-areaOfOutline(holes[0]!)).toBeCloseTo(Math.PI * (radius - 1) ** 2, 6);
    }
    expect(findFaults(regions)).toEqual([]);
  });
});

describe('validity of many loops', () => {
  it('finds in random round holes and islands just the faults that their middles and radii tell', () => {
    let faulty = 0;
    for (let seed = 1; seed <= 30; seed++) {
      const random = randomFrom(seed * 31);
      const discs: { x: number; y: number; r: number; isHole: boolean }[] = [];
      for (let tries = 0; tries < 160; tries++) {
        const disc = {
          x: random.between(-5, 105),
          y: random.between(-5, 105),
          r: random.ratio(0.3, 20),
          isHole: random.next() < 0.7,
        };
        const meets = discs.some(({ x, y, r }) => {
          const d = Math.hypot(x - disc.x, y - disc.y);
          return d > Math.abs(r - disc.r) - 0.01 && d < r + disc.r + 0.01;
        });
        const d = Math.hypot(disc.x - 50, disc.y - 50);
        if (!meets && Math.abs(d - 50) > disc.r + 0.01) discs.push(disc);
      }
      const holes = discs.filter(({ isHole }) => isHole);
      const islands = discs.filter(({ isHole }) => !isHole);
      const plate = {
        outer: circleOutline({ x: 50, y: 50 }, 50, TAG),
        holes: holes.map(({ x, y, r }) => circleOutline({ x, y }, r, TAG, -1)),
      };
      const regions = [plate, ...asRegions(islands.map(({ x, y, r }) => circleOutline({ x, y }, r, TAG)))];
      const isIn = (a: { x: number; y: number; r: number }, b: typeof a): boolean =>
        a !== b && Math.hypot(a.x - b.x, a.y - b.y) + a.r < b.r;
      const whole = { x: 50, y: 50, r: 50 };
      const expected: string[] = [];
      holes.forEach((hole, k) => {
        if (!isIn(hole, whole)) expected.push(`hole-outside 0.${k + 1}`);
        for (const other of holes) if (isIn(hole, other)) expected.push(`overlap 0.${k + 1}`);
      });
      islands.forEach((island, k) => {
        if (isIn(island, whole) && !holes.some((hole) => isIn(island, hole)))
          expected.push(`overlap ${k + 1}.0`);
        for (const other of islands) if (isIn(island, other)) expected.push(`overlap ${k + 1}.0`);
      });
      const found = findFaults(regions).map(({ kind, region, loop }) => `${kind} ${region}.${loop}`);
      expect(found.sort(), `seed ${seed}`).toEqual(expected.sort());
      if (expected.length > 0) faulty++;
    }
    expect(faulty).toBeGreaterThan(20);
  });

  it('finds no fault in a sieve, and the one hole that crosses another', () => {
    const sound = sieve(50, 0.75);
    expect(findFaults([sound])).toEqual([]);
    const moved = sound.holes.map((hole, k) =>
      k === 777 ? circleOutline({ x: 55, y: 31 }, 0.75, TAG, -1) : hole,
    );
    const faults = findFaults([{ outer: sound.outer, holes: moved }]);
    expect(faults.length).toBeGreaterThan(0);
    for (const { kind } of faults) expect(['crossing', 'overlap']).toContain(kind);
    expect(faults.filter(({ message }) => !/ 778\b/.test(message))).toEqual([]);
  });
});

it('lines across a sieve are left between its holes', () => {
  const across = 40;
  const r = 0.75;
  const lines = Array.from({ length: 60 }, (_, i) => {
    const y = -1.9 + (i * (2 * across + 1.8)) / 60;
    return line({ x: -5, y }, { x: 2 * across + 5, y }, TAG);
  });
  for (const each of lines) {
    const off = Math.abs(each.from.y - 2 * Math.min(across - 1, Math.max(0, Math.round(each.from.y / 2))));
    const lost = off < r ? across * 2 * Math.sqrt(r * r - off * off) : 0;
    const chains = clipEdgesToRegions([each], [sieve(across, r)]);
    const kept = chains.flat().reduce((sum, edge) => sum + lengthOf(edge), 0);
    expect(kept, `at ${each.from.y}`).toBeCloseTo(2 * across + 2 - lost, 6);
  }
  // All of them at once leave the same.
  const all = clipEdgesToRegions(lines, [sieve(across, r)]);
  expect(all).toEqual(lines.flatMap((each) => clipEdgesToRegions([each], [sieve(across, r)])));
});

it('a side of ten thousand lines with joints a hair off is simplified to as few as lie on one line', () => {
  for (const [hair, expected] of [
    [4e-10, 1],
    [0, 1],
    [4e-9, 5_000],
  ] as const) {
    const count = 10_000;
    const side = Array.from({ length: count }, (_, i) => ({ x: i, y: i % 2 === 0 ? 0 : hair }));
    const corners = [...side, { x: count, y: 0 }, { x: count, y: 50 }, { x: 0, y: 50 }];
    const edges = corners.map((from, i) => line(from, corners[(i + 1) % corners.length]!, TAG));
    const simple = simplifyRegions([{ outer: { edges }, holes: [] }]);
    const lower = simple[0]!.outer.edges.filter(({ from, to }) => from.y < 1 && to.y < 1);
    if (expected === 1) expect(lower).toHaveLength(1);
    else expect(lower.length).toBeGreaterThan(expected);
  }
});
