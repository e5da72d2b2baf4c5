import { expect, it } from 'vitest';
import { offsetRegions } from '../../src/geometry/index.ts';
import { faultsOfOffset } from './check-offset.ts';
import { FUZZ_COUNT, FUZZ_SEED, fuzzCase, fuzzOffset } from './fuzz.ts';

it(`offsets of random and adversarial outlines lie where distance says`, () => {
  const failures: string[] = [];
  let checked = 0;
  for (let seed = FUZZ_SEED; seed < FUZZ_SEED + FUZZ_COUNT; seed++) {
    const drawn = fuzzCase(seed);
    if (drawn === undefined) continue;
    const by = fuzzOffset(drawn.random);
    const faults = faultsOfOffset(drawn.regions, by, offsetRegions(drawn.regions, by), drawn.random);
    checked++;
    if (faults.length > 0)
      failures.push(`seed ${seed}, ${drawn.family} by ${by}: ${faults.slice(0, 3).join('; ')}`);
  }
  expect(failures.slice(0, 40)).toEqual([]);
  // Most draws must be sound, or nothing much was tested.
  expect(checked).toBeGreaterThan(0.7 * FUZZ_COUNT);
}, 86_400_000);
