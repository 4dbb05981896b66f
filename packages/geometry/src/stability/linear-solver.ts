// What stability asks of a solver of linear programmes. The app hands one in; the package never loads any.

import type { SparseColumns } from './sparse-columns.ts';

/** Find x with `matrix` x = `right`, x >= 0 except the last `free` columns, which may have either sign. */
export interface LinearModel {
  readonly matrix: SparseColumns;
  readonly right: Float64Array;
  readonly free: number;
}

export interface LinearAnswer {
  readonly status: 'optimal' | 'infeasible' | 'unbounded' | 'limit';
  /** Values of the columns when optimal. */
  readonly values: Float64Array;
  readonly pivots: number;
}

/** A model that is kept, so that only the goal changes from one solve to the next. */
export interface LinearSession {
  /** Maximise the sum of `goal`[j] x[j]; 'limit' after `pivotLimit` pivots. */
  readonly maximise: (goal: Float64Array, pivotLimit: number) => LinearAnswer;
  /** Gives back what the solver holds; the session is not used after it. */
  readonly close: () => void;
}

export interface LinearSolver {
  readonly name: string;
  readonly open: (model: LinearModel) => LinearSession;
}
