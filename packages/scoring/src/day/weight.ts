// How much a challenge counts in the day.

import type { Millionths } from '../rounding/fixed.ts';
import { toMillionths } from '../rounding/fixed.ts';
import type { DayRule } from '../types.ts';

/** 1 where none is set; 0: left out of the day. Throws RangeError for a negative weight. */
export function weightOf(challenge: string, { weights }: DayRule): Millionths {
  const weight = Object.hasOwn(weights, challenge) ? (weights[challenge] ?? 1) : 1;
  if (weight < 0) throw new RangeError(`the weight of ${challenge} is negative`);
  return toMillionths(weight);
}
