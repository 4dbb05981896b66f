import { defineConfig } from 'vitest/config';
import { freshRun, onSources } from './tests/tools/test-run.ts';

export default defineConfig({
  ...onSources,
  test: {
    ...freshRun(process.env),
    include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.ts', 'apps/*/vite/*.test.ts', 'tests/**/*.test.ts'],
    // In the long run one family may take minutes.
    testTimeout: process.env['CAIRNMARK_LONG'] === '1' ? 900_000 : 60_000,
    // No test leaves anything behind in a module, so the files share one loading of the packages: four times faster.
    pool: 'threads',
    // Also where there are two cores: by itself vitest leaves one of them idle.
    maxWorkers: 2,
    isolate: false,
    globalSetup: 'tests/tools/tell-seed.ts',
    coverage: {
      provider: 'v8',
      include: ['packages/*/src/**/*.ts'],
      reporter: [['text', { skipFull: true }]],
      thresholds: {
        'packages/geometry/src/**': { lines: 95 },
        'packages/scoring/src/**': { lines: 95 },
      },
    },
  },
});
