import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/bench/**'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
    // What is waited for may take long where other tests run beside it.
    expect: { poll: { timeout: 30_000 } },
    pool: 'threads',
    // Every core: by default one is kept free for watching.
    maxWorkers: '100%',
    coverage: { provider: 'v8', include: ['src/**/*.ts'], reporter: ['text-summary', 'html'] },
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
  },
});
