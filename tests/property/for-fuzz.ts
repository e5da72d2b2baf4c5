import { bundleOf } from '../support/bundle-of.ts';
import { FUZZ_COUNT } from './fuzz.ts';

/** From so many on a run is made outside the test runner's indirection between modules, which would double its time. */
export const LONG = 5_000;

/** A module of a fuzz: as the test runner loads it, or for a long run bundled. */
export async function forFuzz<T>(module: URL): Promise<T> {
  return import(/* @vite-ignore */ FUZZ_COUNT < LONG ? module.pathname : await bundleOf(module));
}
