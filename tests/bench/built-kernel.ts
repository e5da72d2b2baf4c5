import { bundleOf } from '../support/bundle-of.ts';

/**
 * The outline kernel as it ships: one bundle, without the indirection that the test runner puts between modules, which would cost
 * a small boolean as much as its work.
 */
export async function builtKernel(): Promise<typeof import('../../src/geometry/index.ts')> {
  return import(/* @vite-ignore */ await bundleOf(new URL('../../src/geometry/index.ts', import.meta.url)));
}
