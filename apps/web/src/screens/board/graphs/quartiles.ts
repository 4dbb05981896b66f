// The five numbers of a box plot. Schools find the quartiles by one of two rules, so the rule is chosen and named.

/** Whether the median of an odd number of values belongs to both halves, or to neither. */
export type QuartileRule = 'without-median' | 'with-median';

export interface FiveNumbers {
  readonly least: number;
  readonly lower: number;
  readonly median: number;
  readonly upper: number;
  readonly most: number;
}

/** Fewer values than this make no box: each of its parts would hold one or two (common practice, no source). */
export const BOX_VALUES_LEAST = 10;

/**
 * In the unit of the values; null for none. A quartile is the median of a half: "without-median" is the rule of Moore and
 * McCabe, "with-median" Tukey's hinges.
 */
export function fiveNumbers(values: readonly number[], rule: QuartileRule): FiveNumbers | null {
  const sorted = [...values].sort((a, b) => a - b);
  const [least] = sorted;
  const most = sorted.at(-1);
  if (least === undefined || most === undefined) return null;
  const half = rule === 'with-median' ? Math.ceil(sorted.length / 2) : Math.floor(sorted.length / 2);
  const [below, above] = half === 0 ? [sorted, sorted] : [sorted.slice(0, half), sorted.slice(-half)];
  return { least, lower: medianOf(below), median: medianOf(sorted), upper: medianOf(above), most };
}

/** Of sorted values, at least one. */
function medianOf(sorted: readonly number[]): number {
  const middle = sorted.slice((sorted.length - 1) >> 1, (sorted.length >> 1) + 1);
  return middle.reduce((sum, value) => sum + value, 0) / middle.length;
}
