// How many decimals points are written with, on the Score card and on the Board alike.

/** Points that are paid out in fractions have few: more than this is shown rounded. */
const DECIMALS_MOST = 3;
/** No unit. What is left of a whole number after arithmetic in doubles, at the sizes of points. */
const WHOLE_SLACK = 1e-6;

/** As many as the value with the most of them needs, so that a column of them lines up; null is not known. */
export function decimalsOf(values: readonly (number | null)[]): number {
  let decimals = 0;
  while (decimals < DECIMALS_MOST && values.some((value) => !isWhole((value ?? 0) * 10 ** decimals))) decimals += 1;
  return decimals;
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) <= WHOLE_SLACK;
