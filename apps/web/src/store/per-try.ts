// What this device remembers of single tries, beside the class: a small text a try, the latest tries only. Never part of a
// class, and gone without harm.

import { keepValues, keptValues } from './kept-values.ts';

export interface PerTry<T> {
  recall(classId: string, attempt: string): T | null;
  /** null: forgotten again. */
  remember(classId: string, attempt: string, value: T | null): void;
}

/** Enough for all tries of a day of 24 groups. */
const TRIES_MOST = 200;

/** `read` takes what was kept, which another version of the app may have written; null: not of use. */
export function perTry<T>(key: string, read: (kept: unknown) => T | null): PerTry<T> {
  return {
    recall: (classId, attempt) => read(keptValues(key)[nameOf(classId, attempt)] ?? null),
    remember: (classId, attempt, value) => {
      const { [nameOf(classId, attempt)]: _before, ...others } = keptValues(key);
      const kept = value === null ? others : { ...others, [nameOf(classId, attempt)]: value };
      // A device that keeps nothing begins anew after a reload.
      keepValues(key, Object.fromEntries(Object.entries(kept).slice(-TRIES_MOST)));
    },
  };
}

const nameOf = (classId: string, attempt: string): string => `${classId}/${attempt}`;
