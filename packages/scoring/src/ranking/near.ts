// Who lies within measuring error of whom. The error of a difference is the root of the sum of the squares of the two
// expanded tolerances (the E_n number of ISO/IEC 17043, at most 1; from memory). Being near is no ranking: it is not
// transitive (101.2, 100.6, 100.0), so pairs are marked and never merged.

import type { Millionths } from '../rounding/fixed.ts';
import { toMillionths } from '../rounding/fixed.ts';

export interface Reading {
  readonly group: string;
  readonly value: number;
  /** Expanded, in the unit of the value. */
  readonly tolerance: number;
}

/** Group -> the groups within measuring error of it. Compared on whole millionths, so that the boundary itself is in. */
export function withinError(readings: readonly Reading[]): ReadonlyMap<string, readonly string[]> {
  const ordered = readings.map(fixed).sort((a, b) => (a.value < b.value ? -1 : Number(a.value > b.value)));
  const widestSq = toMillionths(readings.reduce((most, { tolerance }) => Math.max(most, tolerance), 0)) ** 2n;
  const near = new Map<string, string[]>(ordered.map(({ group }) => [group, []]));
  for (const [k, lower] of ordered.entries()) {
    for (let next = k + 1; next < ordered.length; next += 1) {
      const higher = ordered[next];
      if (higher === undefined) break;
      const differenceSq = (higher.value - lower.value) ** 2n;
      if (differenceSq > lower.toleranceSq + widestSq) break;
      if (isNear(differenceSq, lower.toleranceSq + higher.toleranceSq)) {
        near.get(lower.group)?.push(higher.group);
        near.get(higher.group)?.push(lower.group);
      }
    }
  }
  return near;
}

/** Without any measuring error two values are equal or different, never near. */
const isNear = (differenceSq: bigint, errorSq: bigint): boolean => errorSq > 0n && differenceSq <= errorSq;

interface FixedReading {
  readonly group: string;
  readonly value: Millionths;
  readonly toleranceSq: bigint;
}

function fixed({ group, value, tolerance }: Reading): FixedReading {
  return { group, value: toMillionths(value), toleranceSq: toMillionths(tolerance) ** 2n };
}
