// Asks the engine without a linear solver first, and again with one only where the answer says that it takes one.

import type { EngineIssue, Statics } from '@cairnmark/engine';
import { USUAL_LIMITS } from '@cairnmark/engine';
import type { Result } from '@cairnmark/geometry';
import { rememberedTabPaper } from '@cairnmark/nets';
import type { Io } from './io.ts';

export interface Answer<T> {
  readonly result: Result<T, EngineIssue>;
  /** With the solver, when it was loaded: for further questions about the same build. */
  readonly statics: Statics;
}

export async function withSolver<T>(
  ask: (statics: Statics) => Result<T, EngineIssue>,
  needsOne: (answer: T) => boolean,
  io: Io,
): Promise<Answer<T>> {
  const without = { solver: null, limits: USUAL_LIMITS, tabsOf: rememberedTabPaper() };
  const result = ask(without);
  if (!result.ok || !needsOne(result.value)) return { result, statics: without };
  const statics = { ...without, solver: await io.loadSolver() };
  return { result: ask(statics), statics };
}
