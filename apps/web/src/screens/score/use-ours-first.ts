// "Our own result first" of a try, as this device remembers it.

import type { Report } from '@cairnmark/engine';
import { useMemo, useState } from 'preact/hooks';
import { perTry } from '../../store/per-try.ts';
import { useSession } from '../../store/use-session.ts';
import type { Card } from './card.ts';
import type { Covering, OursFirst } from './ours-first.ts';
import { AS_USUAL, coveringOf } from './ours-first.ts';

export interface CoveringHere extends Covering {
  readonly turn: (on: boolean) => void;
  /** Show it anyway. */
  readonly look: (measure: string) => void;
}

/** null: there is no report yet. */
export function useOursFirst({ attempt, challenge }: Card['at'], report: Report | null): CoveringHere | null {
  const classId = useSession(({ place }) => place?.classId ?? '');
  const [state, setState] = useState(() => memory.recall(classId, attempt.id) ?? AS_USUAL);
  return useMemo(() => {
    if (report === null) return null;
    const put = (next: OursFirst): void => {
      memory.remember(classId, attempt.id, next);
      setState(next);
    };
    return {
      ...coveringOf(state, challenge, report, attempt.own),
      turn: (on) => put({ ...state, on }),
      look: (measure) => put({ ...state, looked: [...state.looked.filter((one) => one !== measure), measure] }),
    };
  }, [state, challenge, report, attempt, classId]);
}

const memory = perTry<OursFirst>('cairnmark.ours-first', (kept) => {
  const { on, looked } = (kept ?? {}) as { readonly on?: unknown; readonly looked?: unknown };
  if (!Array.isArray(looked)) return null;
  return {
    on: typeof on === 'boolean' ? on : null,
    looked: looked.filter((one): one is string => typeof one === 'string'),
  };
});
