import { offsetRegions } from '../../src/geometry/index.ts';
import { faultsOfOffset } from './check-offset.ts';
import { type Fuzzed, fuzzCase, fuzzOffset } from './fuzz.ts';

/** Offsets of the outlines of `count` seeds from `first` on, judged by distance. */
export function fuzzOffsets(first: number, count: number): Fuzzed {
  const failures: string[] = [];
  let checked = 0;
  for (let seed = first; seed < first + count; seed++) {
    const drawn = fuzzCase(seed);
    if (drawn === undefined) continue;
    const by = fuzzOffset(drawn.random);
    const faults = faultsOfOffset(drawn.regions, by, offsetRegions(drawn.regions, by), drawn.random);
    checked++;
    if (faults.length > 0)
      failures.push(`seed ${seed}, ${drawn.family} by ${by}: ${faults.slice(0, 3).join('; ')}`);
  }
  return { failures, checked };
}
