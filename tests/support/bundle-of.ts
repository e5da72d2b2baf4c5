import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** A module and all that it imports, packages apart from Node's own included, bundled as the project ships: the address to import it from. */
export async function bundleOf(entry: URL): Promise<string> {
  return `data:text/javascript;base64,${Buffer.from(await codeOf(entry)).toString('base64')}`;
}

/** The same as code. */
export async function codeOf(entry: URL): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: { ssr: fileURLToPath(entry), write: false, target: 'node20' },
  });
  if (!('output' in built)) throw new Error('one entry is bundled to one output');
  return built.output[0].code;
}
