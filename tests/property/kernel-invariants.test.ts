import { describe, expect, it } from 'vitest';
import {
  areaOfRegions,
  closeRegions,
  findFaults,
  intersectRegions,
  offsetRegions,
  openRegions,
  type Region,
  type Similarity,
  simplifyRegions,
  subtractRegions,
  symmetricDifference,
  transformRegion,
  uniteRegions,
} from '../../src/geometry/index.ts';
import { roundedLoop } from '../cases/outlines/pen.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { FUZZ_COUNT, FUZZ_SEED, fuzzCase, fuzzOffset } from './fuzz.ts';
import { areaOf, boxOf, edgesOf, reverseLoop, sweepOf } from './oracle.ts';
import { partnerOf } from './partner.ts';

const seeds = (share: number): number[] =>
  Array.from({ length: Math.max(20, Math.round(FUZZ_COUNT * share)) }, (_, i) => FUZZ_SEED + i);

/** How much two areas may differ when their boundaries differ by a hair all along. */
function slackFor(regions: readonly Region[]): number {
  const { minX, minY, maxX, maxY } = boxOf(regions);
  return 1e-7 * edgesOf(regions).length * (1 + maxX - minX + maxY - minY);
}

describe('an outline moved, turned, mirrored, reversed, or begun elsewhere', () => {
  const ways: [string, (r: Region) => Region, (r: Region) => Region, number?][] = [
    ['moved', by({ shift: { x: 123.456, y: -77.7 } }), by({ shift: { x: -123.456, y: 77.7 } })],
    ['turned', by({ turn: 0.7 }), by({ turn: -0.7 })],
    ['turned by a quarter', by({ turn: Math.PI / 2 }), by({ turn: -Math.PI / 2 })],
    ['mirrored', by({ mirrored: true }), by({ mirrored: true })],
    ['three times as large', by({ scale: 3 }), by({ scale: 1 / 3 }), 3],
    ['begun at every third edge', shiftStarts, (r) => r],
  ];
  for (const [name, there, back, scale = 1] of ways) {
    it(`${name} has the same offset`, () => {
      for (const seed of seeds(0.1)) {
        const drawn = fuzzCase(seed);
        if (drawn === undefined) continue;
        const d = fuzzOffset(drawn.random);
        const plain = offsetRegions(drawn.regions, d);
        const moved = offsetRegions(drawn.regions.map(there), d * scale).map(back);
        const apart = areaOfRegions(symmetricDifference(plain, moved));
        expect(Math.abs(apart), `seed ${seed}, ${drawn.family} by ${d}`).toBeLessThan(
          slackFor(drawn.regions),
        );
      }
    });
  }
});

it('two outlines moved, turned, mirrored and scaled together unite to the same', () => {
  const there = by({ shift: { x: 31.7, y: -12.9 }, turn: 1.1, scale: 2.5, mirrored: true });
  for (const seed of seeds(0.1)) {
    const drawn = fuzzCase(seed);
    if (drawn === undefined) continue;
    const a = drawn.regions;
    const b = partnerOf(a, seed, drawn.random);
    for (const combine of [uniteRegions, intersectRegions, subtractRegions, symmetricDifference]) {
      const moved = combine(a.map(there), b.map(there));
      const apart = areaOfRegions(symmetricDifference(combine(a, b).map(there), moved));
      const slack = 2.5 * slackFor([...a.map(there), ...b.map(there)]);
      expect(Math.abs(apart), `seed ${seed}, ${drawn.family}, ${combine.name}`).toBeLessThan(slack);
    }
  }
});

describe('offsets out and in', () => {
  it('of rounded convex shapes come back to where they began', () => {
    for (const seed of seeds(0.1)) {
      const random = randomFrom(seed);
      const count = random.whole(3, 9);
      const points = Array.from({ length: count }, (_, i) => {
        const a = (2 * Math.PI * (i + random.between(0, 0.3))) / count;
        return { x: 100 * Math.cos(a), y: 80 * Math.sin(a) };
      });
      const regions = [
        {
          outer: roundedLoop(
            points,
            points.map(() => random.between(3, 15)),
          ),
          holes: [],
        },
      ];
      const d = random.ratio(0.01, 40);
      const back = offsetRegions(offsetRegions(regions, d), -d);
      expect(areaOfRegions(symmetricDifference(back, regions)), `seed ${seed} by ${d}`).toBeLessThan(1e-4);
      expect(back[0]!.outer.edges).toHaveLength(regions[0]!.outer.edges.length);
    }
  });

  it('move the area of a convex region by L·r + π·r² (Steiner 1840)', () => {
    for (const seed of seeds(0.2)) {
      const random = randomFrom(seed);
      const count = random.whole(3, 12);
      const points = Array.from({ length: count }, (_, i) => {
        const a = (2 * Math.PI * (i + random.between(0, 0.4))) / count;
        return { x: 60 * Math.cos(a), y: 60 * Math.sin(a) };
      });
      const radii = points.map(() => (random.next() < 0.5 ? 1e-3 : random.between(0.1, 15)));
      const regions = [{ outer: roundedLoop(points, radii), holes: [] }];
      const length = edgesOf(regions).reduce(
        (sum, e) =>
          sum + (e.kind === 'arc' ? e.radius * sweepOf(e) : Math.hypot(e.to.x - e.from.x, e.to.y - e.from.y)),
        0,
      );
      const r = random.ratio(1e-3, 100);
      const grown = areaOf(offsetRegions(regions, r));
      const expected = areaOf(regions) + length * r + Math.PI * r * r;
      expect(Math.abs(grown - expected) / expected, `seed ${seed} by ${r}`).toBeLessThan(1e-11);
    }
  });
});

describe('opening and closing by a disc', () => {
  it('keep within and around the regions, and change nothing the second time', () => {
    for (const seed of seeds(0.1)) {
      const drawn = fuzzCase(seed);
      if (drawn === undefined) continue;
      const { regions } = drawn;
      const r = Math.abs(fuzzOffset(drawn.random));
      const slack = slackFor(regions) + 1e-6 * r * edgesOf(regions).length;
      const label = `seed ${seed}, ${drawn.family} by ${r}`;
      const opened = openRegions(regions, r);
      const closed = closeRegions(regions, r);
      expect(findFaults(opened), label).toEqual([]);
      expect(findFaults(closed), label).toEqual([]);
      expect(areaOfRegions(subtractRegions(opened, regions)), label).toBeLessThan(slack);
      expect(areaOfRegions(subtractRegions(regions, closed)), label).toBeLessThan(slack);
      const again = closeRegions(closed, r);
      expect(areaOfRegions(symmetricDifference(again, closed)), label).toBeLessThan(slack);
      const reopened = openRegions(opened, r);
      expect(areaOfRegions(symmetricDifference(reopened, opened)), label).toBeLessThan(slack);
    }
  });
});

it('simplifying keeps the area and makes nothing worse', () => {
  for (const seed of seeds(0.2)) {
    const drawn = fuzzCase(seed);
    if (drawn === undefined) continue;
    const simple = simplifyRegions(drawn.regions);
    expect(Math.abs(areaOfRegions(simple) - areaOfRegions(drawn.regions))).toBeLessThan(
      slackFor(drawn.regions),
    );
    expect(edgesOf(simple).length).toBeLessThanOrEqual(edgesOf(drawn.regions).length);
    expect(findFaults(simple), `seed ${seed}, ${drawn.family}`).toEqual([]);
  }
});

function by(part: Partial<Similarity>): (r: Region) => Region {
  const full: Similarity = { turn: 0, shift: { x: 0, y: 0 }, scale: 1, mirrored: false, ...part };
  return (r) => transformRegion(r, full);
}

function shiftStarts({ outer, holes }: Region): Region {
  const [first, ...rest] = [outer, ...holes].map(({ edges }) => {
    const at = 3 % edges.length;
    return { edges: [...edges.slice(at), ...edges.slice(0, at)] };
  });
  return { outer: first!, holes: rest };
}

it('loops given backwards make the same regions', async () => {
  const { regionsFromLoops } = await import('../../src/geometry/index.ts');
  for (const seed of seeds(0.1)) {
    const drawn = fuzzCase(seed);
    if (drawn === undefined) continue;
    const loops = drawn.regions.flatMap(({ outer, holes }) => [outer, ...holes]);
    const regions = regionsFromLoops(loops.map(reverseLoop), 'odd');
    expect(findFaults(regions), `seed ${seed}`).toEqual([]);
    expect(Math.abs(areaOfRegions(regions) - areaOfRegions(drawn.regions))).toBeLessThan(
      slackFor(drawn.regions),
    );
  }
});
