// The two goals: the greatest share of the lowest in the highest, and the smallest gap between them. Rates in steps of the
// points, of all rows; null where the work limit was reached.

import type { EvenColumns } from './even-columns.ts';
import { scoresOf } from './even-columns.ts';
import type { Meter } from './exact/meter.ts';
import type { AtLeast } from './exact/tableau.ts';
import { cheapestWhole } from './exact/whole.ts';

type Rates = readonly bigint[];

/** Nobody below 0, somebody above it. */
export function greatestShare(columns: EvenColumns, meter: Meter): Rates | null {
  let share = { lowest: 0n, highest: 1n };
  for (;;) {
    const fairer = fairerThan(share, columns, meter);
    if (fairer === 'stopped') return null;
    if (fairer === null) break;
    share = fairer;
  }
  // As fair as that, with the smallest sum: the last variable is the highest, or more.
  const { lowest, highest } = share;
  const rows = [
    ...columns.gives.flatMap((own): readonly AtLeast[] => [
      { of: [...own.map((one) => one * highest), -lowest], limit: 0n },
      { of: [...own.map((one) => -one), 1n], limit: 0n },
    ]),
    ...beside(columns, 1),
  ];
  return smallest(columns, rows, 1, meter);
}

interface Share {
  readonly lowest: bigint;
  readonly highest: bigint;
}

/**
 * Points with a greater share: lowest' x highest - highest' x lowest above 0, and as large as can be. The last two variables
 * are the highest, and what the lowest lacks of all that can be earned. null: there are none.
 */
function fairerThan({ lowest, highest }: Share, columns: EvenColumns, meter: Meter): Share | null | 'stopped' {
  const { gives, count, most } = columns;
  const ceiling = gives.reduce((sum, own) => own.reduce((all, one) => all + (one > 0n ? one * most : 0n), sum), 0n);
  const answer = cheapestWhole({
    programme: {
      cost: [...(gives[0]?.map(() => 0n) ?? []), lowest, highest],
      rows: [
        ...gives.flatMap((own): readonly AtLeast[] => [
          { of: [...own.map((one) => -one), 1n, 0n], limit: 0n },
          { of: [...own, 0n, 1n], limit: ceiling },
        ]),
        { of: [...columns.cost.map(() => 0n), 0n, -1n], limit: -ceiling },
        ...beside(columns, 2),
      ],
    },
    whole: count,
    below: highest * ceiling,
    first: false,
    meter,
  });
  if (answer.status === 'stopped') return 'stopped';
  return answer.status === 'none' ? null : spread(scoresOf(gives, answer.values));
}

/** All together earn something. */
export function smallestGap(columns: EvenColumns, meter: Meter): Rates | null {
  const [first = [], ...others] = columns.gives;
  // The last two variables: how far the highest is above the first kind, and the lowest below it.
  const apart = others.flatMap((own): readonly AtLeast[] => [
    { of: [...own.map((one, j) => (first[j] ?? 0n) - one), 1n, 0n], limit: 0n },
    { of: [...own.map((one, j) => one - (first[j] ?? 0n)), 0n, 1n], limit: 0n },
  ]);
  const rows = [...apart, ...beside(columns, 2)];
  const cost = [...first.map(() => 0n), 1n, 1n];
  const answer = cheapestWhole({ programme: { cost, rows }, whole: columns.count, below: null, first: false, meter });
  if (answer.status !== 'found') return null;
  const gap = { of: cost.map((one) => -one), limit: -answer.cost };
  return smallest(columns, [...rows, gap], 2, meter);
}

/** The limits of the rates, and that all together earn something; with so many variables behind the columns. */
function beside({ limits, together }: EvenColumns, further: number): readonly AtLeast[] {
  const none = Array.from({ length: further }, () => 0n);
  return [...limits, { of: together, limit: 1n }].map(({ of, limit }) => ({ of: [...of, ...none], limit }));
}

function smallest(columns: EvenColumns, rows: readonly AtLeast[], further: number, meter: Meter): Rates | null {
  const cost = [...columns.cost, ...Array.from({ length: further }, () => 0n)];
  const answer = cheapestWhole({ programme: { cost, rows }, whole: columns.count, below: null, first: false, meter });
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
