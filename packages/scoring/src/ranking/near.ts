// Who lies within measuring error of whom: two values that differ by no more than the error of their difference (the E_n
// number of ISO/IEC 17043, at most 1; from memory). Being near is no ranking: it is not transitive (101.2, 100.6, 100.0),
// so pairs are marked and never merged. The error of a difference is that of what follows the measures evenly, and with
// it, in quadrature, the swing of what follows them in steps.

import type { Millionths } from '../rounding/fixed.ts';
import { toMillionths } from '../rounding/fixed.ts';
import type { SteppedPoints } from '../types.ts';
import type { ReadingError } from './difference.ts';
import { differenceErrorSq, readingError, rootAbove } from './difference.ts';
import type { SteppedByMeasure } from './swing.ts';
import { steppedByMeasure, swingsSq } from './swing.ts';

export interface Reading {
  readonly group: string;
  readonly value: number;
  /** Expanded, in the unit of the value. */
  readonly tolerance: number;
  /** The parts of the tolerance that other readings may share, by source. */
  readonly errors: Readonly<Record<string, number>>;
  /** What of the value follows measures in steps; nothing where it is not said. */
  readonly steps?: readonly SteppedPoints[];
}

/** Group -> the groups within measuring error of it. Compared on whole millionths, so that the boundary itself is in. */
export function withinError(readings: readonly Reading[]): ReadonlyMap<string, readonly string[]> {
  const ordered = readings.map(fixed).sort((a, b) => (a.value < b.value ? -1 : Number(a.value > b.value)));
  let widest = 0n;
  for (const { reach } of ordered) if (reach > widest) widest = reach;
  const near = new Map<string, string[]>(ordered.map(({ group }) => [group, []]));
  for (const [k, lower] of ordered.entries()) {
    for (let next = k + 1; next < ordered.length; next += 1) {
      const higher = ordered[next];
      if (higher === undefined) break;
      if (higher.value - lower.value > lower.reach + widest) break;
      if (isNear(lower, higher)) {
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
  return isNear(a, b);
}

type Unnamed = Omit<Reading, 'group'>;

interface FixedReading {
  readonly group: string;
  readonly value: Millionths;
  readonly error: ReadingError;
  readonly steps: SteppedByMeasure;
  /** The error of a difference of two readings is no more than their reaches together. */
  readonly reach: Millionths;
}

const NO_STEPS: SteppedByMeasure = new Map();

function fixed({ group, value, tolerance, errors, steps = [] }: Reading): FixedReading {
  const error = readingError(tolerance, errors);
  const stepped = steps.length === 0 ? NO_STEPS : steppedByMeasure(steps);
  let reach = rootAbove(error.wholeSq);
  for (const one of stepped.values()) reach += one.reach;
  return { group, value: toMillionths(value), error, steps: stepped, reach };
}

/** Without any measuring error two values are equal or different, never near. */
function isNear(a: FixedReading, b: FixedReading): boolean {
  const difference = a.value - b.value;
  const evenSq = differenceErrorSq(a.error, b.error);
  const errorSq = a.steps.size + b.steps.size === 0 ? evenSq : evenSq + steppedSq(a, b);
  return errorSq > 0n && difference * difference <= errorSq;
}

/** Of two that are level, either may come to be ahead. */
function steppedSq(a: FixedReading, b: FixedReading): bigint {
  if (a.value > b.value) return swingsSq(a.steps, b.steps);
  const other = swingsSq(b.steps, a.steps);
  return a.value < b.value ? other : other + swingsSq(a.steps, b.steps);
}
