// Numbers that decide are whole millionths, so that a decimal fraction is exactly what the class wrote: a double holds
// 0.1 + 0.2 as 0.30000000000000004, here it is 300 000 millionths, the same as 0.3. All arithmetic on them is in whole
// numbers (bigint), at any size. The divisions of every ruler are whole millionths too: 25.4 / 16 mm = 1 587 500.

/**
 * Values are fixed to this, in their unit, before anything is compared or rounded. A millionth of a mm is far below what
 * any ruler reads, and far above the noise of a double up to 8 thousand million (8 m3 in mm3).
 */
export const FIXED_TO = 1e-6;

/** The same as a whole number: how many of them make one. */
export const MILLIONTHS_IN_ONE = 1_000_000n;

/** A value as a whole number of millionths of its unit. */
export type Millionths = bigint;

/**
 * The value fixed to the nearest millionth, half away from zero.
 * The whole part is cut off first, which loses nothing, so that only the fraction is scaled.
 * Throws RangeError for a value that is not finite.
 */
export function toMillionths(value: number): Millionths {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be fixed`);
  const whole = Math.trunc(value);
  const fraction = (value - whole) * Number(MILLIONTHS_IN_ONE);
  return BigInt(whole) * MILLIONTHS_IN_ONE + BigInt(Math.sign(fraction) * Math.round(Math.abs(fraction)));
}

/** The double nearest to it, which prints as the decimal fraction that it stands for. */
export function fromMillionths(millionths: Millionths): number {
  return Number(millionths) / Number(MILLIONTHS_IN_ONE);
}
