// Of a kind that can be favoured, but not by so much with rates so small: the most it can lead by, and how large rates must
// be for the lead. Both come with a proof that there is nothing better.

import { favouringRule } from './checked-rule.ts';
import type { Meter } from './exact/meter.ts';
import { noWhole } from './exact/no-whole.ts';
import { cheapestWhole } from './exact/whole.ts';
import type { FavouringRule, FavourTask, NoRule, WhyNot } from './favour-types.ts';
import { everyRow, mostRows, smallestRule, someSum } from './smallest-rule.ts';
import type { WholeFavour } from './whole-task.ts';
import { wholeFavour } from './whole-task.ts';

/** null where the work limit was reached. */
export function outOfReach(task: FavourTask, meter: Meter): WhyNot | null {
  const whole = wholeFavour(task);
  const greatest = greatestLead(whole, meter);
  if (greatest === null) return null;
  const noMoreLead = noLead({ ...whole, lead: greatest + 1n }, meter);
  if (noMoreLead === null) return null;
  const atGreatest = greatest === 0n ? null : ruleFor(task, { ...whole, lead: greatest }, meter);
  if (greatest > 0n && atGreatest === null) return null;
  const needed = mostNeeded(whole, meter);
  const noSmallerMost = needed === null ? null : noLead({ ...whole, most: needed - 1n }, meter);
  const atNeeded = needed === null ? null : ruleFor(task, { ...whole, most: needed }, meter);
  const isShown = needed !== null && noSmallerMost !== null && atNeeded !== null;
  return {
    code: 'lead-out-of-reach',
    greatestLead: Number(greatest) * task.step,
    atGreatest,
    maxNeeded: isShown ? Number(needed) * task.step : null,
    atNeeded: isShown ? atNeeded : null,
    proof: { noMoreLead, noSmallerMost: isShown ? noSmallerMost : null },
  };
}

/** The most, in steps, that the favourite can have more than every other; 0 where it cannot. null: the work limit. */
export function greatestLead({ more, most, rows, negative }: WholeFavour, meter: Meter): bigint | null {
  const shift = negative ? most : 0n;
  const ceiling = leastOf(more.map((one) => one.reduce((sum, count) => sum + most * best(count, negative), 0n)));
  if (ceiling <= 0n) return 0n;
  // The last variable is what the lead lacks of the ceiling; the rates are counted from the lowest on.
  const answer = cheapestWhole({
    programme: {
      cost: [...Array.from({ length: rows }, () => 0n), 1n],
      rows: [
        ...more.map((one) => ({ of: [...one, 1n], limit: ceiling + shift * sumOf(one) })),
        ...mostRows(rows, most + shift).map(({ of, limit }) => ({ of: [...of, 0n], limit })),
      ],
    },
    whole: rows,
    below: null,
    first: false,
    meter,
  });
  return answer.status === 'found' ? ceiling - answer.cost : null;
}

const leastOf = ([first = 0n, ...others]: readonly bigint[]): bigint => {
  let least = first;
  for (const one of others) if (one < least) least = one;
  return least;
};

/** What a row gives at its best rate, of a most of 1. */
const best = (count: bigint, negative: boolean): bigint => (count > 0n ? count : negative ? -count : 0n);
const sumOf = (values: readonly bigint[]): bigint => values.reduce((sum, one) => sum + one, 0n);

/** The smallest limit of the rates with which the lead can be had, above the one that is too small. */
function mostNeeded(task: WholeFavour, meter: Meter): bigint | null {
  const isEnough = (most: bigint): boolean | null => {
    const answer = someSum({ ...task, most }, null, true, meter);
    return answer.status === 'stopped' ? null : answer.status === 'found';
  };
  // The points of some size that there are, doubled, lead by twice as much: so some limit is enough.
  let tooSmall = task.most;
  let enough: bigint | null = null;
  for (let step = 1n; enough === null; step *= 2n) {
    const is = isEnough(tooSmall + step);
    if (is === null) return null;
    if (is) enough = tooSmall + step;
    else tooSmall += step;
  }
  while (enough - tooSmall > 1n) {
    const middle: bigint = (enough + tooSmall) / 2n;
    const is = isEnough(middle);
    if (is === null) return null;
    if (is) enough = middle;
    else tooSmall = middle;
  }
  return enough;
}

/** That no rates up to the limit give the lead. */
function noLead({ more, lead, most, rows, negative }: WholeFavour, meter: Meter): NoRule | null {
  const shift = negative ? most : 0n;
  return noWhole({
    programme: {
      cost: Array.from({ length: rows }, () => 0n),
      rows: [...more.map((one) => ({ of: one, limit: lead + shift * sumOf(one) })), ...mostRows(rows, most + shift)],
    },
    shift: -shift,
    told: more.length,
    meter,
  });
}

/** The smallest points that reach it. */
function ruleFor(task: FavourTask, whole: WholeFavour, meter: Meter): FavouringRule | null {
  const answer = smallestRule(whole, everyRow(whole), null, meter);
  if (answer.status !== 'found') return null;
  return favouringRule({ ...task, lead: Number(whole.lead) * task.step }, answer.rates);
}
