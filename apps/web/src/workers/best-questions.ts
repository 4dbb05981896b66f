// What is asked of the worker that looks for the best possible build. Plain data both ways.

import type { BestFor, BestPlan, Challenge } from '@cairnmark/engine';
import type { BestAnswer, FrontAnswer } from '@cairnmark/scoring';
import type { Message, Question, WorkerClient } from './worker-client.ts';

/** What was worked out. `plan` null: the places of this challenge go by something else. */
export interface BestFound {
  readonly plan: BestPlan | null;
  readonly answer: BestAnswer | null;
  /** Heights against bases; null where nobody asked, or height is not what is sought. */
  readonly front: FrontAnswer | null;
}

export interface BestQuestions {
  readonly best: {
    readonly ask: { readonly challenge: Challenge; readonly whose: BestFor; readonly front: boolean };
    readonly answer: BestFound;
  };
}

export type BestClient = WorkerClient<BestQuestions>;
export type BestQuestion = Question<BestQuestions>;
export type BestMessage = Message<BestQuestions>;
