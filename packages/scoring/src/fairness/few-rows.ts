// The smallest points on very few rows: all rates but the last are tried, and the last one follows. That is quicker than
// parting the limits where a lead can only just be had, and says the same.

import type { WholeFavour } from './whole-task.ts';

/** Whether trying is quick: some thousands of choices, and numbers that doubles hold exactly. */
export function areFew(rows: readonly number[], { more, lead, most, negative }: WholeFavour): boolean {
  const choices = (negative ? 2n * most + 1n : most + 1n) ** BigInt(Math.max(0, rows.length - 1));
  let largest = lead;
  for (const one of more.flat()) if (one > largest || -one > largest) largest = one < 0n ? -one : one;
  return choices <= CHOICES_MOST && largest * most * BigInt(rows.length) < BigInt(Number.MAX_SAFE_INTEGER);
}

/** A tenth of a thousandth of a second each, at most. */
const CHOICES_MOST = 2_000n;

/** Rates of these rows, in steps; null: none give the lead with a smaller sum than `sumBelow`. */
export function tried(task: WholeFavour, rows: readonly number[], sumBelow: number): readonly number[] | null {
  const most = Number(task.most);
  const lead = Number(task.lead);
  const least = task.negative ? -most : 0;
  const more = rows.map((row) => task.more.map((one) => Number(one[row] ?? 0n)));
  let best: { readonly rates: readonly number[]; readonly sum: number } | null = null;
  const rates = rows.map(() => 0);
  const look = (k: number, missing: readonly number[], sum: number): void => {
    const gives = more[k] ?? [];
    const isLast = k === rows.length - 1;
    const [from, to] = isLast ? lastRate(gives, missing, least, most) : [least, most];
    for (let rate = from; rate <= to; rate += 1) {
      const with_ = sum + Math.abs(rate);
      if (with_ > (best?.sum ?? sumBelow - 1)) continue;
      rates[k] = rate;
      if (!isLast)
        look(
          k + 1,
          missing.map((one, s) => one - rate * (gives[s] ?? 0)),
          with_,
        );
      else if (best === null || with_ < best.sum || isBefore(rates, best.rates))
        best = { rates: [...rates], sum: with_ };
    }
  };
  look(
    0,
    task.more.map(() => lead),
    0,
  );
  return (best as { readonly rates: readonly number[] } | null)?.rates ?? null;
}

/** The span of the one rate nearest to 0 that gives everybody what is missing; an empty span where none does. */
function lastRate(gives: readonly number[], missing: readonly number[], least: number, most: number): [number, number] {
  let [low, high] = [least, most];
  for (let s = 0; s < gives.length; s += 1) {
    const [give = 0, miss = 0] = [gives[s], missing[s]];
    if (give === 0 && miss > 0) return [1, 0];
    if (give > 0) low = Math.max(low, Math.ceil(miss / give));
    if (give < 0) high = Math.min(high, Math.floor(miss / give));
  }
  if (low > high) return [1, 0];
  const nearest = low > 0 ? low : Math.min(high, 0);
  return [nearest, nearest];
}

/** Of equal sums: less taken by the rows that stand last, then less given by them. */
function isBefore(rates: readonly number[], others: readonly number[]): boolean {
  for (let k = rates.length - 1; k >= 0; k -= 1) {
    const [one = 0, other = 0] = [rates[k], others[k]];
    const taken = Math.max(0, -one) - Math.max(0, -other);
    const given = Math.max(0, one) - Math.max(0, other);
    if (taken !== 0 || given !== 0) return taken < 0 || (taken === 0 && given < 0);
  }
  return false;
}
