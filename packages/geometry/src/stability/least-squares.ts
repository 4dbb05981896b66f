// Non-negative least squares, min |A x - b| with x >= 0, by the active-set method of Lawson and Hanson ("Solving Least
// Squares Problems", 1974, chapter 23; from memory), with the orthogonal factor of the active columns kept up to date.
// A is sparse by columns. Work is counted in steps, so that the same input stops at the same place everywhere.

import { OrthogonalColumns } from './orthogonal-columns.ts';
import type { SparseColumns } from './sparse-columns.ts';
import { entriesOf } from './sparse-columns.ts';

export interface LeastSquaresAnswer {
  /** False when the step limit cut the search off; x and the residual are then the best so far. */
  readonly finished: boolean;
  readonly x: Float64Array;
  /** b - A x. */
  readonly residual: Float64Array;
  readonly steps: number;
}

/** No unit. A column helps when its cosine with the residual exceeds this share of |b|; below is rounding noise. */
const HELPS = 1e-13;

export function leastSquares(matrix: SparseColumns, right: Float64Array, stepLimit: number): LeastSquaresAnswer {
  const x = new Float64Array(matrix.columns);
  const active = new OrthogonalColumns(matrix.rows);
  const barred = new Set<number>();
  const norms = Float64Array.from({ length: matrix.columns }, (_, j) => columnNorm(matrix, j));
  const enough = HELPS * Math.hypot(...right);
  let steps = 0;
  let residual = Float64Array.from(right);
  for (; steps < stepLimit; steps += 1) {
    const entering = mostHelpful(matrix, residual, norms, enough, active, barred);
    if (entering === null) return { finished: true, x, residual, steps };
    if (!active.add(entering, dense(matrix, entering))) {
      barred.add(entering);
      continue;
    }
    const moved = backToFeasible(active, right, x, entering);
    if (moved) barred.clear();
    else barred.add(entering);
    residual = Float64Array.from(residualOf(matrix, right, x));
  }
  return { finished: false, x, residual, steps };
}

/** The idle column that lessens the residual fastest, for its length. */
function mostHelpful(
  matrix: SparseColumns,
  residual: Float64Array,
  norms: Float64Array,
  enough: number,
  active: OrthogonalColumns,
  barred: ReadonlySet<number>,
): number | null {
  let best: number | null = null;
  let most = enough;
  for (let j = 0; j < matrix.columns; j += 1) {
    if (active.has(j) || barred.has(j)) continue;
    const gain = columnDot(matrix, j, residual) / (norms[j] ?? 1);
    if (gain > most) {
      most = gain;
      best = j;
    }
  }
  return best;
}

/**
 * Moves x to the free optimum over the active columns; where that would make an entry negative, stops at the wall and
 * lets that column go, again and again. False when the column that just entered was the first to go.
 */
function backToFeasible(active: OrthogonalColumns, right: Float64Array, x: Float64Array, entering: number): boolean {
  for (;;) {
    const wanted = active.solve(right);
    let share = 1;
    let leaving: number | null = null;
    active.members().forEach((j, k) => {
      const goal = wanted[k] ?? 0;
      if (goal > 0) return;
      const now = x[j] ?? 0;
      const reach = now === 0 ? 0 : now / (now - goal);
      if (leaving === null || reach < share) {
        share = reach;
        leaving = j;
      }
    });
    active.members().forEach((j, k) => {
      const now = x[j] ?? 0;
      x[j] = leaving === null ? (wanted[k] ?? 0) : Math.max(0, now + share * ((wanted[k] ?? 0) - now));
    });
    if (leaving === null) return true;
    x[leaving] = 0;
    active.remove(leaving);
    if (leaving === entering) return false;
  }
}

function residualOf(matrix: SparseColumns, right: Float64Array, x: Float64Array): Float64Array {
  const residual = Float64Array.from(right);
  x.forEach((amount, j) => {
    if (amount === 0) return;
    for (const { row, value } of entriesOf(matrix, j)) residual[row] = (residual[row] ?? 0) - amount * value;
  });
  return residual;
}

function columnDot(matrix: SparseColumns, column: number, vector: Float64Array): number {
  const end = matrix.start[column + 1] ?? 0;
  let total = 0;
  for (let k = matrix.start[column] ?? 0; k < end; k += 1) {
    total += (matrix.value[k] ?? 0) * (vector[matrix.index[k] ?? 0] ?? 0);
  }
  return total;
}

function columnNorm(matrix: SparseColumns, column: number): number {
  let total = 0;
  for (const { value } of entriesOf(matrix, column)) total += value * value;
  return Math.sqrt(total);
}

function dense(matrix: SparseColumns, column: number): Float64Array {
  const vector = new Float64Array(matrix.rows);
  for (const { row, value } of entriesOf(matrix, column)) vector[row] = value;
  return vector;
}
