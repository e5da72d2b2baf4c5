import type { SolidKernel } from './api.ts';

/**
 * Loads what reckons with solids (WebAssembly, about 540 kB). In a browser `wasmUrl` says where it is fetched from; Node finds it beside
 * the package.
 */
export async function loadSolidKernel(wasmUrl?: string): Promise<SolidKernel> {
  const { default: load } = await import('manifold-3d');
  const wasm = await load(wasmUrl === undefined ? undefined : { locateFile: () => wasmUrl });
  wasm.setup();
  return { wasm };
}
