// The table of the simplex method: a row for each equation, a column for each unknown, and for each row the unknown that it
// gives. Unknowns of either sign are solved for at the start, largest entry first, and their rows hold nothing back.

import type { LinearModel } from './linear-solver.ts';
import { entriesOf } from './sparse-columns.ts';

export interface TableRow {
  /** One entry for each column, then the right side. */
  readonly entries: Float64Array;
  /** The column whose value the row gives; null for an artificial part, which has to come to 0. */
  basic: number | null;
  /** Whether that value may have either sign. */
  isFree: boolean;
}

/** No unit. Entries that are all smaller than this say nothing new: noise of the steps before. */
const DEPENDENT = 1e-7;

export class SimplexTable {
  readonly columns: number;
  /** Columns from this one on may have either sign. */
  readonly firstFree: number;
  rows: readonly TableRow[];
  pivots = 0;

  constructor({ matrix, right, free }: LinearModel) {
    this.columns = matrix.columns;
    this.firstFree = matrix.columns - free;
    this.rows = Array.from(right, (value) => {
      const entries = new Float64Array(matrix.columns + 1);
      entries[matrix.columns] = value;
      return { entries, basic: null, isFree: false };
    });
    for (let j = 0; j < matrix.columns; j += 1) {
      for (const { row, value } of entriesOf(matrix, j)) this.rows[row]?.entries.fill(value, j, j + 1);
    }
    this.#solveForFree();
    for (const { entries, isFree } of this.rows) if (!isFree && this.rightOf(entries) < 0) scale(entries, -1);
  }

  rightOf(entries: Float64Array): number {
    return entries[this.columns] ?? 0;
  }

  /** Reduced costs of a goal for the table as it stands; the last entry is minus the goal's value. */
  costsOf(goal: Float64Array): Float64Array {
    const costs = new Float64Array(this.columns + 1);
    costs.set(goal);
    for (const { entries, basic } of this.rows) if (basic !== null) subtract(costs, entries, costs[basic] ?? 0);
    return costs;
  }

  values(): Float64Array {
    const values = new Float64Array(this.columns);
    for (const { entries, basic } of this.rows) if (basic !== null) values[basic] = this.rightOf(entries);
    return values;
  }

  /** Makes a row give another unknown, and takes that out of all other rows and of the costs. */
  pivot(row: TableRow, entering: number, costs: Float64Array): void {
    scale(row.entries, 1 / (row.entries[entering] ?? 1));
    for (const other of [...this.rows.map(({ entries }) => entries), costs]) {
      if (other === row.entries) continue;
      subtract(other, row.entries, other[entering] ?? 0);
      other[entering] = 0;
    }
    row.entries[entering] = 1;
    row.basic = entering;
    this.pivots += 1;
  }

  /** Artificial parts that are left at 0: makes their rows give an unknown, or strikes those that say nothing new. */
  dropArtificial(): void {
    for (const row of this.rows) {
      const entering = row.basic === null ? largestEntry(row.entries.subarray(0, this.firstFree)) : null;
      if (entering !== null) this.pivot(row, entering, this.#noCosts());
    }
    this.rows = this.rows.filter(({ basic }) => basic !== null);
  }

  /** One row for each unknown of either sign; one that others can stand in for is left at 0. */
  #solveForFree(): void {
    for (let j = this.firstFree; j < this.columns; j += 1) {
      const left = this.rows.filter(({ basic }) => basic === null);
      const row = left[largestEntry(left.map(({ entries }) => entries[j] ?? 0)) ?? left.length];
      if (row === undefined) continue;
      this.pivot(row, j, this.#noCosts());
      row.isFree = true;
    }
  }

  #noCosts(): Float64Array {
    return new Float64Array(this.columns + 1);
  }
}

function scale(entries: Float64Array, share: number): void {
  entries.forEach((value, j) => {
    entries[j] = share * value;
  });
}

function subtract(target: Float64Array, row: Float64Array, share: number): void {
  if (share === 0) return;
  for (let j = 0; j < target.length; j += 1) target[j] = (target[j] ?? 0) - share * (row[j] ?? 0);
}

/** The place of the largest entry, or null when all are noise. */
function largestEntry(entries: ArrayLike<number>): number | null {
  let best: number | null = null;
  let most = DEPENDENT;
  for (let j = 0; j < entries.length; j += 1) {
    const size = Math.abs(entries[j] ?? 0);
    if (size <= most) continue;
    most = size;
    best = j;
  }
  return best;
}
