// What judging whether a build stands takes beside the records: a solver, handed in by the app, and how much work is spent.

import type { LinearSolver, TabsOf, WorkLimits } from '@cairnmark/geometry';
import type { ClassScore } from '../class/score-class.ts';
import type { Report } from '../report-types.ts';

export interface Statics {
  /** null: none is loaded. Towers and small builds are judged without; others say that they need one. */
  readonly solver: LinearSolver | null;
  readonly limits: WorkLimits;
  /** The tabs of a printed net, which weigh too. */
  readonly tabsOf: TabsOf;
}

/** Enough for builds of a hundred pieces; the same input stops at the same place on every machine. */
export const USUAL_LIMITS: WorkLimits = { solves: 120, pivots: 20_000, trials: 200 };

/** Whether a report would say more with a solver than it does without. */
export const needsSolver = ({ stability }: Report): boolean => stability?.verdict === 'needs-solver';

/** The same of a whole class. */
export const someNeedSolver = ({ reports }: ClassScore): boolean =>
  [...reports.values()].some((one) => one.some(needsSolver));
