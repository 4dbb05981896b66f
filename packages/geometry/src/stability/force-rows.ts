// The equations of equilibrium without the moments: what can slide, when nothing can tip.

import { ROWS_PER_BODY } from './equilibrium.ts';
import type { LinearModel } from './linear-solver.ts';
import { ColumnWriter, entriesOf } from './sparse-columns.ts';

/** Keeps the three force rows of each body. */
export function forceRows({ matrix, right, free }: LinearModel): LinearModel {
  const columns = new ColumnWriter(matrix.rows / 2);
  for (let column = 0; column < matrix.columns; column += 1) {
    for (const { row, value } of entriesOf(matrix, column)) if (isForce(row)) columns.put(forceRow(row), value);
    columns.close();
  }
  return { matrix: columns.finish(), right: right.filter((_, row) => isForce(row)), free };
}

const isForce = (row: number): boolean => row % ROWS_PER_BODY < 3;

const forceRow = (row: number): number => Math.floor(row / ROWS_PER_BODY) * 3 + (row % ROWS_PER_BODY);
