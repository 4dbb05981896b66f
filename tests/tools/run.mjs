// Runs npm scripts one after another, every one even when an earlier one fails, and closes with one line that adds up
// what passed: a script counts as one check, a test run counts with each of its tests.
//
//   node tests/tools/run.mjs types lint unit

import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Tally
 * @typedef {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number }} TestRun
 */

/** Where a test run that finds CAIRNMARK_COUNTS set leaves its counts (see vitest.config.ts). */
const COUNTS = resolve('.cache/test-counts.json');

const tallies = process.argv.slice(2).map(runScript);
const [passed, failed, skipped] = [total('passed'), total('failed'), total('skipped')];
process.stdout.write(`\n${passed} passed, ${failed} failed, ${skipped} skipped\n`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;

/**
 * @param {string} name
 * @returns {Tally}
 */
function runScript(name) {
  process.stdout.write(`\n== npm run ${name}\n`);
  mkdirSync('.cache', { recursive: true });
  rmSync(COUNTS, { force: true });
  const { status } = spawnSync('npm', ['run', '--silent', name], {
    env: { ...process.env, CAIRNMARK_COUNTS: COUNTS },
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  const tally = countedTests() ?? { passed: status === 0 ? 1 : 0, failed: 0, skipped: 0 };
  // A test run can fail with no failing test: a file that does not load, a coverage below its threshold.
  const failedAsAWhole = status !== 0 && tally.failed === 0;
  process.stdout.write(`== npm run ${name}: ${status === 0 ? 'passed' : 'FAILED'}\n`);
  return failedAsAWhole ? { ...tally, failed: 1 } : tally;
}

/** @returns {Tally | undefined} */
function countedTests() {
  try {
    /** @type {TestRun} */
    const run = JSON.parse(readFileSync(COUNTS, 'utf8'));
    return { passed: run.numPassedTests, failed: run.numFailedTests, skipped: run.numPendingTests + run.numTodoTests };
  } catch {
    return undefined;
  }
}

/** @param {keyof Tally} key */
function total(key) {
  return tallies.reduce((sum, tally) => sum + tally[key], 0);
}
