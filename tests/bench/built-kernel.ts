import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/**
 * The outline kernel as it ships: one bundle, without the indirection that the test runner puts between modules, which would cost
 * a small boolean as much as its work.
 */
export async function builtKernel(): Promise<typeof import('../../src/geometry/index.ts')> {
  const entry = fileURLToPath(new URL('../../src/geometry/index.ts', import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: { ssr: entry, write: false, target: 'node20' },
  });
  if (!('output' in built)) throw new Error('the bundle of the kernel has one output');
  const code = Buffer.from(built.output[0].code).toString('base64');
  return import(/* @vite-ignore */ `data:text/javascript;base64,${code}`);
}
