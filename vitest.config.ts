import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { conditions: ['@cairnmark/source'] },
  ssr: { resolve: { conditions: ['@cairnmark/source'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.ts', 'tests/**/*.test.ts'],
    testTimeout: 60_000,
  },
});
