// [F8] What would make the impossible possible: further rows, or rows that take points. Each offer was tried, and comes with
// its rule.

import { favour } from './favour.ts';
import type { FavourTask, Offer, Offers } from './favour-types.ts';
import type { LabData, Work } from './types.ts';

/**
 * What could be added to a task that has no solution: one thing; where no single one helps, two; where no two do, all.
 * `further`: the same kinds in the same order, under rows that the task lacks. Throws RangeError where they are others.
 */
export function offers(task: FavourTask, further: LabData, work: Work): Offers {
  let branches = 0;
  for (const additions of additionsTo(task, further)) {
    const found: Offer[] = [];
    for (const addition of additions) {
      const tried = offered(task, further, addition, { ...work, branchesMost: work.branchesMost - branches });
      branches += tried.branches;
      if (tried.offer === 'not-settled') return { status: 'not-settled', branches };
      if (tried.offer !== null) found.push(tried.offer);
    }
    if (found.length > 0) return { status: 'tried', offers: found, branches };
  }
  return { status: 'tried', offers: [], branches };
}

interface Tried {
  readonly offer: Offer | null | 'not-settled';
  readonly branches: number;
}

/** What the addition makes possible; what the rule that was found does not need is left out of it, and that is tried too. */
function offered(task: FavourTask, further: LabData, addition: Addition, work: Work): Tried {
  const wider = widened(task, further, addition);
  const answer = favour(wider, { order: 'fewest-rows', rules: 1 }, work);
  const { branches } = answer;
  if (answer.status === 'not-settled') return { offer: 'not-settled', branches };
  const [rule] = answer.status === 'possible' ? answer.rules : [];
  if (rule === undefined) return { offer: null, branches };
  const rows = addition.rows.filter((_, k) => rule.rates[task.data.rows.length + k] !== 0);
  const negative = addition.negative && rule.rates.some((rate) => rate < 0);
  if (rows.length === addition.rows.length && negative === addition.negative) {
    return { offer: { ...named(addition, further), task: wider, rule }, branches };
  }
  const left = { ...work, branchesMost: work.branchesMost - branches };
  const less = offered(task, further, { rows, negative }, left);
  return { offer: less.offer, branches: branches + less.branches };
}

interface Addition {
  /** Positions among the further rows. */
  readonly rows: readonly number[];
  /** Rates below 0 come in. */
  readonly negative: boolean;
}

const NOTHING: Addition = { rows: [], negative: false };

function additionsTo({ negative }: FavourTask, { rows }: LabData): readonly (readonly Addition[])[] {
  const byRows = rows.map((_, j): Addition => ({ rows: [j], negative: false }));
  const singles = negative ? byRows : [...byRows, { ...NOTHING, negative: true }];
  const pairs = singles.flatMap((one, k) => singles.slice(k + 1).map((other) => together(one, other)));
  return [singles, pairs, singles.length > 2 ? [singles.reduce(together, NOTHING)] : []];
}

const together = (one: Addition, other: Addition): Addition => ({
  rows: [...one.rows, ...other.rows],
  negative: one.negative || other.negative,
});

const named = ({ rows, negative }: Addition, further: LabData): Pick<Offer, 'rows' | 'negative'> => ({
  rows: rows.map((row) => further.rows[row] ?? ''),
  negative,
});

function widened(task: FavourTask, further: LabData, { rows, negative }: Addition): FavourTask {
  const { data } = task;
  const kinds = data.kinds.map((kind, k) => {
    const same = further.kinds[k];
    if (same?.id !== kind.id) throw new RangeError(`the further rows are not of ${kind.id}`);
    return { ...kind, measures: [...kind.measures, ...rows.map((row) => same.measures[row] ?? 0)] };
  });
  const names = rows.map((row) => further.rows[row] ?? '');
  return { ...task, data: { rows: [...data.rows, ...names], kinds }, negative: task.negative || negative };
}
