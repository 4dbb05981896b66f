// The best possible build on kits of a classroom, 6 to 15 kinds and 5 to 12 pieces, as a distribution; and by how much it is
// faster than trying everything, on kits that are small enough for that.

import { bestBuild } from '@cairnmark/scoring';
import { tryEverything } from '../reference/lab/best-brute-force.ts';
import { CLASS_KITS, SMALL_KITS, seededTask } from '../reference/lab/best-kits.ts';
import type { Report } from './measure.ts';
import { interleave, median } from './measure.ts';

export const name = 'The best possible build: times over kits, and times faster than trying every order and way up';

const KITS = 200;
const LIMIT = 5_000_000;
const MOST_TOWERS = 10_000_000;
/** The search as it is, for the tallest; and with pieces beside, frictions, points and other goals. */
const FAMILIES = [
  ['tallest', false],
  ['every goal and rule', true],
] as const;

export async function run(report: Report): Promise<void> {
  for (const [label, everything] of FAMILIES) {
    const times = Array.from({ length: KITS }, (_, k) => {
      const task = seededTask(k + 1, CLASS_KITS, everything);
      const start = performance.now();
      const { kind } = bestBuild(task, LIMIT);
      return { timeMs: performance.now() - start, kind };
    });
    const sorted = times.map(({ timeMs }) => timeMs).sort((a, b) => a - b);
    const at = (share: number): number => sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN;
    const row = (what: string, value: number, unit: string, target?: string): void =>
      report({ label: `${label}: ${what}`, value, unit, ...(target === undefined ? {} : { target }) });
    row('median', at(0.5), 'ms');
    row('95 % of kits within', at(0.95), 'ms');
    row('slowest', at(1), 'ms');
    row('95 % / median', at(0.95) / at(0.5), 'x');
    row('work limit met', times.filter(({ kind }) => kind === 'not-finished').length, 'kits', 'few');
  }
  const ratios = Array.from({ length: 20 }, (_, k) => {
    const task = seededTask(1000 + k, { ...SMALL_KITS, kinds: [4, 5], pieces: [4, 4] }, false);
    const { all, search } = interleave(
      { all: () => tryEverything(task, MOST_TOWERS), search: () => bestBuild(task, LIMIT) },
      3,
    );
    return all / search;
  });
  report({
    label: 'four pieces of few kinds: trying everything / search, median',
    value: median(ratios),
    unit: 'x',
    target: 'above 1',
  });
}
