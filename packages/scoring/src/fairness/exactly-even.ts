// [F11] Whether points of any size make all earn exactly alike. There are such points, or pieces that show that there are
// none, never both: Gordan 1873 and Fredholm's alternative (from memory).

import { labRule } from './checked-rule.ts';
import { sumColumns } from './even-columns.ts';
import type { EvenCosts } from './even-spread.ts';
import { forAlikeCosts, withSpread } from './even-spread.ts';
import type { ExactlyEven } from './even-types.ts';
import { divisor } from './exact/fraction.ts';
import type { Meter } from './exact/meter.ts';
import { within } from './exact/meter.ts';
import type { AtLeast, Programme } from './exact/tableau.ts';
import { mended, tableauOf } from './exact/tableau.ts';
import { cheapestWhole } from './exact/whole.ts';
import type { Times } from './favour-types.ts';
import type { LabData } from './types.ts';

export interface EvenQuestion {
  readonly data: LabData;
  readonly measures: readonly (readonly bigint[])[];
  readonly costs: EvenCosts;
  readonly used: readonly number[];
  readonly negative: boolean;
}

export function exactlyEven(question: EvenQuestion, meter: Meter): ExactlyEven {
  const rates = evenRates(question, meter);
  if (rates !== null)
    return { possible: true, rule: withSpread(labRule(question.data, rates.map(Number), 1), question.costs) };
  return neverEven(question, meter);
}

/** The smallest that are found; null where there are none. */
function evenRates(question: EvenQuestion, meter: Meter): readonly bigint[] | null {
  const { measures, costs, used, negative } = question;
  const columns = sumColumns({ measures: forAlikeCosts(measures, costs), used, negative, most: 1n });
  const [first = [], ...others] = columns.gives;
  const alike = others.flatMap((own) => equal(own.map((one, j) => one - (first[j] ?? 0n))));
  // Without limits of the rates; all together earn something.
  const found = small({ cost: ones(columns.count), rows: [...alike, ...columns.limits.slice(-1)] }, meter);
  return found === null ? null : columns.ratesOf(found);
}

/**
 * Pieces of the kinds, those above 0 against those below. Without rates below 0: they take as much, and have more in every
 * row. With them: they have the same in every row, and do not take as much.
 */
function neverEven({ data, measures, costs, used, negative }: EvenQuestion, meter: Meter): ExactlyEven {
  const signed = (of: readonly bigint[]): readonly bigint[] => [...of, ...of.map((one) => -one)];
  const each = signed(costs.each);
  const rows = used.map((row) => signed(measures.map((own) => own[row] ?? 0n)));
  const shown = negative
    ? [...rows.flatMap(equal), { of: each, limit: 1n }]
    : [...rows.map((of) => ({ of, limit: 1n })), ...equal(each)];
  const found = small({ cost: ones(each.length), rows: shown }, meter);
  if (found === null) throw new RangeError('neither even nor never even: a fault of the search');
  const pieces = measures.map((_, k) => Number((found[k] ?? 0n) - (found[k + measures.length] ?? 0n)));
  const side = (sign: number): readonly Times[] =>
    data.kinds.flatMap(({ id }, k) => {
      const times = sign * (pieces[k] ?? 0);
      return times > 0 ? [{ kind: id, times }] : [];
    });
  const [these, those] = [side(1), side(-1)];
  const total = (times: readonly Times[]): readonly number[] =>
    data.rows.map((_, j) =>
      times.reduce((sum, one) => sum + one.times * (data.kinds.find(({ id }) => id === one.kind)?.measures[j] ?? 0), 0),
    );
  return { possible: false, these, those, totalOfThese: total(these), totalOfThose: total(those) };
}

/** A whole solution: any, made whole; or a smaller one that is found with some branches more. null where there is none. */
function small(programme: Programme, meter: Meter): readonly bigint[] | null {
  const { tableau, broken } = mended(tableauOf(programme));
  if (broken !== null) return null;
  const count = programme.cost.length;
  const some = programme.cost.map((_, j) => tableau.inside.find(({ variable }) => variable === j)?.value ?? 0n);
  const common = some.reduce(divisor, 0n);
  const whole = some.map((one) => one / common);
  const below = whole.reduce((sum, one) => sum + one, 0n);
  const smaller = cheapestWhole({
    programme,
    whole: count,
    below,
    first: false,
    meter: within(meter, BRANCHES_FOR_SMALLER),
  });
  return smaller.status === 'found' ? smaller.values : whole;
}

/** Branches that are spent on smaller numbers: a nicety, some tenths of a second at most. */
const BRANCHES_FOR_SMALLER = 200;

const ones = (count: number): readonly bigint[] => Array.from({ length: count }, () => 1n);

const equal = (of: readonly bigint[]): readonly AtLeast[] => [
  { of, limit: 0n },
  { of: of.map((one) => -one), limit: 0n },
];
