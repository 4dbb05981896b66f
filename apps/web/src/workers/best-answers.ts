// The best possible build of a challenge, and the front of height against base.

import { bestPlan, USUAL_BEST_LIMIT } from '@cairnmark/engine';
import { rememberedTabPaper } from '@cairnmark/nets';
import type { BestProgress } from '@cairnmark/scoring';
import { bestBuildSteps, heightBaseFrontSteps } from '@cairnmark/scoring';
import type { BestFound, BestQuestions } from './best-questions.ts';
import type { Progress } from './worker-client.ts';

/** `progress` is told how many pieces were tried, of how many at most. */
export function bestAnswerTo({ challenge, whose, front }: BestQuestions['best']['ask'], progress: Progress): BestFound {
  const plan = bestPlan(challenge, whose, rememberedTabPaper());
  if (plan === null) return { plan, answer: null, front: null };
  const { task } = plan;
  const isHigh = task.goal.kind === 'tallest' || task.goal.kind === 'tallest-on-smallest-base';
  const answer = taken(bestBuildSteps(task, USUAL_BEST_LIMIT), progress, 0);
  const isFront = front && isHigh && answer.kind === 'best';
  return {
    plan,
    answer,
    front: isFront ? taken(heightBaseFrontSteps(task, USUAL_BEST_LIMIT), progress, answer.looked) : null,
  };
}

/** Takes every step, and tells how far it is. */
function taken<T>(steps: Generator<BestProgress, T>, progress: Progress, before: number): T {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done === true) return step.value;
    progress(before + step.value.looked, before + USUAL_BEST_LIMIT);
  }
}
