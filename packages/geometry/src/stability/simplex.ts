// A small linear solver: the two-phase simplex method on a dense table (Dantzig, "Linear Programming and Extensions",
// 1963; from memory). Meant for builds of a few bodies and as a second opinion; large builds get a sparse solver.

import type { LinearAnswer, LinearModel, LinearSession, LinearSolver } from './linear-solver.ts';
import { climb, makeFeasible } from './simplex-steps.ts';
import { SimplexTable } from './simplex-table.ts';
import type { SparseColumns } from './sparse-columns.ts';
import { addColumn, entriesOf } from './sparse-columns.ts';

export const simplex: LinearSolver = {
  name: 'dense simplex',
  open: (asked): LinearSession => {
    const scale = columnScale(asked.matrix);
    const model = { ...asked, matrix: scaleColumns(asked.matrix, scale) };
    const unscaled = (answer: LinearAnswer): LinearAnswer => ({ ...answer, values: times(answer.values, scale) });
    let kept: Start | null = null;
    return {
      maximise: (goalAsked, pivotLimit): LinearAnswer => {
        const goal = times(goalAsked, scale);
        const warm = kept && maximise(model, kept, goal, pivotLimit);
        if (warm) return unscaled(warm);
        kept = startOf(model, pivotLimit);
        const fresh = maximise(model, kept, goal, pivotLimit);
        return unscaled(fresh ?? { status: 'limit', values: kept.table.values(), pivots: kept.table.pivots });
      },
      close: () => undefined,
    };
  },
};

/** A table after the first phase, and how that ended. */
interface Start {
  readonly table: SimplexTable;
  readonly status: 'optimal' | 'infeasible' | 'limit';
}

function startOf(model: LinearModel, pivotLimit: number): Start {
  const table = new SimplexTable(model);
  return { table, status: makeFeasible(table, pivotLimit) };
}

/** What each column has to be multiplied by for its largest entry to be 1. */
function columnScale(matrix: SparseColumns): Float64Array {
  return Float64Array.from({ length: matrix.columns }, (_, j) => {
    let largest = 0;
    for (const { value } of entriesOf(matrix, j)) largest = Math.max(largest, Math.abs(value));
    return largest > 0 ? 1 / largest : 1;
  });
}

function scaleColumns(matrix: SparseColumns, scale: Float64Array): SparseColumns {
  const value = Float64Array.from(matrix.value);
  scale.forEach((factor, j) => {
    const end = matrix.start[j + 1] ?? 0;
    for (let k = matrix.start[j] ?? 0; k < end; k += 1) value[k] = (value[k] ?? 0) * factor;
  });
  return { ...matrix, value };
}

const times = (values: Float64Array, scale: Float64Array): Float64Array =>
  values.map((value, j) => value * (scale[j] ?? 1));

/** null: rounding has spoilt the table, the answer does not solve the equations. */
function maximise(
  model: LinearModel,
  { table, status: start }: Start,
  goal: Float64Array,
  pivotLimit: number,
): LinearAnswer | null {
  const before = table.pivots;
  const status = start === 'optimal' ? climb(table, table.costsOf(goal), pivotLimit) : start;
  const values = table.values();
  if (status === 'optimal' && !solves(model, values)) return null;
  return { status, values, pivots: table.pivots - before };
}

/** No unit (rows are scaled to about 1). An answer that misses an equation by more has been spoilt by rounding. */
const SPOILT = 1e-6;

/** Puts the answer back into the equations that were asked. */
function solves({ matrix, right }: LinearModel, values: Float64Array): boolean {
  const left = Float64Array.from(right);
  values.forEach((amount, j) => {
    addColumn(left, matrix, j, -amount);
  });
  return left.every((miss) => Math.abs(miss) <= SPOILT);
}
