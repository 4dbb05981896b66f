// [F9] [F10] Points under which all earn as much alike as can be. The share is a quotient, so it is raised step by step
// (W. Dinkelbach 1967, from memory): are there points whose lowest is more than so much of their highest? Each step is a
// programme in whole numbers, and the last one shows that there are none.

import { labRule } from './checked-rule.ts';
import { greatestShare, smallestGap } from './even-goals.ts';
import { evenCosts, forAlikeCosts, withSpread } from './even-spread.ts';
import type { Evenness, EvenTask, LeftOutRow } from './even-types.ts';
import { meterOf } from './exact/meter.ts';
import { exactlyEven } from './exactly-even.ts';
import type { LabData, Work } from './types.ts';
import { inSteps, wholeMeasures } from './whole-task.ts';

/** The evenest points, and whether any could be exactly even. Throws RangeError for a task that makes no sense. */
export function mostEven(task: EvenTask, work: Work): Evenness {
  const { data, negative, step } = task;
  const measures = wholeMeasures(data);
  const costs = evenCosts(data, task.per);
  const leftOut = rowsLeftOut(data);
  const used = data.rows.flatMap((row, j) => (leftOut.some((one) => one.row === row) ? [] : [j]));
  if (used.length === 0) return { status: 'no-rows', leftOut };
  const rows = { measures: forAlikeCosts(measures, costs), used, negative, most: inSteps(task.most, step) };
  const meter = meterOf(work);
  const rates = task.goal === 'share' ? greatestShare(rows, meter) : smallestGap(rows, meter);
  if (rates === null) return { status: 'not-settled', branches: meter.branches() };
  const rule = withSpread(labRule(data, rates.map(Number), step), costs);
  const exactly = exactlyEven({ data, measures, costs, used, negative }, meter);
  return { status: 'found', rule, exactly, leftOut, branches: meter.branches() };
}

function rowsLeftOut({ rows, kinds }: LabData): readonly LeftOutRow[] {
  return rows.flatMap((row, j): readonly LeftOutRow[] => {
    if (row === PER_PIECE) return [{ row, why: 'per-piece' }];
    return kinds.every(({ measures }) => measures[j] === 0) ? [{ row, why: 'nobody-has' }] : [];
  });
}

/** The measure that counts pieces. */
const PER_PIECE = 'pieces';
