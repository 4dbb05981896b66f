import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { ROOT } from './files.ts';
import { fixture } from './fixture.ts';

const COUNTS = { numPassedTests: 7, numFailedTests: 0, numPendingTests: 2, numTodoTests: 1 };

/** A program that leaves counts as a test run does. */
const leaving = (counts: object): string =>
  `require('fs').writeFileSync(process.env.CAIRNMARK_COUNTS, JSON.stringify(${JSON.stringify(counts)}));`;

const FILES = {
  'package.json': JSON.stringify({
    scripts: {
      good: 'node -e 0',
      bad: 'node -e "process.exit(3)"',
      tests: 'node tests.cjs',
      failing: 'node failing.cjs',
      uncovered: 'node tests.cjs && node -e "process.exit(1)"',
    },
  }),
  'tests.cjs': leaving(COUNTS),
  'failing.cjs': `${leaving({ ...COUNTS, numFailedTests: 3 })} process.exitCode = 1;`,
};

it.each([
  [['good', 'tests'], '8 passed, 0 failed, 3 skipped', 0],
  [['bad', 'good'], '1 passed, 1 failed, 0 skipped', 1],
  [['failing', 'good'], '8 passed, 3 failed, 3 skipped', 1],
  [['uncovered'], '7 passed, 1 failed, 3 skipped', 1],
  [['no-such-script'], '0 passed, 1 failed, 0 skipped', 1],
  [[], '0 passed, 0 failed, 0 skipped', 1],
])('%j closes with "%s"', (names, line, code) => {
  const run = spawnSync(process.execPath, [join(ROOT, 'tests/tools/run.mjs'), ...names], {
    cwd: fixture(FILES),
    encoding: 'utf8',
  });
  expect(run.stdout.trimEnd().split('\n').at(-1)).toBe(line);
  expect(run.status).toBe(code);
});
