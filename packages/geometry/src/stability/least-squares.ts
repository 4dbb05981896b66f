// Non-negative least squares, min |A x - b| with x >= 0, by the active-set method of Lawson and Hanson ("Solving Least
// Squares Problems", 1974, chapter 23; from memory), with the orthogonal factor of the active columns kept up to date.
// The columns of A are those of cones of friction. Work is counted in steps, so that the same input stops at the same
// place everywhere.

import type { ConeColumns } from './cone-columns.ts';
import { OrthogonalColumns } from './orthogonal-columns.ts';

export interface LeastSquaresAnswer {
  /** False when the step limit cut the search off; x and the residual are then the best so far. */
  readonly finished: boolean;
  /** Amounts of the columns that are used. */
  readonly x: ReadonlyMap<number, number>;
  /** b - A x. */
  readonly residual: Float64Array;
  readonly steps: number;
}

/** No unit. A column helps when its cosine with the residual exceeds this share of |b|; below is rounding noise. */
const HELPS = 1e-13;

/** No unit. What adding up the terms of the residual may leave of each: a few times the rounding of a double. */
const ROUNDING = 1e-15;

export function leastSquares(columns: ConeColumns, right: Float64Array, stepLimit: number): LeastSquaresAnswer {
  const x = new Map<number, number>();
  const active = new OrthogonalColumns(right);
  const barred = new Set<number>();
  const whole = HELPS * Math.hypot(...right);
  const isOut = (column: number): boolean => active.has(column) || barred.has(column);
  let residual = residualOf(columns, right, x);
  for (let steps = 0; steps < stepLimit; steps += 1) {
    const enough = Math.max(whole, ROUNDING * termsOf(columns, x));
    const entering = columns.bestPull(residual, enough, isOut) ?? columns.bestEdge(residual, enough, isOut);
    if (entering === null) return { finished: true, x, residual, steps };
    if (!active.add(entering, vectorOf(columns, entering))) {
      barred.add(entering);
      continue;
    }
    const moved = backToFeasible(active, x, entering);
    if (moved) barred.clear();
    else barred.add(entering);
    residual = residualOf(columns, right, x);
  }
  return { finished: false, x, residual, steps: stepLimit };
}

/**
 * Moves x to the free optimum over the active columns; where that would make an entry negative, stops at the wall and
 * lets that column go, again and again. False when the column that just entered was the first to go.
 */
function backToFeasible(active: OrthogonalColumns, x: Map<number, number>, entering: number): boolean {
  for (;;) {
    const wanted = active.solve();
    let share = 1;
    let leaving: number | null = null;
    active.members().forEach((column, k) => {
      const goal = wanted[k] ?? 0;
      if (goal > 0) return;
      const now = x.get(column) ?? 0;
      const reach = now === 0 ? 0 : now / (now - goal);
      if (leaving === null || reach < share) {
        share = reach;
        leaving = column;
      }
    });
    active.members().forEach((column, k) => {
      const now = x.get(column) ?? 0;
      x.set(column, leaving === null ? (wanted[k] ?? 0) : Math.max(0, now + share * ((wanted[k] ?? 0) - now)));
    });
    if (leaving === null) return true;
    x.delete(leaving);
    active.remove(leaving);
    if (leaving === entering) return false;
  }
}

function residualOf(columns: ConeColumns, right: Float64Array, x: ReadonlyMap<number, number>): Float64Array {
  const residual = Float64Array.from(right);
  for (const [column, amount] of x) columns.addTo(residual, column, -amount);
  return residual;
}

/** What the terms of A x come to when none of them cancels another: much more than b where a feather lies under a brick. */
function termsOf(columns: ConeColumns, x: ReadonlyMap<number, number>): number {
  let sum = 0;
  for (const [column, amount] of x) sum += amount * columns.lengthOf(column);
  return sum;
}

function vectorOf(columns: ConeColumns, column: number): Float64Array {
  const vector = new Float64Array(columns.rows);
  columns.addTo(vector, column, 1);
  return vector;
}
