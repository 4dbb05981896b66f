// [F12] The families of rules from which a riddle is taken: small enough that pupils can try them all.

import type { RiddleRule, RuleFamily } from './riddle-types.ts';
import type { LabData } from './types.ts';

export const RULE_FAMILIES: readonly RuleFamily[] = ['one', 'one+c', 'two', 'minus'];

/** Every rule of the family for so many rows; those on the rows that stand first come first. */
export function rulesOf(family: RuleFamily, rows: number): readonly RiddleRule[] {
  const single = (most: number): readonly RiddleRule[] =>
    upTo(rows).flatMap((row) => upTo(most).map((rate) => ruleWith(rows, [[row, rate + 1]], 0)));
  switch (family) {
    case 'one':
      return single(ONE_MOST);
    case 'one+c':
      return single(ONE_MOST).flatMap((rule) => upTo(EACH_MOST + 1).map((each) => ({ ...rule, each })));
    case 'two':
      return [...single(TWO_MOST), ...pairs(rows).flatMap((pair) => onTwo(rows, pair))];
    case 'minus':
      return [...single(TWO_MOST), ...ordered(rows).flatMap(([plus, minus]) => lessOne(rows, plus, minus))];
  }
}

/** What a rule makes of every kind, in the order of the kit. */
export const riddlePoints = ({ kinds }: LabData, { rates, each }: RiddleRule): readonly number[] =>
  kinds.map(({ measures }) => measures.reduce((sum, count, j) => sum + count * (rates[j] ?? 0), each));

/** The largest rate of one measure, of two, and of the piece itself: tables of these stand on one sheet. */
const ONE_MOST = 5;
const TWO_MOST = 3;
const EACH_MOST = 3;

type Pair = readonly [row: number, other: number];

const onTwo = (rows: number, [row, other]: Pair): readonly RiddleRule[] =>
  upTo(TWO_MOST).flatMap((a) =>
    upTo(TWO_MOST).map((b) =>
      ruleWith(
        rows,
        [
          [row, a + 1],
          [other, b + 1],
        ],
        0,
      ),
    ),
  );

const lessOne = (rows: number, plus: number, minus: number): readonly RiddleRule[] =>
  upTo(TWO_MOST).map((a) =>
    ruleWith(
      rows,
      [
        [plus, a + 1],
        [minus, -1],
      ],
      0,
    ),
  );

const pairs = (rows: number): readonly Pair[] => ordered(rows).filter(([row, other]) => row < other);

const ordered = (rows: number): readonly Pair[] =>
  upTo(rows).flatMap((row) => upTo(rows).flatMap((other): readonly Pair[] => (row === other ? [] : [[row, other]])));

function ruleWith(rows: number, given: readonly (readonly [row: number, rate: number])[], each: number): RiddleRule {
  return { rates: upTo(rows).map((row) => given.find(([one]) => one === row)?.[1] ?? 0), each };
}

const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, k) => k);
