// How loads are shared when everything gives way evenly: of all answers of linear equations the one with the least sum of
// squares, x = A' y with A A' y = b, by Cholesky's method. Nothing keeps it from pulling where it should press.

import type { SparseColumns } from './sparse-columns.ts';
import { addColumn, columnDot, entriesOf } from './sparse-columns.ts';

/** No unit. A row whose pivot is a smaller share of its own square follows from the rows before it. */
const FOLLOWS = 1e-10;

/** Solves the first rows of the matrix, as many as there are right sides; rows that follow from others are not checked. */
export function evenShares(matrix: SparseColumns, right: Float64Array): Float64Array {
  const factor = choleskyOf(squared(matrix, right.length));
  const y = Float64Array.from(right);
  factor.forEach((row, i) => {
    y[i] = divided((y[i] ?? 0) - dot(row, y, i), row[i] ?? 0);
  });
  for (let i = factor.length - 1; i >= 0; i -= 1) {
    const row = factor[i] ?? y;
    const value = divided(y[i] ?? 0, row[i] ?? 0);
    for (let j = 0; j < i; j += 1) y[j] = (y[j] ?? 0) - value * (row[j] ?? 0);
    y[i] = value;
  }
  const padded = new Float64Array(matrix.rows);
  padded.set(y);
  return Float64Array.from({ length: matrix.columns }, (_, j) => columnDot(matrix, j, padded));
}

/** A A' of the first `count` rows, its lower triangle by rows. */
function squared(matrix: SparseColumns, count: number): readonly Float64Array[] {
  const square = Array.from({ length: count }, () => new Float64Array(matrix.rows));
  for (let j = 0; j < matrix.columns; j += 1) {
    for (const { row, value } of entriesOf(matrix, j)) {
      const target = square[row];
      if (target !== undefined) addColumn(target, matrix, j, value);
    }
  }
  return square;
}

/** L with L L' = the square, in its place; a row that follows from others gets 0 on the diagonal. */
function choleskyOf(square: readonly Float64Array[]): readonly Float64Array[] {
  square.forEach((row, i) => {
    const whole = row[i] ?? 0;
    for (let j = 0; j < i; j += 1) {
      const other = square[j] ?? row;
      row[j] = divided((row[j] ?? 0) - dot(other, row, j), other[j] ?? 0);
    }
    const left = whole - dot(row, row, i);
    row[i] = left > FOLLOWS * whole ? Math.sqrt(left) : 0;
  });
  return square;
}

/** The product over the first `count` entries. */
function dot(a: Float64Array, b: Float64Array, count: number): number {
  let total = 0;
  for (let k = 0; k < count; k += 1) total += (a[k] ?? 0) * (b[k] ?? 0);
  return total;
}

const divided = (value: number, by: number): number => (by === 0 ? 0 : value / by);
