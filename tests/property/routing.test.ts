import { describe, expect, test } from 'vitest';
import {
  areaOfRegions,
  type Edge,
  findFaults,
  lengthOf,
  locate,
  nearestOnEdges,
  type Outline,
  offsetRegions,
  type Region,
  STAY,
  symmetricDifference,
  transformRegion,
} from '../../src/geometry/index.ts';
import { type FeedRun, routePart, type Tooling } from '../../src/routing/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { bearingTooling, bushingTooling, partOf, startingAt } from '../routing/support/parts.ts';
import { FUZZ_COUNT, FUZZ_SEED } from './fuzz.ts';

/** Rounds through all families: few by default, as many as asked for in a long run. */
const ROUNDS = Math.ceil(FUZZ_COUNT / 100);
const families = Object.entries(FURNITURE);

/** Every part of every family with its seed, so that a failure can be repeated. */
function everyPart(check: (part: SketchedPart, random: Random, name: string) => void): void {
  for (const [family, make] of families) {
    for (let seed = FUZZ_SEED; seed < FUZZ_SEED + ROUNDS; seed++) {
      const random = randomFrom(seed);
      const region = make(random)[0]!;
      check(withEnds(region, random), random, `${family}, seed ${seed}`);
    }
  }
}

/** Some straight edges become sawn, joint or left as the board came; holes are routed from a place inside them. */
function withEnds(region: Region, random: Random): SketchedPart {
  const role = (edge: Edge): Edge => {
    if (edge.kind === 'arc' || random.next() > 0.35) return edge;
    return { ...edge, tag: { ...edge.tag, role: random.pick(['sawn', 'sawn', 'joint', 'left'] as const) } };
  };
  const outer = { edges: region.outer.edges.map(role) };
  const openings = region.holes.map((hole, at) => ({
    name: `opening-${at}`,
    label: 'Opening',
    hole: at,
    plunge: insideOf(hole),
  }));
  return partOf(outer, { holes: region.holes, openings, grain: random.between(0, Math.PI) });
}

function insideOf(hole: Outline): { x: number; y: number } {
  const points = hole.edges.map(({ from }) => from);
  const sum = points.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }));
  return { x: sum.x / points.length, y: sum.y / points.length };
}

function anyTooling(random: Random): Tooling {
  const diameter = random.between(3, 26);
  return random.pick([
    () => bearingTooling(diameter),
    () => bushingTooling(diameter, diameter + random.between(2, 15)),
    () =>
      bearingTooling(diameter, {
        guide: { kind: 'bearing', diameter: diameter * random.between(0.5, 0.95), at: 'shank' },
      }),
  ])();
}

describe('routing any part with any tools', () => {
  test('gives valid regions', () => {
    everyPart((part, random, name) => {
      const { template, asRouted, blank, differences } = routePart(part, anyTooling(random));
      for (const regions of [template, asRouted, blank, differences.map(({ region }) => region)]) {
        expect(
          regions.flatMap((region) => findFaults([region])),
          name,
        ).toEqual([]);
      }
    });
  }, 600_000);

  test('wood left and wood lost account for all that differs: area routed = area drawn + left − lost', () => {
    everyPart((part, random, name) => {
      const { asRouted, differences } = routePart(part, anyTooling(random));
      const sum = (kind: 'left' | 'lost') =>
        differences.filter((each) => each.kind === kind).reduce((total, { area }) => total + area, 0);
      const drawn = areaOfRegions([part.region]);
      const perimeter = part.region.outer.edges.length;
      // Pieces that reach less than 0.01 mm are not told: they may add up to a trifle.
      const slack = 0.05 + 0.01 * perimeter;
      expect(Math.abs(areaOfRegions(asRouted) - (drawn + sum('left') - sum('lost'))), name).toBeLessThan(
        slack,
      );
    });
  }, 600_000);

  test('does not depend on where an outline starts', () => {
    everyPart((part, random, name) => {
      const tooling = anyTooling(random);
      const first = routePart(part, tooling);
      const at = random.whole(1, part.region.outer.edges.length - 1);
      const turned = { ...part, region: { ...part.region, outer: startingAt(part.region.outer, at) } };
      const again = routePart(turned, tooling);
      expect(areaOfRegions(symmetricDifference(first.template, again.template)), name).toBeLessThan(1e-3);
      expect(areaOfRegions(symmetricDifference(first.asRouted, again.asRouted)), name).toBeLessThan(1e-3);
    });
  }, 600_000);

  test('leaves exactly the part drawn when every hollow and every bulge takes the tools', () => {
    everyPart((part, random, name) => {
      const c = random.between(2, 8);
      const g = random.between(2, 8);
      const bulge = Math.max(0, g - c) + 0.5;
      // Rounded from both sides: shrunk and grown back, grown and shrunk back.
      const { region } = part;
      const open = offsetRegions(offsetRegions([{ outer: region.outer, holes: [] }], -bulge), bulge);
      const round = offsetRegions(offsetRegions(open, c + g + 1), -(c + g + 1));
      for (const { outer, holes } of round) {
        if (holes.length > 0) continue;
        const routed = {
          edges: outer.edges.map((edge) => ({ ...edge, tag: { ...edge.tag, role: 'routed' as const } })),
        };
        const tooling = bearingTooling(2 * c, { guide: { kind: 'bearing', diameter: 2 * g, at: 'shank' } });
        const { differences } = routePart(partOf(routed), tooling);
        expect(
          differences.filter(({ kind }) => kind === 'left'),
          name,
        ).toEqual([]);
      }
    });
  }, 600_000);

  test('a mirrored part has the same template and residue, mirrored', () => {
    const mirror = { ...STAY, mirrored: true };
    everyPart((part, random, name) => {
      const tooling = anyTooling(random);
      const other = {
        ...part,
        region: transformRegion(part.region, mirror),
        grain: Math.PI - part.grain,
        openings: part.openings.map((each) => ({ ...each, plunge: { x: -each.plunge.x, y: each.plunge.y } })),
      };
      const one = routePart(part, tooling);
      const two = routePart(other, tooling);
      const flipped = one.template.map((region) => transformRegion(region, mirror));
      expect(areaOfRegions(symmetricDifference(flipped, two.template)), name).toBeLessThan(1e-3);
      const area = (r: typeof one) => r.differences.reduce((sum, each) => sum + each.area, 0);
      expect(area(two), name).toBeCloseTo(area(one), 3);
    });
  }, 600_000);

  test('mirroring a part swaps with and against the grain, and nothing else', () => {
    const mirror = { ...STAY, mirrored: true };
    const swap = { with: 'against', against: 'with', neutral: 'neutral', end: 'end' } as const;
    const lengths = (feed: readonly FeedRun[], turn: (grain: FeedRun['grain']) => FeedRun['grain']) => {
      const sums = new Map<string, number>();
      for (const { edge, path, grain } of feed) {
        const key = `${edge} ${turn(grain)}`;
        sums.set(key, (sums.get(key) ?? 0) + lengthOf(path));
      }
      return [...sums].sort(([a], [b]) => (a < b ? -1 : 1));
    };
    everyPart((part, _random, name) => {
      const tooling = bearingTooling(12);
      const other = { ...part, region: transformRegion(part.region, mirror), grain: Math.PI - part.grain };
      const one = lengths(routePart(part, tooling).feed, (grain) => swap[grain]);
      const two = lengths(routePart(other, tooling).feed, (grain) => grain);
      expect(
        two.map(([key]) => key),
        name,
      ).toEqual(one.map(([key]) => key));
      for (const [at, [, length]] of two.entries()) expect(length, name).toBeCloseTo(one[at]![1], 6);
    });
  }, 600_000);

  test('nothing is cut nearer to the template than the guide lets the cutter come', () => {
    everyPart((part, random, name) => {
      const tooling = anyTooling(random);
      const { template, asRouted, gaps } = routePart(part, tooling);
      if (gaps.length > 0 || template.length === 0) return;
      const g =
        tooling.guide.kind === 'bearing' ? tooling.guide.diameter / 2 : tooling.guide.outsideDiameter / 2;
      const edges = template.flatMap(({ outer }) => outer.edges);
      for (const { outer } of asRouted) {
        for (const { from } of outer.edges) {
          const away = nearestOnEdges(edges, from).distance;
          const inBoard = locate(template, from) !== 'outside';
          const least = g - tooling.cutter.diameter / 2;
          expect(inBoard ? -away : away, name).toBeGreaterThanOrEqual(least - 1e-6);
        }
      }
    });
  }, 600_000);
});
