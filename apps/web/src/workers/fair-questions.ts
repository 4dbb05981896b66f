// What Fair points asks its worker. Plain data both ways.

import type {
  Evenness,
  EvenTask,
  FamilyOnKit,
  Favouring,
  FavourTask,
  LabData,
  Offers,
  Riddle,
  RuleFamily,
} from '@cairnmark/scoring';
import type { Message, Question, WorkerClient } from './worker-client.ts';

export interface FairQuestions {
  readonly favour: {
    readonly ask: {
      readonly task: FavourTask;
      /** Rows that the task leaves out: what could be offered when there is no rule. */
      readonly further: LabData;
      /** How many different rules are wanted at most. */
      readonly rules: number;
    };
    /** `offers`: of a task that cannot be done; null where it can, or was not settled. */
    readonly answer: { readonly favouring: Favouring; readonly offers: Offers | null };
  };
  readonly even: { readonly ask: EvenTask; readonly answer: Evenness };
  readonly riddle: {
    /** `pick`: 0 to 1, the place of the secret rule among those that can be told apart. */
    readonly ask: { readonly data: LabData; readonly family: RuleFamily; readonly pick: number };
    readonly answer: { readonly riddle: Riddle; readonly onKit: FamilyOnKit };
  };
}

export type FairClient = WorkerClient<FairQuestions>;
export type FairQuestion = Question<FairQuestions>;
export type FairMessage = Message<FairQuestions>;
