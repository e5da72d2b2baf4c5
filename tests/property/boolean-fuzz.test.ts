import { expect, it } from 'vitest';
import { forFuzz, LONG } from './for-fuzz.ts';
import { FUZZ_COUNT, FUZZ_SEED } from './fuzz.ts';

it('booleans of random and adversarial outlines hold the points they should', async () => {
  const { fuzzBooleans } = await forFuzz<typeof import('./fuzz-booleans.ts')>(
    new URL('./fuzz-booleans.ts', import.meta.url),
  );
  const { failures, checked } = fuzzBooleans(FUZZ_SEED, FUZZ_COUNT);
  if (FUZZ_COUNT >= LONG) process.stdout.write(`${checked} outlines from seed ${FUZZ_SEED} on\n`);
  expect(failures.slice(0, 40)).toEqual([]);
  // Most draws must be sound, or nothing much was tested.
  expect(checked).toBeGreaterThan(0.7 * FUZZ_COUNT);
}, 86_400_000);
