// The best build that given pieces allow. Exact: branch and bound over all orders and ways up of centred towers, held against
// brute force. A ceiling from chains of support says whether any other build could have more.

import { steadiest, tallest } from './aims.ts';
import { ceilingMm } from './ceiling.ts';
import { groundMm2 } from './finishing.ts';
import { whyNone } from './none.ts';
import type { FurtherSearch } from './on-base.ts';
import { mostForWidth, onSmallestBase, sameOr } from './on-base.ts';
import { onTable } from './placing.ts';
import { mostPoints, pointsCeiling } from './points.ts';
import type { Prepared } from './prepared.ts';
import { prepare } from './prepared.ts';
import type { Aim, Finished, Outcome, Work } from './search.ts';
import { after, search } from './search.ts';
import { SAME_VALUE } from './tolerance.ts';
import { towerOf } from './tower.ts';
import type { BestAnswer, BestGoal, BestProgress, BestTask } from './types.ts';

/** The answer at one go. `limit`: how many pieces may be tried; the same task and limit give the same answer everywhere. */
export function bestBuild(task: BestTask, limit: number): BestAnswer {
  const steps = bestBuildSteps(task, limit);
  for (let step = steps.next(); ; step = steps.next()) if (step.done === true) return step.value;
}

/** The same in steps, each with what has come out so far: whoever takes them may stop. */
export function* bestBuildSteps(task: BestTask, limit: number): Generator<BestProgress, BestAnswer> {
  const prepared = prepare(task);
  const { goal } = task;
  const work = { limit, before: 0 };
  const first = yield* firstSearch(prepared, work);
  if (!first.finished) return notFinished(prepared, first);
  if (first.best === null) return yield* whyNone(prepared.task, after(work, first.looked));
  const narrow =
    goal.kind === 'tallest-on-smallest-base'
      ? yield* onSmallestBase(prepared, first.best, after(work, first.looked))
      : NOTHING_MORE;
  const looked = first.looked + narrow.looked;
  const narrowest = narrow.best ?? first.best;
  if (!narrow.finished)
    return notFinished(prepared, { ...narrow, best: narrowest, looked, noMoreThan: first.best.value });
  const steady = yield* steadiestOf(prepared, narrowest, after(work, looked));
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

function firstSearch(prepared: Prepared, work: Work): Generator<BestProgress, Outcome> {
  const { goal } = prepared.task;
  return goal.kind === 'tallest-for-width'
    ? mostForWidth(prepared, work)
    : search(prepared, aimOf(prepared, goal), work);
}

function aimOf(prepared: Prepared, goal: Exclude<BestGoal, { kind: 'tallest-for-width' }>): Aim {
  switch (goal.kind) {
    case 'tallest':
    case 'tallest-on-smallest-base':
      return tallest(prepared, 0);
    case 'most-points':
      return mostPoints(prepared, goal.rows);
    case 'greatest-tilt':
      return steadiest(prepared, 0, 0);
  }
}

const NOTHING_MORE = { best: null, finished: true, looked: 0 };

/** A steadier one of those that are as tall on no larger a base; only as far as the work limit goes. */
function* steadiestOf(prepared: Prepared, best: Finished, { limit, before }: Work): FurtherSearch {
  const { task } = prepared;
  if (task.goal.kind !== 'tallest' && task.goal.kind !== 'tallest-on-smallest-base') return NOTHING_MORE;
  const narrow = task.goal.kind === 'tallest-on-smallest-base';
  const capped = narrow ? prepare({ ...task, baseAtMostMm2: groundMm2(best) }) : prepared;
  const { stands } = onTable(best.placed, prepared);
  const aim = steadiest(capped, sameOr(best.placed.heightMm), stands);
  return yield* search(capped, aim, { limit: Math.min(limit, STEADIER_TRIES), before });
}

/** Pieces tried for a steadier one of the best: it is welcome, and no answer depends on it. */
const STEADIER_TRIES = 200_000;

function notFinished(prepared: Prepared, { best, looked, noMoreThan }: Outcome): BestAnswer {
  const tower = best === null ? null : towerOf(prepared, best);
  const most = Math.min(noMoreThan, ceilingOf(prepared) ?? Number.POSITIVE_INFINITY);
  return { kind: 'not-finished', tower, value: best?.value ?? null, noMoreThan: most, looked };
}

function ceilingOf({ task }: Prepared): number | null {
  switch (task.goal.kind) {
    case 'tallest':
    case 'tallest-on-smallest-base':
      return ceilingMm(task);
    case 'most-points':
      return pointsCeiling(task, task.goal.rows);
    case 'tallest-for-width': {
      // A build may stand on two pieces that lie on lines across each other, as narrow as they are short.
      if (task.kinds.reduce((sum, { rolls, stock }) => sum + (rolls ? stock : 0), 0) > 1) return null;
      const leastMm = Math.min(...task.kinds.flatMap(({ ways }) => ways.map(({ baseWidthMm }) => baseWidthMm)));
      return leastMm > 0 ? ceilingMm(task) / leastMm : null;
    }
    case 'greatest-tilt':
      return null;
  }
}
