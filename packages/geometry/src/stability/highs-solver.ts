// HiGHS (the `highs` module, MIT) as a LinearSolver. The app loads the module and hands the runtime in, so that nothing is
// loaded where it is not needed. Presolve is off and the primal simplex goes on from the last basis, since from one
// solve to the next only the goal changes. No clock and no random seed of its own: the same input gives the same answer.

import type { LinearAnswer, LinearModel, LinearSession, LinearSolver } from './linear-solver.ts';

/** The part of the runtime that is used: what `await loadHighs()` of the module gives. */
export interface HighsRuntime {
  readonly infinity: number;
  readonly constants: { readonly modelStatus: Readonly<Record<'optimal' | 'infeasible' | 'unbounded', number>> };
  createModel(source: HighsSource): HighsModel;
}

interface HighsSource {
  readonly numCols: number;
  readonly numRows: number;
  readonly colCost: Float64Array;
  readonly colLower: Float64Array;
  readonly colUpper: Float64Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly matrix: {
    readonly format: 'csc';
    readonly numRows: number;
    readonly numCols: number;
    readonly starts: Int32Array;
    readonly indices: Int32Array;
    readonly values: Float64Array;
  };
}

interface HighsModel {
  readonly options: { set(options: Readonly<Record<string, string | number | boolean>>): unknown };
  readonly info: { get(name: string): number | bigint };
  changeColsCost(
    range: { readonly kind: 'range'; readonly from: number; readonly to: number },
    costs: Float64Array,
  ): unknown;
  clearSolver(): unknown;
  run(): { readonly modelStatus: number };
  getSolution(): { readonly colValue: Float64Array };
  dispose(): void;
}

export function highsSolver(highs: HighsRuntime): LinearSolver {
  return { name: 'HiGHS', open: (model) => open(highs, model) };
}

function open(highs: HighsRuntime, model: LinearModel): LinearSession {
  const kept = highs.createModel(sourceOf(highs, model));
  kept.options.set(OPTIONS);
  const all = { kind: 'range', from: 0, to: model.matrix.columns - 1 } as const;
  return {
    maximise: (goal, pivotLimit) => {
      kept.options.set({ simplex_iteration_limit: pivotLimit });
      // HiGHS minimises.
      kept.changeColsCost(
        all,
        goal.map((share) => -share),
      );
      const status = statusOf(highs, codeOf(kept, highs.constants.modelStatus.unbounded));
      const values = status === 'optimal' ? kept.getSolution().colValue : new Float64Array(model.matrix.columns);
      return { status, values, pivots: Number(kept.info.get('simplex_iteration_count')) };
    },
    close: () => kept.dispose(),
  };
}

/**
 * The model status after a run. Now and then rounding makes the primal simplex give up, or take a region for unbounded
 * that is not: then once more from scratch by the dual simplex. null when that fails too.
 */
function codeOf(kept: HighsModel, unbounded: number): number | null {
  const warm = run(kept);
  if (warm !== null && warm !== unbounded) return warm;
  kept.clearSolver();
  kept.options.set({ simplex_strategy: DUAL });
  const fresh = run(kept);
  kept.options.set({ simplex_strategy: PRIMAL });
  return fresh;
}

/** The runtime throws when a run fails; there is nothing else that can go wrong in it. */
function run(kept: HighsModel): number | null {
  try {
    return kept.run().modelStatus;
  } catch {
    return null;
  }
}

const DUAL = 1;
const PRIMAL = 4;

/**
 * The tightest tolerances HiGHS takes are 1e-10. Rows are scaled to weights of 1, so that 1e-9 is a billionth of a
 * piece's weight; the matrix keeps entries down to 1e-12, for feathers beside bricks. Bounds are not perturbed: that left
 * 1e-7 in a margin.
 */
const OPTIONS = {
  output_flag: false,
  presolve: 'off',
  solver: 'simplex',
  simplex_strategy: PRIMAL,
  primal_simplex_bound_perturbation_multiplier: 0,
  primal_feasibility_tolerance: 1e-9,
  dual_feasibility_tolerance: 1e-10,
  small_matrix_value: 1e-12,
  random_seed: 0,
};

function sourceOf(highs: HighsRuntime, { matrix, right, free }: LinearModel): HighsSource {
  const lower = new Float64Array(matrix.columns);
  lower.fill(-highs.infinity, matrix.columns - free);
  return {
    numCols: matrix.columns,
    numRows: matrix.rows,
    colCost: new Float64Array(matrix.columns),
    colLower: lower,
    colUpper: new Float64Array(matrix.columns).fill(highs.infinity),
    rowLower: right,
    rowUpper: right,
    matrix: {
      format: 'csc',
      numRows: matrix.rows,
      numCols: matrix.columns,
      starts: matrix.start,
      indices: matrix.index,
      values: matrix.value,
    },
  };
}

function statusOf(highs: HighsRuntime, code: number | null): LinearAnswer['status'] {
  const { optimal, infeasible, unbounded } = highs.constants.modelStatus;
  switch (code) {
    case optimal:
      return 'optimal';
    case infeasible:
      return 'infeasible';
    case unbounded:
      return 'unbounded';
    default:
      return 'limit';
  }
}
