import { defineConfig } from 'vite';

/** The command line, bundled for Node: dependencies stay outside, tables and schemas go in. */
export default defineConfig({
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist/cli',
    target: 'node20',
    sourcemap: true,
    rollupOptions: { output: { entryFileNames: 'main.js' } },
  },
});
