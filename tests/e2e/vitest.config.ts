// The browser tests: files X.e2e.ts in this folder, against the built app in one headless Chromium.
//
//   npm run e2e                  all of them
//   npm run e2e -- start         those whose file name holds "start"
//   npm run e2e -- -t Spanish    those whose title holds "Spanish"

import { defineConfig } from 'vitest/config';
import { freshRun, onSources } from '../tools/test-run.ts';

export const browserRun = {
  ...freshRun(process.env),
  globalSetup: ['tests/tools/tell-seed.ts', 'tests/e2e/tools/serve-and-launch.ts'],
  testTimeout: process.env['CAIRNMARK_LONG'] === '1' ? 600_000 : 120_000,
  hookTimeout: 60_000,
  // Two files at a time: while one page waits, the other draws.
  maxWorkers: 2,
  // How long `expect.poll` waits for the page to come round; waiting on the page itself has its own limit in open-app.ts.
  expect: { poll: { timeout: 30_000, interval: 30 } },
};

export default defineConfig({ ...onSources, test: { ...browserRun, include: ['tests/e2e/*.e2e.ts'] } });
