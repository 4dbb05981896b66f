// Non-linear least squares with outliers. Sources: Marquardt, An algorithm for least-squares estimation of nonlinear
// parameters, J. SIAM 11, 1963 (damping scaled by the diagonal); Huber, Robust estimation of a location parameter, Ann. Math.
// Statist. 35, 1964 (weights), with his usual bound of 1.345 standard deviations (from memory).

import { cholesky, inverseCholesky, solveCholesky } from './matrix.ts';

export interface Problem {
  readonly start: ArrayLike<number>;
  /** Every residual divided by its standard deviation: first what was measured, then what was known before. */
  readonly residuals: (parameters: Float64Array) => Float64Array;
  /** How many of them were measured and may be outliers; what was known before is never doubted. */
  readonly measured: number;
  /** How far each parameter is moved to see how the residuals answer: a small share of its likely error. */
  readonly steps: ArrayLike<number>;
}

export interface Solution {
  readonly parameters: Float64Array;
  /** Inverse of the weighted normal matrix: the covariance, if the stated deviations are true. Row by row. */
  readonly covariance: Float64Array;
  readonly residuals: Float64Array;
  /** 1 for what was taken at full weight. */
  readonly weights: Float64Array;
  readonly converged: boolean;
}

/** The best parameters; null when the residuals do not determine them, or are not finite at the start. */
export function leastSquares(problem: Problem): Solution | null {
  const { residuals: evaluate, measured, steps } = problem;
  let parameters = Float64Array.from(problem.start);
  const size = parameters.length;
  let residuals = evaluate(parameters);
  let loss = lossOf(residuals, measured);
  if (!Number.isFinite(loss)) return null;
  let damping = FIRST_DAMPING;
  let converged = false;
  for (let round = 0; round < MOST_ROUNDS && !converged; round += 1) {
    const { matrix, slope } = normalEquations(problem, parameters, residuals);
    let better = false;
    while (!better && damping < MOST_DAMPING) {
      const step = dampedStep(matrix, slope, size, damping);
      if (step === null) {
        damping *= DAMPING_UP;
        continue;
      }
      const moved = parameters.map((value, k) => value - (step[k] ?? 0));
      const next = evaluate(moved);
      const nextLoss = lossOf(next, measured);
      better = nextLoss <= loss;
      if (better) {
        converged =
          step.every((value, k) => Math.abs(value) <= (steps[k] ?? 0)) || loss - nextLoss <= LEAST_GAIN * loss;
        [parameters, residuals, loss, damping] = [moved, next, nextLoss, damping / DAMPING_DOWN];
      } else {
        damping *= DAMPING_UP;
      }
    }
    // No step is better: this is the place, as far as rounding lets one see.
    if (!better) converged = true;
  }
  const { matrix, weights } = normalEquations(problem, parameters, residuals);
  const lower = cholesky(matrix, size);
  if (lower === null) return null;
  return { parameters, covariance: inverseCholesky(lower, size), residuals, weights, converged };
}

/** Standard deviations up to which a residual counts fully. */
const HUBER_BOUND = 1.345;
const [FIRST_DAMPING, DAMPING_UP, DAMPING_DOWN, MOST_DAMPING] = [1e-3, 7, 5, 1e12];
/** Rounds; fits of a camera take about eight, with outliers some more. */
const MOST_ROUNDS = 60;
/** A round that gains less than this share of the loss is the last. */
const LEAST_GAIN = 1e-6;

/** Half a square up to the bound, straight on from there: what a residual in its own deviations costs. */
export function huberLoss(residual: number): number {
  const size = Math.abs(residual);
  return size <= HUBER_BOUND ? (size * size) / 2 : HUBER_BOUND * (size - HUBER_BOUND / 2);
}

function lossOf(residuals: Float64Array, measured: number): number {
  let loss = 0;
  residuals.forEach((residual, k) => {
    loss += k >= measured ? (residual * residual) / 2 : huberLoss(residual);
  });
  return loss;
}

function normalEquations(
  { residuals: evaluate, measured, steps }: Problem,
  parameters: Float64Array,
  residuals: Float64Array,
): { matrix: Float64Array; slope: Float64Array; weights: Float64Array } {
  const size = parameters.length;
  const columns = Array.from(parameters, (value, k) => {
    const step = steps[k] ?? 0;
    const there = Float64Array.from(parameters);
    there[k] = value + step;
    const after = evaluate(there);
    there[k] = value - step;
    const before = evaluate(there);
    return after.map((high, i) => (high - (before[i] ?? 0)) / (2 * step));
  });
  const weights = residuals.map((residual, k) =>
    k >= measured || Math.abs(residual) <= HUBER_BOUND ? 1 : HUBER_BOUND / Math.abs(residual),
  );
  const matrix = new Float64Array(size * size);
  const slope = new Float64Array(size);
  columns.forEach((first, a) => {
    columns.forEach((second, b) => {
      if (b > a) return;
      let sum = 0;
      for (let i = 0; i < residuals.length; i += 1) sum += (weights[i] ?? 0) * (first[i] ?? 0) * (second[i] ?? 0);
      matrix[a * size + b] = sum;
      matrix[b * size + a] = sum;
    });
    slope[a] = residuals.reduce((sum, residual, i) => sum + (weights[i] ?? 0) * (first[i] ?? 0) * residual, 0);
  });
  return { matrix, slope, weights };
}

function dampedStep(matrix: Float64Array, slope: Float64Array, size: number, damping: number): Float64Array | null {
  const damped = Float64Array.from(matrix);
  for (let k = 0; k < size; k += 1) damped[k * size + k] = (matrix[k * size + k] ?? 0) * (1 + damping);
  const lower = cholesky(damped, size);
  return lower === null ? null : solveCholesky(lower, size, slope);
}
