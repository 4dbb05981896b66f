// What is known of a question to the worker while it is asked, answered, given up or failed. Pure; the hook is in use-engine.ts.

import type { EngineIssue } from '@cairnmark/engine';
import type { Result } from '@cairnmark/geometry';

/** `value`: the last answer there was; of an older question while `working`, and when it was stopped or failed. */
export interface Worked<T> {
  readonly value: T | null;
  readonly working: boolean;
  /** Programmes solved, while a hard build is judged. */
  readonly progress: { readonly solved: number; readonly most: number } | null;
  readonly issues: readonly EngineIssue[];
  readonly failed: string | null;
  /** It was given up before it was worked out. */
  readonly stopped: boolean;
}

export const IDLE = { value: null, working: false, progress: null, issues: [], failed: null, stopped: false } as const;

export const begun = <T>(before: Worked<T>): Worked<T> => ({ ...before, ...IDLE, value: before.value, working: true });

/** null: it was given up. */
export function answered<T>(before: Worked<T>, answer: Result<T, EngineIssue> | null): Worked<T> {
  if (answer === null) return { ...before, working: false, progress: null, stopped: true };
  return answer.ok ? { ...IDLE, value: answer.value } : { ...IDLE, issues: answer.issues };
}

export const failedBy = <T>(before: Worked<T>, error: unknown): Worked<T> => ({
  ...before,
  working: false,
  progress: null,
  failed: error instanceof Error ? error.message : String(error),
});
