// What is known of a question to the worker while it is asked, answered, given up or failed. Pure; the hook is in use-engine.ts.

import type { EngineIssue } from '@cairnmark/engine';
import type { Result } from '@cairnmark/geometry';

/** `value`: the last answer there was, which may be of an older question while `working`. */
export interface Worked<T> {
  readonly value: T | null;
  readonly working: boolean;
  /** Programmes solved, while a hard build is judged. */
  readonly progress: { readonly solved: number; readonly most: number } | null;
  readonly issues: readonly EngineIssue[];
  readonly failed: string | null;
}

export const IDLE = { value: null, working: false, progress: null, issues: [], failed: null } as const;

export const begun = <T>(before: Worked<T>): Worked<T> => ({ ...before, ...IDLE, value: before.value, working: true });

/** null: it was given up. Then nothing is known, for the value before is that of another question. */
export function answered<T>(answer: Result<T, EngineIssue> | null): Worked<T> {
  if (answer === null) return IDLE;
  return answer.ok ? { ...IDLE, value: answer.value } : { ...IDLE, issues: answer.issues };
}

export const failedBy = <T>(before: Worked<T>, error: unknown): Worked<T> => ({
  ...before,
  working: false,
  progress: null,
  failed: error instanceof Error ? error.message : String(error),
});

/** Nothing is known and nobody is at it: somebody may ask again. Only of a question that was put. */
export const isStopped = ({ value, working, issues, failed }: Worked<unknown>): boolean =>
  value === null && !working && issues.length === 0 && failed === null;
