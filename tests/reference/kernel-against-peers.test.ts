/**
 * Offsets and booleans against two general-purpose polygon libraries from the registry, which know no arcs and get them finely
 * chorded: clipper2-ts (a port of Clipper2, Angus Johnson, BSL-1.0) and jsts (a port of the JTS Topology Suite, EPL-1.0).
 * Areas must agree to what the chords and the libraries' rounding can make: area between the boundaries, length times chord.
 */
import { describe, expect, it } from 'vitest';
import {
  areaOfRegions,
  intersectRegions,
  offsetRegions,
  perimeterOfRegions,
  type Region,
  subtractRegions,
  symmetricDifference,
  uniteRegions,
} from '../../src/geometry/index.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { FUZZ_COUNT, fuzzCase } from '../property/fuzz.ts';
import { partnerOf } from '../property/partner.ts';
import { chordedLoops } from './peers/chords.ts';
import {
  areaApart,
  areaWithClipper,
  combineWithClipper,
  offsetWithClipper,
} from './peers/with-clipper2-ts.ts';
import { combineWithJsts, offsetWithJsts, shapeOf } from './peers/with-jsts.ts';

/** Finer chords take the libraries minutes. */
const CHORD = 1e-3;
const COUNT = Math.min(2000, Math.round(FUZZ_COUNT / 12));
const OFFSETS = [1.5875, 6.35, -1.5875, -6.35, 19.05, -12];

const lengthOf = (...all: (readonly Region[])[]): number =>
  all.reduce((sum, regions) => sum + perimeterOfRegions(regions), 0);

describe('offsets', () => {
  for (const [family, draw] of Object.entries(FURNITURE)) {
    it(`of a ${family} agree with both`, () => {
      for (let seed = 1; seed <= Math.max(2, COUNT / 16); seed++) {
        const regions = draw(randomFrom(seed));
        for (const by of OFFSETS) {
          const ours = offsetRegions(regions, by);
          const length = lengthOf(regions) + lengthOf(ours) + 1;
          const label = `seed ${seed} by ${by}`;
          const theirs = offsetWithClipper(chordedLoops(regions, CHORD), by, CHORD);
          expect(areaApart(theirs, chordedLoops(ours, CHORD)), label).toBeLessThan(6 * CHORD * length);
          const jts = offsetWithJsts(shapeOf(regions, CHORD), by, CHORD);
          expect(Math.abs(jts.getArea() - areaOfRegions(ours)), label).toBeLessThan(3 * CHORD * length);
        }
      }
    });
  }
});

it('booleans of random outlines agree with both', () => {
  const kinds = [
    ['unionD', 'union', uniteRegions],
    ['intersectD', 'intersection', intersectRegions],
    ['differenceD', 'difference', subtractRegions],
    ['xorD', 'symDifference', symmetricDifference],
  ] as const;
  let compared = 0;
  for (let seed = 1; seed <= COUNT; seed++) {
    const drawn = fuzzCase(seed);
    // Islands of one micrometre and radii of a kilometre are finer, or need more chords, than the libraries are asked to bear.
    if (drawn === undefined || ['tiny edges', 'slivers', 'kilometre radius'].includes(drawn.family)) continue;
    const a = drawn.regions;
    const b = partnerOf(a, seed, drawn.random);
    const slack = 3 * CHORD * (lengthOf(a, b) + 1);
    for (const [clip, jts, ours] of kinds) {
      const result = areaOfRegions(ours(a, b));
      const label = `seed ${seed}, ${drawn.family}, ${jts}`;
      const clipped = combineWithClipper(clip, chordedLoops(a, CHORD), chordedLoops(b, CHORD));
      expect(Math.abs(areaWithClipper(clipped) - result), label).toBeLessThan(slack);
      const other = second(() => combineWithJsts(jts, shapeOf(a, CHORD), shapeOf(b, CHORD)).getArea());
      if (other === undefined) continue;
      compared++;
      expect(Math.abs(other - result), label).toBeLessThan(slack);
    }
  }
  expect(compared).toBeGreaterThan(COUNT);
}, 600_000);

/** The library gives up on some inputs with a topology exception, as its documentation says; then it has no opinion. */
function second(ask: () => number): number | undefined {
  try {
    return ask();
  } catch {
    return undefined;
  }
}
