// Quotients of whole numbers, exact at any size. `under` is above 0.

export interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}

/** Below 0, 0 or above 0, as a - b is. */
export function compare(a: Fraction, b: Fraction): number {
  const difference = a.over * b.under - b.over * a.under;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** Rounded up to a whole number. */
export function ceiling({ over, under }: Fraction): bigint {
  const whole = over / under;
  return whole * under < over ? whole + 1n : whole;
}

/** The largest whole number that divides both, neither below 0; the other one where one is 0. */
export const divisor = (a: bigint, b: bigint): bigint => (b === 0n ? a : divisor(b, a % b));
