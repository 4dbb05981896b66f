// HiGHS through the adapter: small programmes with known answers, and what the app has to rely on.

import { expect, it } from 'vitest';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { LinearModel, LinearSolver } from './linear-solver.ts';
import { simplex } from './simplex.ts';
import { ColumnWriter } from './sparse-columns.ts';

/** Rows as equations; the last `free` columns may have either sign. */
function model(rows: readonly (readonly number[])[], right: readonly number[], free: number): LinearModel {
  const columns = new ColumnWriter(rows.length);
  rows[0]?.forEach((_, j) => {
    rows.forEach((row, i) => {
      columns.put(i, row[j] ?? 0);
    });
    columns.close();
  });
  return { matrix: columns.finish(), right: Float64Array.from(right), free };
}

// x + y + slack = 7 and x - z = 3 with x, y, slack >= 0 and z free: most of z is 4, least is -3.
const KNOWN = model(
  [
    [1, 1, 1, 0],
    [1, 0, 0, -1],
  ],
  [7, 3],
  1,
);

const SOLVERS: readonly LinearSolver[] = [HIGHS, simplex];

it.each(SOLVERS)('$name: keeps the model, only the goal changes', (solver) => {
  const session = solver.open(KNOWN);
  const most = session.maximise(Float64Array.of(0, 0, 0, 1), 100);
  const least = session.maximise(Float64Array.of(0, 0, 0, -1), 100);
  session.close();
  expect([most.status, least.status]).toEqual(['optimal', 'optimal']);
  expectNear(most.values[3]!, 4, { absolute: 1e-12 });
  expectNear(least.values[3]!, -3, { absolute: 1e-12 });
});

it.each(SOLVERS)('$name: says infeasible, unbounded and limit', (solver) => {
  const status = (asked: LinearModel, goal: readonly number[], pivots: number) => {
    const session = solver.open(asked);
    const answer = session.maximise(Float64Array.from(goal), pivots);
    session.close();
    return answer.status;
  };
  // x + y = -5 has no answer with both at least 0; x - y = 5 lets both grow.
  expect(status(model([[1, 1]], [-5], 0), [1, 0], 100)).toBe('infeasible');
  expect(status(model([[1, -1]], [5], 0), [1, 0], 100)).toBe('unbounded');
  expect(status(KNOWN, [0, 0, 0, 1], 0)).toBe('limit');
});

it('two sessions give the same bits', () => {
  const values = [0, 1].map(() => {
    const session = HIGHS.open(KNOWN);
    const answer = session.maximise(Float64Array.of(1, 2, 0, 1), 100);
    session.close();
    return [...answer.values];
  });
  expect(values[0]).toEqual(values[1]);
});
