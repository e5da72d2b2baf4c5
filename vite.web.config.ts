import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import preact from '@preact/preset-vite';
import { defineConfig, type Plugin, runnerImport } from 'vite';

/** Layers whose modules do nothing but define things: what the page does not use of them is left out of it. */
const PURE_LAYERS =
  /\/src\/(core|measure|geometry|sketch|materials|base|routing|wood|checks|drawing|print|design)\//;

const treeshake = { moduleSideEffects: (id: string): boolean => !PURE_LAYERS.test(id) };

const PUBLIC = ['manifest.webmanifest', 'icon.svg', 'icon-192.png', 'icon-512.png', 'icon-maskable-512.png'];

/** The service worker, with the names of all that was built and a version that changes with any of it. */
function offline(): Plugin {
  return {
    name: 'legwright-offline',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        const built = Object.values(bundle).filter(({ fileName }) => !fileName.endsWith('.map'));
        const hash = createHash('sha256');
        for (const file of built) hash.update(file.type === 'chunk' ? file.code : file.source);
        for (const name of PUBLIC) hash.update(readFileSync(`src/web/public/${name}`));
        const files = [
          './',
          ...built.map(({ fileName }) => `./${fileName}`),
          ...PUBLIC.map((name) => `./${name}`),
        ];
        const source = readFileSync('src/web/offline/service-worker.js', 'utf8')
          .replace('self.__FILES__', JSON.stringify(files.filter((name) => name !== './index.html')))
          .replace('self.__VERSION__', JSON.stringify(hash.digest('hex').slice(0, 16)));
        this.emitFile({ type: 'asset', fileName: 'service-worker.js', source });
      },
    },
  };
}

const LISTED = 'virtual:listed-forms';

/** The list of forms with their pictures, computed by the engine itself while the app is built. */
function formsListed(): Plugin {
  return {
    name: 'legwright-forms-listed',
    resolveId: (id) => (id === LISTED ? `\0${LISTED}` : undefined),
    async load(id) {
      if (id !== `\0${LISTED}`) return undefined;
      type Module = typeof import('./src/web/forms/listed-forms.ts');
      const { module, dependencies } = await runnerImport<Module>(resolve('src/web/forms/listed-forms.ts'));
      for (const file of dependencies) this.addWatchFile(file);
      return `export const LISTED_FORMS = ${JSON.stringify(module.listedForms())};`;
    },
  };
}

/** The app: static files that any web host can carry, from any folder of it. */
export default defineConfig({
  root: 'src/web',
  base: './',
  publicDir: 'public',
  plugins: [preact({ devToolsEnabled: false, prefreshEnabled: false }), formsListed(), offline()],
  worker: { format: 'es', rollupOptions: { treeshake } },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: { treeshake },
  },
});
