// Sparse matrices by columns: written once from left to right, then only read.

/** Columns one after another: entries start[j] .. start[j + 1] belong to column j. */
export interface SparseColumns {
  readonly rows: number;
  readonly columns: number;
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly value: Float64Array;
}

export interface Entry {
  readonly row: number;
  readonly value: number;
}

/** The entries of one column. */
export function* entriesOf(matrix: SparseColumns, column: number): Generator<Entry> {
  const end = matrix.start[column + 1] ?? 0;
  for (let k = matrix.start[column] ?? 0; k < end; k += 1) {
    yield { row: matrix.index[k] ?? 0, value: matrix.value[k] ?? 0 };
  }
}

/** The sum of a column's entries, each times that of the vector in its row. */
export function columnDot(matrix: SparseColumns, column: number, vector: Float64Array): number {
  const end = matrix.start[column + 1] ?? 0;
  let total = 0;
  for (let k = matrix.start[column] ?? 0; k < end; k += 1) {
    total += (matrix.value[k] ?? 0) * (vector[matrix.index[k] ?? 0] ?? 0);
  }
  return total;
}

/** Adds `share` times a column to a vector. */
export function addColumn(vector: Float64Array, matrix: SparseColumns, column: number, share: number): void {
  const end = matrix.start[column + 1] ?? 0;
  for (let k = matrix.start[column] ?? 0; k < end; k += 1) {
    const row = matrix.index[k] ?? 0;
    vector[row] = (vector[row] ?? 0) + share * (matrix.value[k] ?? 0);
  }
}

/** The columns of two matrices of equally many rows, one after the other. */
export function sideBySide(left: SparseColumns, right: SparseColumns): SparseColumns {
  const [columns, entries] = [left.columns + right.columns, left.value.length + right.value.length];
  const joined = {
    rows: left.rows,
    columns,
    start: new Int32Array(columns + 1),
    index: new Int32Array(entries),
    value: new Float64Array(entries),
  };
  joined.start.set(
    right.start.map((at) => at + left.value.length),
    left.columns,
  );
  joined.start.set(left.start);
  for (const array of ['index', 'value'] as const) {
    joined[array].set(left[array]);
    joined[array].set(right[array], left.value.length);
  }
  return joined;
}

/** Collects the entries of a matrix column by column. */
export class ColumnWriter {
  readonly #rows: number;
  readonly #start: number[] = [0];
  readonly #index: number[] = [];
  readonly #value: number[] = [];

  constructor(rows: number) {
    this.#rows = rows;
  }

  /** Adds an entry to the column that is being written; zeros are left out. */
  put(row: number, value: number): void {
    if (value === 0) return;
    this.#index.push(row);
    this.#value.push(value);
  }

  /** Ends the column that is being written. */
  close(): void {
    this.#start.push(this.#index.length);
  }

  finish(): SparseColumns {
    return {
      rows: this.#rows,
      columns: this.#start.length - 1,
      start: Int32Array.from(this.#start),
      index: Int32Array.from(this.#index),
      value: Float64Array.from(this.#value),
    };
  }
}
