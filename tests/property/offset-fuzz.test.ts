import { expect, it } from 'vitest';
import { forFuzz, LONG } from './for-fuzz.ts';
import { FUZZ_COUNT, FUZZ_SEED } from './fuzz.ts';

it(`offsets of random and adversarial outlines lie where distance says`, async () => {
  const { fuzzOffsets } = await forFuzz<typeof import('./fuzz-offsets.ts')>(
    new URL('./fuzz-offsets.ts', import.meta.url),
  );
  const { failures, checked } = fuzzOffsets(FUZZ_SEED, FUZZ_COUNT);
  if (FUZZ_COUNT >= LONG) process.stdout.write(`${checked} outlines from seed ${FUZZ_SEED} on\n`);
  expect(failures.slice(0, 40)).toEqual([]);
  // Most draws must be sound, or nothing much was tested.
  expect(checked).toBeGreaterThan(0.7 * FUZZ_COUNT);
}, 86_400_000);
