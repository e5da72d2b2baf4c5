import {
  areaOfRegions,
  findFaults,
  intersectRegions,
  perimeterOfRegions,
  type Region,
  subtractRegions,
  symmetricDifference,
  uniteRegions,
  type Vec,
} from '../../src/geometry/index.ts';
import type { Random } from '../cases/outlines/random.ts';
import { type Fuzzed, judgeSeeds } from './fuzz.ts';
import { boxOf, distanceTo, edgesOf, placeOn, rightAt, turnsRound } from './oracle.ts';
import { partnerOf } from './partner.ts';

/** The four booleans of the outlines of `count` seeds from `first` on and a partner of each, judged by the points they hold and by areas. */
export function fuzzBooleans(first: number, count: number): Fuzzed {
  return judgeSeeds(first, count, ({ seed, family, regions, random }) => ({
    what: family,
    faults: faultsOfBooleans(regions, partnerOf(regions, seed, random), random),
  }));
}

function faultsOfBooleans(a: readonly Region[], b: readonly Region[], r: Random): string[] {
  const union = uniteRegions(a, b);
  const both = intersectRegions(a, b);
  const first = subtractRegions(a, b);
  const either = symmetricDifference(a, b);
  const faults: string[] = [];
  const results: [string, readonly Region[], (inA: boolean, inB: boolean) => boolean][] = [
    ['union', union, (p, q) => p || q],
    ['intersection', both, (p, q) => p && q],
    ['difference', first, (p, q) => p && !q],
    ['symmetric difference', either, (p, q) => p !== q],
  ];
  const edges = [...edgesOf(a), ...edgesOf(b)];
  const points = probes(a, b, r);
  const tags = new Set(edges.map(({ tag }) => tag));
  const edgesOfA = edgesOf(a);
  const edgesOfB = edgesOf(b);
  const inA = points.map((p) => turnsRound(edgesOfA, p) > 0);
  const inB = points.map((p) => turnsRound(edgesOfB, p) > 0);
  for (const [name, result, belongs] of results) {
    for (const { kind, message } of findFaults(result)) faults.push(`${name}: ${kind}: ${message}`);
    const found = edgesOf(result);
    for (const edge of found) {
      if (!tags.has(edge.tag)) faults.push(`${name}: unknown tag ${edge.tag.id}`);
      const p = placeOn(edge, 0.37);
      const off = distanceTo(edges, p);
      if (off > 1e-6) faults.push(`${name}: boundary ${off} mm off at (${p.x}, ${p.y})`);
    }
    points.forEach((p, i) => {
      const expected = belongs(inA[i]!, inB[i]!);
      if (turnsRound(found, p) > 0 !== expected) {
        faults.push(`${name}: (${p.x}, ${p.y}) should be ${expected ? 'inside' : 'outside'}`);
      }
    });
  }
  const sum = areaOfRegions(a) + areaOfRegions(b);
  const length = perimeterOfRegions(a) + perimeterOfRegions(b);
  const slack = 1e-7 * (length + 1) + 1e-12 * sum;
  const check = (what: string, value: number, expected: number): void => {
    if (Math.abs(value - expected) > slack) faults.push(`${what}: ${value} instead of ${expected}`);
  };
  check('area of union and intersection', areaOfRegions(union) + areaOfRegions(both), sum);
  check('area of difference and intersection', areaOfRegions(first) + areaOfRegions(both), areaOfRegions(a));
  check('area of symmetric difference', areaOfRegions(either), sum - 2 * areaOfRegions(both));
  return faults;
}

/** Places at random and beside edges of both, none on an edge. */
function probes(a: readonly Region[], b: readonly Region[], r: Random): Vec[] {
  const { minX, minY, maxX, maxY } = boxOf([...a, ...b]);
  const edges = [...edgesOf(a), ...edgesOf(b)];
  const found: Vec[] = [];
  for (let i = 0; i < 12; i++) found.push({ x: r.between(minX, maxX), y: r.between(minY, maxY) });
  for (let i = 0; i < 16; i++) {
    const edge = r.pick(edges);
    const t = r.between(0.02, 0.98);
    const p = placeOn(edge, t);
    const n = rightAt(edge, t);
    const step = r.pick([5e-6, -5e-6, 1e-3, -1e-3]);
    found.push({ x: p.x + n.x * step, y: p.y + n.y * step });
  }
  return found.filter((p) => distanceTo(edges, p) > 2e-6);
}
