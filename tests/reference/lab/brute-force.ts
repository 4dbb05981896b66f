// What every point of the box of whole rates says, tried one after the other. Written apart from the search: numbers in
// typed arrays, no programme, no proof.

import type { EvenTask, FavourTask, LabData } from '@cairnmark/scoring';

export interface TriedFavour {
  readonly possible: boolean;
  readonly smallestSum: number;
  readonly fewestRows: number;
  readonly sumAtFewestRows: number;
  readonly greatestLead: number;
  /** Sums of the sets of rows that work and hold no smaller one that does, by the rows as bits. */
  readonly leastSets: ReadonlyMap<number, number>;
}

/** In whole points. */
export function triedFavour({ data, favourite, lead, most, negative }: FavourTask): TriedFavour {
  const at = data.kinds.findIndex(({ id }) => id === favourite);
  const sets = new Map<number, number>();
  let greatestLead = 0;
  everyRule(data, most, negative, (rates, scores) => {
    let best = Number.NEGATIVE_INFINITY;
    for (let k = 0; k < scores.length; k += 1) if (k !== at && scores[k]! > best) best = scores[k]!;
    const leads = scores[at]! - best;
    if (leads > greatestLead) greatestLead = leads;
    if (leads < lead) return;
    let rows = 0;
    let sum = 0;
    for (let j = 0; j < rates.length; j += 1) {
      if (rates[j] !== 0) rows += 2 ** j;
      sum += Math.abs(rates[j]!);
    }
    if (sum < (sets.get(rows) ?? Number.POSITIVE_INFINITY)) sets.set(rows, sum);
  });
  const size = (rows: number): number => rows.toString(2).replaceAll('0', '').length;
  const fewestRows = Math.min(...[...sets.keys()].map(size));
  return {
    possible: sets.size > 0,
    smallestSum: Math.min(...sets.values()),
    fewestRows,
    sumAtFewestRows: Math.min(...[...sets].filter(([rows]) => size(rows) === fewestRows).map(([, sum]) => sum)),
    greatestLead,
    leastSets: new Map(
      [...sets].filter(([rows]) => ![...sets.keys()].some((one) => one !== rows && (one & rows) === one)),
    ),
  };
}

export interface TriedEven {
  /** As lowest and highest of the fairest rule; of equal shares the one with the smallest sum. */
  readonly share: { readonly lowest: number; readonly highest: number; readonly sum: number };
  readonly gap: { readonly gap: number; readonly sum: number };
}

export function triedEven({ data, most, negative }: EvenTask): TriedEven {
  let share = { lowest: -1, highest: 1, sum: 0 };
  let gap = { gap: Number.POSITIVE_INFINITY, sum: 0 };
  everyRule(data, most, negative, (rates, scores) => {
    let [lowest, highest, all, sum] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
    for (const score of scores) {
      if (score < lowest) lowest = score;
      if (score > highest) highest = score;
      all += score;
    }
    for (const rate of rates) sum += Math.abs(rate);
    const wide = highest - lowest;
    if (all >= 1 && (wide < gap.gap || (wide === gap.gap && sum < gap.sum))) gap = { gap: wide, sum };
    const better = lowest * share.highest - share.lowest * highest;
    if (lowest >= 0 && highest >= 1 && (better > 0 || (better === 0 && sum < share.sum)))
      share = { lowest, highest, sum };
  });
  return { share, gap };
}

/** Every choice of whole rates, with what it makes of each kind. */
function everyRule(
  { kinds }: LabData,
  most: number,
  negative: boolean,
  look: (rates: Int32Array, scores: Int32Array) => void,
): void {
  const rows = kinds[0]!.measures.length;
  const rates = new Int32Array(rows);
  const scores = new Int32Array(kinds.length);
  const from = negative ? -most : 0;
  const add = (row: number, rate: number): void => {
    for (let k = 0; k < kinds.length; k += 1) scores[k]! += rate * kinds[k]!.measures[row]!;
  };
  const turn = (row: number): void => {
    if (row === rows) {
      look(rates, scores);
      return;
    }
    add(row, from);
    for (let rate = from; rate <= most; rate += 1) {
      rates[row] = rate;
      turn(row + 1);
      add(row, 1);
    }
    add(row, -most - 1);
  };
  turn(0);
}
