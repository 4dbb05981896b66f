// The best build that given pieces allow. Exact: branch and bound over all orders and ways up of centred towers, held against
// brute force. A ceiling from chains of support says whether any other build could have more.

import { steadiest, tallest } from './aims.ts';
import { ceilingMm } from './ceiling.ts';
import { whyNone } from './none.ts';
import { mostPoints, pointsCeiling } from './points.ts';
import type { Prepared } from './prepared.ts';
import { basesOf, prepare } from './prepared.ts';
import type { Aim, Finished, Outcome } from './search.ts';
import { search } from './search.ts';
import { SAME_VALUE } from './tolerance.ts';
import { towerOf } from './tower.ts';
import type { BestAnswer, BestProgress, BestTask } from './types.ts';

/** The answer at one go. `limit`: how many pieces may be tried; the same task and limit give the same answer everywhere. */
export function bestBuild(task: BestTask, limit: number): BestAnswer {
  const steps = bestBuildSteps(task, limit);
  for (let step = steps.next(); ; step = steps.next()) if (step.done === true) return step.value;
}

/** The same in steps, each with what has come out so far: whoever takes them may stop. */
export function* bestBuildSteps(task: BestTask, limit: number): Generator<BestProgress, BestAnswer> {
  const prepared = prepare(task);
  const first = yield* search(prepared, aimOf(prepared), limit);
  if (!first.finished) return notFinished(prepared, first);
  if (first.best === null) return yield* whyNone(task, limit, first.looked);
  const narrow = yield* onSmallestBase(prepared, first.best, limit - first.looked);
  const looked = first.looked + narrow.looked;
  const narrowest = narrow.best ?? first.best;
  if (!narrow.finished)
    return notFinished(prepared, { ...narrow, best: narrowest, looked, noMoreThan: first.best.value });
  const steady = yield* steadiestOf(prepared, narrowest, limit - looked);
  const ceiling = ceilingOf(prepared);
  return {
    kind: 'best',
    tower: towerOf(prepared, steady.best ?? narrowest),
    value: first.best.value,
    scope: ceiling !== null && ceiling <= first.best.value * (1 + SAME_VALUE) ? 'any' : 'centred',
    ceiling,
    looked: looked + steady.looked,
  };
}

function aimOf(prepared: Prepared): Aim {
  const { goal } = prepared.task;
  switch (goal.kind) {
    case 'tallest':
    case 'tallest-on-smallest-base':
      return tallest(prepared, 0);
    case 'most-points':
      return mostPoints(prepared, goal.rows);
    case 'greatest-tilt':
      return steadiest(prepared, 0);
  }
}

const NOTHING_MORE = { best: null, finished: true, looked: 0 };

/** One as tall on the smallest base that bears it. */
function* onSmallestBase(prepared: Prepared, best: Finished, limit: number): Search {
  const { task } = prepared;
  if (task.goal.kind !== 'tallest-on-smallest-base') return NOTHING_MORE;
  const widestMm2 = best.placed.way.up.baseMm2;
  let looked = 0;
  for (const baseMm2 of basesOf(prepared)) {
    if (baseMm2 >= widestMm2 * (1 - SAME_VALUE)) break;
    const capped = prepare({ ...task, baseAtMostMm2: baseMm2 });
    const one = yield* search(capped, tallest(capped, sameOr(best.value)), limit - looked);
    looked += one.looked;
    if (!one.finished || one.best !== null) return { ...one, looked };
  }
  return { ...NOTHING_MORE, looked };
}

/** The steadiest of those that are as tall on no larger a base; only as far as the work limit goes. */
function* steadiestOf(prepared: Prepared, best: Finished, limit: number): Search {
  const { task } = prepared;
  if (task.goal.kind === 'most-points' || task.goal.kind === 'greatest-tilt') return NOTHING_MORE;
  const narrow = task.goal.kind === 'tallest-on-smallest-base';
  const capped = narrow ? prepare({ ...task, baseAtMostMm2: best.placed.way.up.baseMm2 }) : prepared;
  return yield* search(capped, steadiest(capped, sameOr(best.placed.heightMm)), Math.min(limit, STEADIER_TRIES));
}

/** Pieces tried for a steadier one of the best: it is welcome, and no answer depends on it. */
const STEADIER_TRIES = 200_000;

type Search = Generator<BestProgress, Pick<Outcome, 'best' | 'finished' | 'looked'>>;

/** A little less, by more than what counts as the same, so that what is as good is greater. */
const sameOr = (value: number): number => value * (1 - 2 * SAME_VALUE);

function notFinished(prepared: Prepared, { best, looked, noMoreThan }: Outcome): BestAnswer {
  const tower = best === null ? null : towerOf(prepared, best);
  return { kind: 'not-finished', tower, value: best?.value ?? null, noMoreThan, looked };
}

function ceilingOf({ task }: Prepared): number | null {
  switch (task.goal.kind) {
    case 'tallest':
    case 'tallest-on-smallest-base':
      return ceilingMm(task);
    case 'most-points':
      return pointsCeiling(task, task.goal.rows);
    case 'greatest-tilt':
      return null;
  }
}
