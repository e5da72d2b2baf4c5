/**
 * How exact the kernel is, measured in fifty decimal digits: places on the boundary of an offset lie at its distance from the source, those
 * on the boundary of a boolean on an edge given. LEGWRIGHT_FUZZ makes it longer.
 */
import { describe, expect, it } from 'vitest';
import {
  intersectRegions,
  offsetRegions,
  type Region,
  subtractRegions,
  symmetricDifference,
  transformRegion,
  uniteRegions,
} from '../../src/geometry/index.ts';
import { VERTEX_SNAP } from '../../src/geometry/tolerance.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { FUZZ_COUNT, FUZZ_SEED, fuzzCase, fuzzOffset } from '../property/fuzz.ts';
import { edgesOf } from '../property/oracle.ts';
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

  it('within 1e-9 mm for random and adversarial outlines', () => {
    const failures: string[] = [];
    for (let seed = FUZZ_SEED; seed < FUZZ_SEED + COUNT; seed++) {
      const drawn = fuzzCase(seed);
      if (drawn === undefined) continue;
      const by = fuzzOffset(drawn.random);
      const worst = worstError(drawn.regions, offsetRegions(drawn.regions, by), by);
      if (!(worst < 1e-9)) failures.push(`seed ${seed}, ${drawn.family} by ${by}: ${worst}`);
    }
    expect(failures).toEqual([]);
  });
});

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

  it('within the snap for random and adversarial outlines, vertices nearer to each other than that being one', () => {
    const failures: string[] = [];
    for (let seed = FUZZ_SEED; seed < FUZZ_SEED + COUNT; seed++) {
      const drawn = fuzzCase(seed);
      if (drawn === undefined) continue;
      const a = drawn.regions;
      const b = partnerOf(a, seed, drawn.random);
      for (const combine of COMBINE) {
        const worst = worstError([...a, ...b], combine(a, b), 0);
        if (!(worst < VERTEX_SNAP)) failures.push(`seed ${seed}, ${drawn.family}, ${combine.name}: ${worst}`);
      }
    }
    expect(failures).toEqual([]);
  });
});
