// The two goals: the greatest share of the lowest in the highest, and the smallest gap between them. Rates in steps of the
// points, of all rows; null where the work limit was reached.

import type { EvenColumns, EvenRows } from './even-columns.ts';
import { rateColumns, scoresOf, sumColumns, sumCost, sumOf } from './even-columns.ts';
import type { Meter } from './exact/meter.ts';
import type { AtLeast } from './exact/tableau.ts';
import { cheapestWhole } from './exact/whole.ts';

type Rates = readonly bigint[];

/** Nobody below 0, somebody above it; of equal shares the smallest sum. */
export function greatestShare(rows: EvenRows, meter: Meter): Rates | null {
  let share = { lowest: 0n, highest: 1n };
  let found: Rates | null = null;
  for (;;) {
    const fairer = fairerThan(share, rows, meter);
    if (fairer === 'stopped') return null;
    if (fairer === null) break;
    found = fairer;
    share = spread(scoresOf(rows, fairer));
  }
  // The last variable is the highest, or more.
  const { lowest, highest } = share;
  const asFair = (columns: EvenColumns): readonly AtLeast[] =>
    columns.gives.flatMap((own): readonly AtLeast[] => [
      { of: [...own.map((one) => one * highest), -lowest], limit: 0n },
      { of: [...own.map((one) => -one), 1n], limit: 0n },
    ]);
  return smallest(rows, { asGood: asFair, further: 1, known: found }, meter);
}

interface Share {
  readonly lowest: bigint;
  readonly highest: bigint;
}

/**
 * Points with a greater share: lowest' x highest - highest' x lowest above 0, and as large as can be. The last two variables
 * are the highest, and what the lowest lacks of all that can be earned. null: there are none.
 */
function fairerThan({ lowest, highest }: Share, rows: EvenRows, meter: Meter): Rates | null | 'stopped' {
  const columns = rateColumns(rows);
  const { gives, start, count } = columns;
  const ceiling = sumOf(gives.map((own) => rows.most * sumOf(own)));
  const none = gives[0]?.map(() => 0n) ?? [];
  const answer = cheapestWhole({
    programme: {
      cost: [...none, lowest, highest],
      rows: [
        ...gives.flatMap((own, k): readonly AtLeast[] => [
          { of: [...own.map((one) => -one), 1n, 0n], limit: start[k] ?? 0n },
          { of: [...own, 0n, 1n], limit: ceiling - (start[k] ?? 0n) },
        ]),
        { of: [...none, 0n, -1n], limit: -ceiling },
        ...beside(columns, 2),
      ],
    },
    whole: count,
    below: highest * ceiling,
    first: false,
    meter,
  });
  if (answer.status === 'stopped') return 'stopped';
  return answer.status === 'none' ? null : columns.ratesOf(answer.values);
}

/** All together earn something; of equal gaps the smallest sum. */
export function smallestGap(rows: EvenRows, meter: Meter): Rates | null {
  const columns = rateColumns(rows);
  const cost = [...Array.from({ length: columns.count }, () => 0n), 1n, 1n];
  const answer = cheapestWhole({
    programme: { cost, rows: [...apart(columns), ...beside(columns, 2)] },
    whole: columns.count,
    below: null,
    first: false,
    meter,
  });
  if (answer.status !== 'found') return null;
  const asClose = (signed: EvenColumns): readonly AtLeast[] => [
    ...apart(signed),
    { of: [...Array.from({ length: signed.count }, () => 0n), -1n, -1n], limit: -answer.cost },
  ];
  return smallest(rows, { asGood: asClose, further: 2, known: columns.ratesOf(answer.values) }, meter);
}

/** Two variables behind the columns: how far the highest is above the first kind, and the lowest below it. */
function apart({ gives: [first = [], ...others], start: [begin = 0n, ...starts] }: EvenColumns): readonly AtLeast[] {
  return others.flatMap((own, k): readonly AtLeast[] => {
    const ahead = (starts[k] ?? 0n) - begin;
    return [
      { of: [...own.map((one, j) => (first[j] ?? 0n) - one), 1n, 0n], limit: ahead },
      { of: [...own.map((one, j) => one - (first[j] ?? 0n)), 0n, 1n], limit: -ahead },
    ];
  });
}

/** The limits, with so many variables behind the columns. */
function beside({ limits }: EvenColumns, further: number): readonly AtLeast[] {
  const none = Array.from({ length: further }, () => 0n);
  return limits.map(({ of, limit }) => ({ of: [...of, ...none], limit }));
}

interface AsGood {
  readonly asGood: (columns: EvenColumns) => readonly AtLeast[];
  readonly further: number;
  /** Rates that are as good; null: none are known. */
  readonly known: Rates | null;
}

function smallest(rows: EvenRows, { asGood, further, known }: AsGood, meter: Meter): Rates | null {
  const columns = sumColumns(rows);
  const cost = [...sumCost(columns, rows), ...Array.from({ length: further }, () => 0n)];
  const programme = { cost, rows: [...asGood(columns), ...beside(columns, further)] };
  const [each = 0n] = cost;
  const sum = sumOf((known ?? []).map((rate) => (rate < 0n ? -rate : rate)));
  // No larger sum than that of the known one; beyond the sum, later rows cost more, but less than one more in the sum.
  const below = known === null ? null : (sum + 1n) * each;
  const answer = cheapestWhole({ programme, whole: columns.count, below, first: false, meter });
  return answer.status === 'found' ? columns.ratesOf(answer.values) : null;
}

function spread(scores: readonly bigint[]): Share {
  let [lowest, highest] = [scores[0] ?? 0n, scores[0] ?? 0n];
  for (const score of scores) {
    if (score < lowest) lowest = score;
    if (score > highest) highest = score;
  }
  return { lowest, highest };
}
