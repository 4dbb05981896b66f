// The way of the parts to the worker: the report of a build and the score of a class, always of what is shown now.

import type { ClassRecord, ClassScore, EngineIssue, Report } from '@cairnmark/engine';
import type { Result } from '@cairnmark/geometry';
import { createContext } from 'preact';
import { useCallback, useContext, useEffect, useState } from 'preact/hooks';
import type { At } from '../store/where-at.ts';
import type { Build, EngineClient, Questions, Topic } from './questions.ts';
import type { Worked } from './worked.ts';
import { answered, begun, failedBy, IDLE } from './worked.ts';

export const EngineContext = createContext<EngineClient | null>(null);

export function useEngine(): EngineClient {
  const client = useContext(EngineContext);
  if (client === null) throw new RangeError('no engine above this part');
  return client;
}

export interface Asked<T> extends Worked<T> {
  /** Puts the same question once more. */
  again(): void;
}

/** The report of the try at work; `build` must be the same object until something changed. null: nothing to ask. */
export const useReport = (build: Build | null): Asked<Report> => useAnswer('report', build);

export const useClassScore = (record: ClassRecord | null): Asked<ClassScore> => useAnswer('score', record);

export function buildOf(at: Omit<At, 'tries'>): Build | null {
  if (at.attempt === null) return null;
  const { attempt, challenge, group, record } = at;
  return { attempt, challenge, group, events: record.supplies[challenge.id] ?? NO_STROKES };
}

/** The same object every time: equal strokes are the same strokes. */
export const NO_STROKES: Build['events'] = [];

type Scored = { report: Report; score: ClassScore };

/** An answer so far, with the question that it belongs to. */
interface Known<T extends keyof Scored & Topic> {
  readonly ask: Questions[T]['ask'] | null;
  /** How often it was put again. */
  readonly turn: number;
  readonly worked: Worked<Scored[T]>;
}

function useAnswer<T extends keyof Scored & Topic>(topic: T, ask: Questions[T]['ask'] | null): Asked<Scored[T]> {
  const engine = useEngine();
  const [turn, setTurn] = useState(0);
  const [known, setKnown] = useState<Known<T>>({ ask: null, turn, worked: IDLE });
  const again = useCallback(() => setTurn((before) => before + 1), []);
  useEffect(() => {
    if (ask === null) {
      setKnown({ ask, turn, worked: IDLE });
      return;
    }
    let current = true;
    const update = (change: (before: Worked<Scored[T]>) => Worked<Scored[T]>): void => {
      if (current) setKnown(({ worked }) => ({ ask, turn, worked: change(worked) }));
    };
    update(begun);
    engine
      .ask(topic, topic, ask, (solved, most) => update((before) => ({ ...before, progress: { solved, most } })))
      .then((answer) => update((before) => answered(before, answer as Result<Scored[T], EngineIssue> | null)))
      .catch((error: unknown) => update((before) => failedBy(before, error)));
    return () => {
      current = false;
    };
  }, [engine, topic, ask, turn]);
  if (known.ask === ask && known.turn === turn) return { ...known.worked, again };
  // The question has just changed, and is not put before the next effect: what is known is of the old one already.
  return { ...(ask === null ? IDLE : begun(known.worked)), again };
}
