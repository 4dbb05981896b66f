// Sums that do not depend on the order of their terms, which a sum of doubles does.

import { fromMillionths, toMillionths } from './fixed.ts';

/** The sum of the values, each fixed to a millionth. */
export function exactSum(values: Iterable<number>): number {
  let total = 0n;
  for (const value of values) total += toMillionths(value);
  return fromMillionths(total);
}

/** The same; null where one of the values is not known. */
export function sumIfKnown(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length < values.length ? null : exactSum(known);
}
