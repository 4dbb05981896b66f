// The stopwatch of a try, kept on this device while it runs.

import { useState } from 'preact/hooks';
import { perTry } from '../../store/per-try.ts';
import { useSession } from '../../store/use-session.ts';
import type { Clocks } from './kept-stopwatch.ts';
import { goingOn, readStopwatch, toKeep } from './kept-stopwatch.ts';
import type { Stopwatch } from './stopwatch.ts';

const memory = perTry('cairnmark.stopwatch', readStopwatch);

export function useStopwatch(attempt: string): [Stopwatch, (watch: Stopwatch) => void] {
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [watch, setWatch] = useState(() => goingOn(memory.recall(classId, attempt), clocks()));
  const put = (next: Stopwatch): void => {
    setWatch(next);
    memory.remember(classId, attempt, toKeep(next, clocks()));
  };
  return [watch, put];
}

/** Does a stopwatch run for this try? */
export const isTimed = (classId: string, attempt: string): boolean =>
  goingOn(memory.recall(classId, attempt), clocks()).startedMs !== null;

const clocks = (): Clocks => ({ nowMs: performance.now(), ofDayMs: Date.now() });
