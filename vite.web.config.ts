import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';

/** Layers whose modules do nothing but define things: what the page does not use of them is left out of it. */
const PURE_LAYERS =
  /\/src\/(core|measure|geometry|sketch|materials|base|routing|wood|checks|drawing|print|design)\//;

const treeshake = { moduleSideEffects: (id: string): boolean => !PURE_LAYERS.test(id) };

/** The app: static files that any web host can carry, from any folder of it. */
export default defineConfig({
  root: 'src/web',
  base: './',
  publicDir: 'public',
  plugins: [preact({ devToolsEnabled: false, prefreshEnabled: false })],
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
