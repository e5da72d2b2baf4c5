import { chmodSync } from 'node:fs';
import { defineConfig, type Plugin } from 'vite';

const FILE = 'dist/cli/main.js';

/** npm makes a command executable when it is installed; what is built anew must be so as well. */
const executable: Plugin = {
  name: 'legwright-executable',
  closeBundle: () => chmodSync(FILE, 0o755),
};

/** The command line, bundled for Node: dependencies stay outside, tables and schemas go in. */
export default defineConfig({
  plugins: [executable],
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist/cli',
    target: 'node20',
    sourcemap: true,
    rollupOptions: { output: { entryFileNames: 'main.js' } },
  },
});
