// Changes of what people saw of a real build: readings of the ruler, seconds, how it ended, marks, and who has seen it.

import type { Attempt, AttemptState } from '@cairnmark/engine';

type Edit = (attempt: Attempt) => Attempt;

export const withReading =
  (readingMm: number): Edit =>
  (attempt) => ({
    ...attempt,
    observed: { ...attempt.observed, heightReadingsMm: [...attempt.observed.heightReadingsMm, readingMm] },
  });

/** `index`: in the order taken. */
export const withoutReading =
  (index: number): Edit =>
  (attempt) => ({
    ...attempt,
    observed: {
      ...attempt.observed,
      heightReadingsMm: attempt.observed.heightReadingsMm.filter((_, k) => k !== index),
    },
  });

/** For how long it stood, or until it fell; null: nobody took the time. */
export const secondsOf = ({ state, observed }: Pick<Attempt, 'state' | 'observed'>): number | null =>
  state.kind === 'fell' ? state.afterSeconds : (observed.stoodSeconds ?? null);

/** The seconds of a build that fell are those until it fell. */
export const withSeconds =
  (seconds: number): Edit =>
  (attempt) =>
    attempt.state.kind === 'fell'
      ? { ...attempt, state: { kind: 'fell', afterSeconds: seconds } }
      : { ...attempt, observed: { ...attempt.observed, stoodSeconds: seconds } };

/** Nobody took the time. A build that fell fell at some moment, so its seconds stay. */
export const withoutSeconds: Edit = (attempt) => {
  if (attempt.state.kind === 'fell') return attempt;
  const { stoodSeconds: _, ...observed } = attempt.observed;
  return { ...attempt, observed };
};

/** How it ended. The seconds seen so far stand for those until it fell. */
export const withState =
  (kind: AttemptState['kind']): Edit =>
  (attempt) => {
    if (kind === attempt.state.kind) return attempt;
    const state: AttemptState = kind === 'fell' ? { kind, afterSeconds: attempt.observed.stoodSeconds ?? 0 } : { kind };
    return { ...attempt, state };
  };

/** Seen to fall with the watch running. */
export const withFall =
  (afterSeconds: number): Edit =>
  (attempt) => ({ ...attempt, state: { kind: 'fell', afterSeconds } });

export const withoutMark =
  (judge: string, criterion: string): Edit =>
  (attempt) => ({
    ...attempt,
    judged: attempt.judged.filter((one) => one.judge !== judge || one.criterion !== criterion),
  });

/** null: provisional. */
export const withSeenBy =
  (confirmedBy: string | null): Edit =>
  (attempt) => ({ ...attempt, confirmedBy });
