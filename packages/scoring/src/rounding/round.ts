// Rounding, done in whole numbers alone. 'nearest' takes a half away from zero, as pupils learn it; 'down' goes towards
// minus infinity and 'up' towards plus infinity, which for the measures of a build (never negative) means what it says.

import type { Rounding } from '../types.ts';
import type { Millionths } from './fixed.ts';
import { fromMillionths, toMillionths } from './fixed.ts';

/**
 * The value rounded to a whole multiple of `step` (both in the same unit); both are fixed to a millionth first.
 * A step of 0, and the rounding 'none', leave the fixed value. Throws RangeError for a negative step.
 */
export function roundTo(value: number, step: number, rounding: Rounding): number {
  return fromMillionths(roundMillionths(toMillionths(value), toMillionths(step), rounding));
}

/** The same on values that are fixed already. */
export function roundMillionths(value: Millionths, step: Millionths, rounding: Rounding): Millionths {
  if (rounding === 'none' || step === 0n) return value;
  return divideRounded(value, step, rounding) * step;
}

/** `value / divisor` as a whole number. Throws RangeError unless the divisor is positive. */
export function divideRounded(value: bigint, divisor: bigint, rounding: Exclude<Rounding, 'none'>): bigint {
  if (divisor <= 0n) throw new RangeError(`${divisor} is no step to round to`);
  switch (rounding) {
    case 'down':
      return floorOf(value, divisor);
    case 'up':
      return -floorOf(-value, divisor);
    case 'nearest':
      return value < 0n ? -halfUp(-value, divisor) : halfUp(value, divisor);
  }
}

/** bigint division cuts towards zero; a negative remainder shows that it went up. */
function floorOf(value: bigint, divisor: bigint): bigint {
  const cut = value / divisor;
  return value % divisor < 0n ? cut - 1n : cut;
}

const halfUp = (value: bigint, divisor: bigint): bigint => (2n * value + divisor) / (2n * divisor);
