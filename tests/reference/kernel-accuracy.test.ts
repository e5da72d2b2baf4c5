/**
 * How exact the kernel is, measured in fifty decimal digits: places on the boundary of an offset lie at its distance from the source, those
 * on the boundary of a boolean on an edge given. LEGWRIGHT_FUZZ makes it longer.
 */
import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import {
  type Edge,
  intersectEdges,
  intersectRegions,
  offsetRegions,
  type Region,
  subtractRegions,
  symmetricDifference,
  transformRegion,
  uniteRegions,
  type Vec,
} from '../../src/geometry/index.ts';
import { VERTEX_SNAP } from '../../src/geometry/tolerance.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { FUZZ_COUNT, FUZZ_SEED, fuzzCase, fuzzOffset } from '../property/fuzz.ts';
import { distanceToEdge, edgesOf } from '../property/oracle.ts';
import { partnerOf } from '../property/partner.ts';
import { preciseDistance, precisePlacesOn } from './precise-distance.ts';

const COUNT = Math.max(8, Math.round(FUZZ_COUNT / 6));
const MOST_EDGES = 80;

/** The worst error of the places on the boundary of `result`, each of which should lie `by` from the source, mm. */
function worstError(source: readonly Region[], result: readonly Region[], by: number): number {
  const edges = edgesOf(source);
  let worst = 0;
  for (const edge of edgesOf(result).slice(0, MOST_EDGES)) {
    for (const p of precisePlacesOn(edge)) {
      worst = Math.max(worst, preciseDistance(edges, p).sub(Math.abs(by)).abs().toNumber());
    }
  }
  return worst;
}

describe('the boundary of an offset lies at the offset’s distance', () => {
  for (const [family, draw] of Object.entries(FURNITURE)) {
    it(`within 1e-11 mm for a ${family}`, () => {
      for (let seed = 1; seed <= Math.max(2, COUNT / 25); seed++) {
        const regions = draw(randomFrom(seed));
        for (const by of [1.5875, -6.35, 19.05])
          expect(worstError(regions, offsetRegions(regions, by), by), `seed ${seed} by ${by}`).toBeLessThan(
            1e-11,
          );
      }
    });
  }

  it('within 1e-9 mm, or the last digits of its largest circle, for random and adversarial outlines', () => {
    const failures: string[] = [];
    for (let seed = FUZZ_SEED; seed < FUZZ_SEED + COUNT; seed++) {
      const drawn = fuzzCase(seed);
      if (drawn === undefined) continue;
      const by = fuzzOffset(drawn.random);
      const worst = worstError(drawn.regions, offsetRegions(drawn.regions, by), by);
      if (!(worst < Math.max(1e-9, lastDigits(drawn.regions))))
        failures.push(`seed ${seed}, ${drawn.family} by ${by}: ${worst}`);
    }
    expect(failures).toEqual([]);
  });
});

/** What the last digits of the largest radius are worth, mm: nothing that hangs on such a circle can be known better. */
function lastDigits(regions: readonly Region[]): number {
  return edgesOf(regions).reduce(
    (most, edge) => (edge.kind === 'arc' ? Math.max(most, 2 * Number.EPSILON * edge.radius) : most),
    0,
  );
}

const COMBINE = [uniteRegions, intersectRegions, subtractRegions, symmetricDifference];

describe('the boundary of a boolean lies on the edges given', () => {
  it('within 1e-11 mm for outlines of furniture laid across each other', () => {
    for (const [family, draw] of Object.entries(FURNITURE)) {
      const a = draw(randomFrom(1));
      const b = draw(randomFrom(2)).map((region) =>
        transformRegion(region, { turn: 0.1, shift: { x: 5, y: 5 }, scale: 1, mirrored: false }),
      );
      for (const combine of COMBINE)
        expect(worstError([...a, ...b], combine(a, b), 0), `${family}, ${combine.name}`).toBeLessThan(1e-11);
    }
  });

  it('within 1e-9 mm for random and adversarial outlines, or half the snap where two vertices of the truth lie nearer than that', () => {
    const failures: string[] = [];
    for (let seed = FUZZ_SEED; seed < FUZZ_SEED + COUNT; seed++) {
      const drawn = fuzzCase(seed);
      if (drawn === undefined) continue;
      const a = drawn.regions;
      const b = partnerOf(a, seed, drawn.random);
      const source = edgesOf([...a, ...b]);
      for (const combine of COMBINE) {
        for (const edge of edgesOf(combine(a, b)).slice(0, MOST_EDGES)) {
          const off = Math.max(...precisePlacesOn(edge).map((p) => preciseDistance(source, p).toNumber()));
          if (off < 1e-9) continue;
          const isTwin = hasTwin(source, edge.from) || hasTwin(source, edge.to);
          if (!isTwin || off > VERTEX_SNAP / 2)
            failures.push(`seed ${seed}, ${drawn.family}, ${combine.name}: ${off}`);
        }
      }
    }
    expect(failures).toEqual([]);
  });

  it('within 1e-11 mm where circles of ten kilometres cross lines and each other', () => {
    const tag = { id: 'side', role: 'routed' } as const;
    const straight = (from: Vec, to: Vec): Edge => ({ kind: 'line', from, to, tag });
    for (let seed = 1; seed <= 40; seed++) {
      const r = randomFrom(seed);
      // A board with one side all but straight, its ends as near to the circle as numbers of that size can say.
      const boardWith = (x: number, radius: number, lean: number): Region => {
        const centre = { x: x - radius, y: 300 + lean * radius };
        const at = (y: number): Vec => ({
          x:
            x - (y - centre.y) ** 2 / (radius + Math.sqrt((radius - y + centre.y) * (radius + y - centre.y))),
          y,
        });
        const low = at(0);
        const high = at(700);
        const side: Edge = { kind: 'arc', from: low, to: high, centre, radius, turn: 1, tag };
        const left = { x: low.x - 200, y: 0 };
        const top = { x: left.x, y: 700 };
        return {
          outer: { edges: [side, straight(high, top), straight(top, left), straight(left, low)] },
          holes: [],
        };
      };
      const a = boardWith(60, r.between(2e6, 9e6), 0);
      const b = [
        transformRegion(boardWith(50, r.between(2e6, 9e6), 0), {
          turn: 0.07,
          shift: { x: 35, y: 9 },
          scale: 1,
          mirrored: false,
        }),
      ];
      for (const combine of COMBINE) {
        const found = edgesOf(combine([a], b)).flatMap(({ from }) => [from]);
        const source = edgesOf([a, ...b]);
        // Crossings; ends that were given may lie beside their circle.
        const ends = new Set(source.flatMap(({ from }) => [`${from.x} ${from.y}`]));
        const crossings = found.filter(({ x, y }) => !ends.has(`${x} ${y}`));
        expect(crossings.length).toBeGreaterThan(0);
        for (const p of crossings) {
          const place = { x: new Decimal(p.x), y: new Decimal(p.y) };
          expect(preciseDistance(source, place).toNumber(), `seed ${seed}, ${combine.name}`).toBeLessThan(
            1e-11,
          );
        }
      }
    }
  });
});

/** Do two vertices of the true outline, ends of edges or crossings, lie beside a place and within the snap of each other, though more than 1e-9 mm apart? */
function hasTwin(source: readonly Edge[], at: Vec): boolean {
  const reach = 3 * VERTEX_SNAP;
  const near = source.filter((edge) => distanceToEdge(edge, at) <= reach);
  const places = near.flatMap(({ from, to }) => [from, to]);
  near.forEach((a, i) => {
    for (const b of near.slice(i + 1)) {
      const met = intersectEdges(a, b, 1e-13);
      if (met.kind === 'points') places.push(...met.points.map(({ point }) => point));
    }
  });
  const apart = (p: Vec, q: Vec): number => Math.hypot(p.x - q.x, p.y - q.y);
  const beside = places.filter((p) => apart(p, at) <= reach);
  return beside.some((p) => beside.some((q) => apart(p, q) > 1e-9 && apart(p, q) <= 1.01 * VERTEX_SNAP));
}
