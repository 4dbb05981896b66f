// The front of height against base: for each base the tallest tower that stands on no more, as far as it is taller than what
// stands on less. To be drawn as a step line, since no base between two points bears more than the smaller one.

import { steadiest, tallest } from './aims.ts';
import { sameOr } from './on-base.ts';
import { onTable } from './placing.ts';
import { basesBy, prepare } from './prepared.ts';
import { after, search } from './search.ts';
import { towerOf } from './tower.ts';
import type { BestProgress, BestTask, FrontAnswer, FrontPoint } from './types.ts';

/** The front at one go; the goal of the task and pieces beside the tower are left out. */
export function heightBaseFront(task: BestTask, limit: number): FrontAnswer {
  const steps = heightBaseFrontSteps(task, limit);
  for (let step = steps.next(); ; step = steps.next()) if (step.done === true) return step.value;
}

/** The same in steps. The value of a step is the height of the last point, mm. */
export function* heightBaseFrontSteps(asked: BestTask, limit: number): Generator<BestProgress, FrontAnswer> {
  const task: BestTask = { ...asked, beside: false };
  const points: FrontPoint[] = [];
  const work = { limit, before: 0 };
  let looked = 0;
  for (const baseMm2 of basesBy(prepare(task), (up) => up.baseMm2)) {
    const capped = prepare({ ...task, baseAtMostMm2: baseMm2 });
    const one = yield* search(capped, tallest(capped, points.at(-1)?.heightMm ?? 0), after(work, looked));
    looked += one.looked;
    if (!one.finished) return { points, finished: false, looked };
    if (one.best === null) continue;
    const { heightMm } = one.best.placed;
    const { stands } = onTable(one.best.placed, capped);
    const steady = yield* search(capped, steadiest(capped, sameOr(heightMm), stands), after(work, looked));
    looked += steady.looked;
    const tower = towerOf(capped, steady.best ?? one.best);
    points.push({ baseMm2: tower.baseMm2, heightMm, tower });
  }
  return { points, finished: true, looked };
}
