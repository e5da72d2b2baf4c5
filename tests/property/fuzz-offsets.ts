import { offsetRegions } from '../../src/geometry/index.ts';
import { faultsOfOffset } from './check-offset.ts';
import { type Fuzzed, fuzzOffset, judgeSeeds } from './fuzz.ts';

/** Offsets of the outlines of `count` seeds from `first` on, judged by distance. */
export function fuzzOffsets(first: number, count: number): Fuzzed {
  return judgeSeeds(first, count, ({ family, regions, random }) => {
    const by = fuzzOffset(random);
    return {
      what: `${family} by ${by}`,
      faults: faultsOfOffset(regions, by, offsetRegions(regions, by), random),
    };
  });
}
