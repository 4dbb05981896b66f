// Who lies within measuring error of whom: two values that differ by no more than the error of their difference (the E_n
// number of ISO/IEC 17043, at most 1; from memory). Being near is no ranking: it is not transitive (101.2, 100.6, 100.0),
// so pairs are marked and never merged.

import type { Millionths } from '../rounding/fixed.ts';
import { toMillionths } from '../rounding/fixed.ts';
import type { ReadingError } from './difference.ts';
import { differenceErrorSq, readingError } from './difference.ts';

export interface Reading {
  readonly group: string;
  readonly value: number;
  /** Expanded, in the unit of the value. */
  readonly tolerance: number;
  /** The parts of the tolerance that other readings may share, by source. */
  readonly errors: Readonly<Record<string, number>>;
}

/** Group -> the groups within measuring error of it. Compared on whole millionths, so that the boundary itself is in. */
export function withinError(readings: readonly Reading[]): ReadonlyMap<string, readonly string[]> {
  const ordered = readings.map(fixed).sort((a, b) => (a.value < b.value ? -1 : Number(a.value > b.value)));
  const widestSq = ordered.reduce((most, { error }) => larger(most, error.wholeSq), 0n);
  const widestPartsSq = ordered.reduce((most, { error }) => larger(most, error.partsSq), 0n);
  const near = new Map<string, string[]>(ordered.map(({ group }) => [group, []]));
  for (const [k, lower] of ordered.entries()) {
    // Parts that err in opposite ways add up: -2 a b is at most a2 + b2.
    const reachSq = lower.error.wholeSq + lower.error.partsSq + widestSq + widestPartsSq;
    for (let next = k + 1; next < ordered.length; next += 1) {
      const higher = ordered[next];
      if (higher === undefined) break;
      const difference = higher.value - lower.value;
      const differenceSq = difference * difference;
      if (differenceSq > reachSq) break;
      if (isNear(differenceSq, differenceErrorSq(lower.error, higher.error))) {
        near.get(lower.group)?.push(higher.group);
        near.get(higher.group)?.push(lower.group);
      }
    }
  }
  return near;
}

/** True for two values within measuring error of each other, whoever they are of. */
export function areNear(one: Unnamed, other: Unnamed): boolean {
  const [a, b] = [fixed({ ...one, group: '' }), fixed({ ...other, group: '' })];
  const difference = a.value - b.value;
  return isNear(difference * difference, differenceErrorSq(a.error, b.error));
}

type Unnamed = Omit<Reading, 'group'>;

/** Without any measuring error two values are equal or different, never near. */
const isNear = (differenceSq: bigint, errorSq: bigint): boolean => errorSq > 0n && differenceSq <= errorSq;

interface FixedReading {
  readonly group: string;
  readonly value: Millionths;
  readonly error: ReadingError;
}

function fixed({ group, value, tolerance, errors }: Reading): FixedReading {
  return { group, value: toMillionths(value), error: readingError(tolerance, errors) };
}

const larger = (a: bigint, b: bigint): bigint => (a > b ? a : b);
