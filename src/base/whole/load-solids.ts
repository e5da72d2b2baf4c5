import { loadSolidKernel, type SolidKernel } from '../solids/index.ts';
import { addStanding, type StandingOptions } from './add-standing.ts';
import type { BuiltBase } from './build-base.ts';

/** What reckons with solids, and all that is told of a base by them: code that only views, joints and patterns need does not come with it. */
export interface Solids extends SolidKernel {
  /** The same base with how it weighs and stands. */
  readonly stand: (built: BuiltBase, options: StandingOptions) => BuiltBase;
}

/** Loads them once; in a browser `wasmUrl` says where their module is. */
export async function loadSolids(wasmUrl?: string): Promise<Solids> {
  const kernel = await loadSolidKernel(wasmUrl);
  return { ...kernel, stand: (built, options) => addStanding(built, kernel, options) };
}
