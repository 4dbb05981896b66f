// Sets of rows by which the kind can be favoured, each with its smallest points: by ones, by twos, and so on, or by the sum.

import type { Meter } from './exact/meter.ts';
import type { FoundRule } from './smallest-rule.ts';
import { everyRow, mayDo, smallestRule, someSum } from './smallest-rule.ts';
import type { WholeFavour } from './whole-task.ts';

export interface FoundSet extends FoundRule {
  readonly rows: readonly number[];
}

export interface FoundSets {
  readonly found: readonly FoundSet[];
  /** Whether every set was looked at. */
  readonly all: boolean;
}

export const NONE: FoundSets = { found: [], all: true };

/** Set by set, until a size is done and there are enough; null where the work limit was reached. */
export function byRows(task: WholeFavour, wanted: number, meter: Meter): FoundSets | null {
  const found: FoundSet[] = [];
  const needed = neededRows(task);
  let size = 1;
  for (; size <= task.rows && found.length < wanted; size += 1) {
    if (size === MANY_ROWS && found.length === 0) {
      const { status } = someSum(task, null, true, meter);
      if (status !== 'found') return status === 'none' ? NONE : null;
    }
    const ofSize = setsOfSize(task, size, needed, found, meter);
    if (ofSize === null) return null;
    found.push(...ofSize);
  }
  return { found, all: size > task.rows };
}

/** Before so many rows are tried set by set, it is asked whether all rows together do. */
const MANY_ROWS = 3;

/** Those that work, by their sums. */
function setsOfSize(
  task: WholeFavour,
  size: number,
  needed: readonly number[],
  found: readonly FoundSet[],
  meter: Meter,
): readonly FoundSet[] | null {
  const ofSize: FoundSet[] = [];
  for (const rows of setsOf(size, task.rows)) {
    if (!holds(rows, needed) || found.some((one) => holds(rows, one.rows))) continue;
    const answer = smallestRule(task, rows, null, meter);
    if (answer.status === 'stopped') return null;
    if (answer.status === 'found') ofSize.push({ ...answer, rows });
  }
  return ofSize.sort((a, b) => Number(a.sum - b.sum));
}

/** Rows without which nothing works, whatever the others give. */
function neededRows(task: WholeFavour): readonly number[] {
  const all = everyRow(task);
  return all.filter(
    (row) =>
      !mayDo(
        task,
        all.filter((one) => one !== row),
      ),
  );
}

/** Each time the smallest sum among the sets that hold none of those found; of these the one with fewest rows. */
export function bySum(task: WholeFavour, wanted: number, meter: Meter): FoundSets | null {
  const smallest = smallestSum(task, meter);
  if (typeof smallest === 'string') return smallest === 'none' ? NONE : null;
  const found: FoundSet[] = [];
  while (found.length < wanted) {
    const next = smallestSet(task, found, found.length === 0 ? smallest + 1n : null, meter);
    if (next === 'stopped') return null;
    if (next === null) return { found, all: true };
    found.push(next);
  }
  return { found, all: false };
}

/** Of all rows. What two rows do is found quickly, and leaves less to look for. */
function smallestSum(task: WholeFavour, meter: Meter): bigint | 'none' | 'stopped' {
  let least: bigint | null = null;
  for (let size = 1; size < MANY_ROWS && size <= task.rows; size += 1) {
    const sets = setsOfSize(task, size, [], [], meter);
    if (sets === null) return 'stopped';
    const [first] = sets;
    if (first !== undefined && (least === null || first.sum < least)) least = first.sum;
  }
  const answer = someSum(task, least, false, meter);
  if (answer.status === 'found') return answer.sum;
  return answer.status === 'none' ? (least ?? 'none') : 'stopped';
}

function smallestSet(
  task: WholeFavour,
  found: readonly FoundSet[],
  below: bigint | null,
  meter: Meter,
): FoundSet | null | 'stopped' {
  let best: FoundSet | null = null;
  for (let size = 1; size <= task.rows; size += 1) {
    for (const rows of setsOf(size, task.rows)) {
      if (found.some((one) => holds(rows, one.rows))) continue;
      const answer = smallestRule(task, rows, best?.sum ?? below, meter);
      if (answer.status === 'stopped') return 'stopped';
      if (answer.status === 'found') best = { ...answer, rows };
      // The smallest sum of all is known: whoever has it is the one.
      if (best !== null && below !== null) return best;
    }
  }
  return best;
}

const holds = (rows: readonly number[], others: readonly number[]): boolean =>
  others.every((row) => rows.includes(row));

/** All sets of so many of the first `count` whole numbers, the ones that stand first first. */
function setsOf(size: number, count: number): readonly (readonly number[])[] {
  if (size === 0) return [[]];
  return Array.from({ length: count - size + 1 }, (_, first) =>
    setsOf(size - 1, count - first - 1).map((rest) => [first, ...rest.map((one) => one + first + 1)]),
  ).flat();
}
