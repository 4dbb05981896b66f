import { defineConfig } from 'vitest/config';

const given = process.env['CAIRNMARK_SEED'];
const seed = given ?? String(Math.floor(Math.random() * 2 ** 31));
const countsFile = process.env['CAIRNMARK_COUNTS'];

export default defineConfig({
  resolve: { conditions: ['@cairnmark/source'] },
  ssr: { resolve: { conditions: ['@cairnmark/source'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.ts', 'tests/**/*.test.ts'],
    // In the long run one family may take minutes.
    testTimeout: process.env['CAIRNMARK_LONG'] === '1' ? 900_000 : 60_000,
    // No test leaves anything behind in a module, so the files share one loading of the packages: four times faster.
    pool: 'threads',
    isolate: false,
    // One fresh seed a run, told once at its start and handed to every test file: see tests/tools/share.ts.
    env: { CAIRNMARK_SEED: seed },
    globalSetup: 'tests/tools/tell-seed.ts',
    reporters: countsFile === undefined ? ['default'] : ['default', ['json', { outputFile: countsFile }]],
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
