// The way of the parts to the worker: the report of a build and the score of a class, always of what is shown now.

import type { ClassRecord, ClassScore, EngineIssue, Report } from '@cairnmark/engine';
import { createContext } from 'preact';
import { useCallback, useContext, useEffect, useState } from 'preact/hooks';
import type { At } from '../store/where-at.ts';
import type { EngineClient } from './engine-client.ts';
import type { Build, Questions, Topic } from './questions.ts';

export const EngineContext = createContext<EngineClient | null>(null);

export function useEngine(): EngineClient {
  const client = useContext(EngineContext);
  if (client === null) throw new RangeError('no engine above this part');
  return client;
}

/** `value`: the last answer there was, which is of an older question while `working`, and when it was stopped or failed. */
export interface Worked<T> {
  readonly value: T | null;
  readonly working: boolean;
  /** Programmes solved, while a hard build is judged. */
  readonly progress: { readonly solved: number; readonly most: number } | null;
  readonly issues: readonly EngineIssue[];
  readonly failed: string | null;
  /** It was cancelled before it was worked out. */
  readonly stopped: boolean;
  /** Asks once more for what was stopped or failed. */
  again(): void;
}

/** The report of the try at work; `build` must be the same object until something changed. null: nothing to ask. */
export const useReport = (build: Build | null): Worked<Report> => useAnswer('report', build);

export const useClassScore = (record: ClassRecord | null): Worked<ClassScore> => useAnswer('score', record);

export function buildOf(at: Omit<At, 'tries'>): Build | null {
  if (at.attempt === null) return null;
  const { attempt, challenge, group, record } = at;
  return { attempt, challenge, group, events: record.supplies[challenge.id] ?? NO_STROKES };
}

/** The same object every time: equal strokes are the same strokes. */
export const NO_STROKES: Build['events'] = [];

type Scored = { report: Report; score: ClassScore };

type Answer<T> = Omit<Worked<T>, 'again'>;

/** An answer so far, with the question that it belongs to, and how often that was put again. */
interface Known<T extends keyof Scored & Topic> {
  readonly ask: Questions[T]['ask'] | null;
  readonly round: number;
  readonly answer: Answer<Scored[T]>;
}

function useAnswer<T extends keyof Scored & Topic>(topic: T, ask: Questions[T]['ask'] | null): Worked<Scored[T]> {
  const engine = useEngine();
  const [round, setRound] = useState(0);
  const again = useCallback(() => setRound((before) => before + 1), []);
  const [known, setKnown] = useState<Known<T>>({ ask: null, round, answer: IDLE });
  useEffect(() => {
    if (ask === null) {
      setKnown({ ask, round, answer: IDLE });
      return;
    }
    let current = true;
    const update = (change: (before: Answer<Scored[T]>) => Answer<Scored[T]>): void => {
      if (current) setKnown(({ answer }) => ({ ask, round, answer: change(answer) }));
    };
    update(begun);
    engine
      .ask(topic, topic, ask, (solved, most) => update((before) => ({ ...before, progress: { solved, most } })))
      .then((answer) => {
        if (answer === null) update((before) => ({ ...before, working: false, progress: null, stopped: true }));
        else if (answer.ok) update(() => ({ ...IDLE, value: answer.value as Scored[T] }));
        else update(() => ({ ...IDLE, issues: answer.issues }));
      })
      .catch((error: unknown) =>
        update((before) => ({
          ...before,
          working: false,
          progress: null,
          failed: error instanceof Error ? error.message : String(error),
        })),
      );
    return () => {
      current = false;
    };
  }, [engine, topic, ask, round]);
  return { ...answerNow(known, ask, round), again };
}

function answerNow<T extends keyof Scored & Topic>(
  known: Known<T>,
  ask: Known<T>['ask'],
  round: number,
): Answer<Scored[T]> {
  if (known.ask === ask && known.round === round) return known.answer;
  // The question has just changed, and is not put before the next effect: what is known is of the old one already.
  return ask === null ? IDLE : begun(known.answer);
}

const begun = <T>(before: Answer<T>): Answer<T> => ({
  ...before,
  working: true,
  progress: null,
  issues: [],
  failed: null,
  stopped: false,
});

const IDLE = { value: null, working: false, progress: null, issues: [], failed: null, stopped: false } as const;
