// Searches that go by what a tower stands on: one base after the other, from the smallest.

import { narrowest, tallest } from './aims.ts';
import { ceilingMm } from './ceiling.ts';
import { groundMm2 } from './finishing.ts';
import type { Prepared } from './prepared.ts';
import { basesBy, standingOn } from './prepared.ts';
import type { Finished, Outcome, Work } from './search.ts';
import { after, search } from './search.ts';
import { SAME_VALUE } from './tolerance.ts';
import type { BestProgress } from './types.ts';

export type FurtherSearch = Generator<BestProgress, Pick<Outcome, 'best' | 'finished' | 'looked'>>;

/** One as tall on the least ground that bears it, what stands beside it included; null: that of `best` is the least. */
export function* onSmallestBase(prepared: Prepared, best: Finished, work: Work): FurtherSearch {
  let least = best;
  let looked = 0;
  for (const lowestMm2 of basesBy(prepared, ({ baseMm2 }) => baseMm2)) {
    const knownMm2 = groundMm2(least);
    if (lowestMm2 >= knownMm2 * (1 - SAME_VALUE)) break;
    const narrow = standingOn(prepared, ({ baseMm2 }) => baseMm2 === lowestMm2);
    const one = yield* search(
      narrow,
      narrowest(narrow, sameOr(best.value), knownMm2 * (1 - SAME_VALUE)),
      after(work, looked),
    );
    looked += one.looked;
    least = one.best ?? least;
    if (!one.finished) return { best: least, finished: false, looked };
  }
  return { best: least, finished: true, looked };
}

/** Most height for the width of its base, as their ratio. */
export function* mostForWidth(prepared: Prepared, work: Work): Generator<BestProgress, Outcome> {
  const widths = basesBy(prepared, ({ baseWidthMm }) => baseWidthMm).filter((widthMm) => widthMm > 0);
  let best: Finished | null = null;
  let looked = 0;
  for (const widthMm of widths) {
    const narrow = standingOn(prepared, ({ baseWidthMm }) => baseWidthMm === widthMm);
    const one: Outcome = yield* search(narrow, tallest(narrow, (best?.value ?? 0) * widthMm), after(work, looked));
    looked += one.looked;
    if (one.best !== null) best = { ...one.best, value: one.best.value / widthMm };
    if (one.finished) continue;
    // What stands on this base or a wider one has no more than the ceiling on this one.
    const noMoreThan = Math.max(best?.value ?? 0, ceilingMm(prepared.task) / widthMm);
    return { best, noMoreThan, finished: false, looked };
  }
  return { best, noMoreThan: best?.value ?? 0, finished: true, looked };
}

/** A little less, by more than what counts as the same, so that what is as good is greater. */
export const sameOr = (value: number): number => value * (1 - 2 * SAME_VALUE);
