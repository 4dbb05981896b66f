// The table of the simplex method: a row for each equation, a column for each unknown, and a basis that says which unknown
// each row gives. The largest reduced cost enters; after a run of steps without gain the lowest index does (Bland 1977,
// from memory), which cannot cycle.

import type { LinearModel } from './linear-solver.ts';
import { entriesOf } from './sparse-columns.ts';

/** No unit (rows are scaled to about 1). Entries and costs smaller than this count as 0. */
const ZERO = 1e-11;
/** No unit. An entry must exceed this to be pivoted on: dividing by rounding noise spoils every row. */
const PIVOT = 1e-9;
/** No unit. A row whose entries are all smaller than this says nothing new: noise of the first phase. */
const DEPENDENT = 1e-7;
/** No unit. The first phase ends well when the artificial parts sum to less than this. */
const FEASIBLE = 1e-9;
/** Steps without gain after which the lowest index enters. */
const PATIENCE = 40;

/** Rows of [structural columns | negatives of the free ones | right side], with a basis. Artificial columns stay implicit. */
export class SimplexTable {
  readonly #model: LinearModel;
  readonly #width: number;
  #rows: Float64Array[];
  /** Column that is basic in each row; -1 for an artificial one. */
  #basis: number[];
  pivots = 0;
  /** How the first phase ended; null before it. */
  start: 'optimal' | 'infeasible' | 'limit' | null = null;

  constructor(model: LinearModel) {
    const { matrix, right, free } = model;
    this.#model = model;
    this.#width = matrix.columns + free;
    this.#rows = Array.from(right, (value) => {
      const row = new Float64Array(this.#width + 1);
      row[this.#width] = value;
      return row;
    });
    this.#basis = this.#rows.map(() => -1);
    for (let j = 0; j < matrix.columns; j += 1) {
      const mirrored = j - (matrix.columns - free);
      for (const { row, value } of entriesOf(matrix, j)) {
        const target = this.#rows[row];
        if (target === undefined) continue;
        target[j] = value;
        if (mirrored >= 0) target[matrix.columns + mirrored] = -value;
      }
    }
    for (const row of this.#rows) {
      if ((row[this.#width] ?? 0) >= 0) continue;
      row.forEach((value, j) => {
        row[j] = -value;
      });
    }
  }

  /** Phase one: drives the artificial parts to 0. */
  makeFeasible(pivotLimit: number): 'optimal' | 'infeasible' | 'limit' {
    const costs = new Float64Array(this.#width + 1);
    for (const row of this.#rows) add(costs, row);
    const reached = this.climb(costs, pivotLimit);
    const left = this.#rows.reduce((sum, row, i) => sum + (this.#basis[i] === -1 ? (row[this.#width] ?? 0) : 0), 0);
    this.start = reached === 'limit' ? 'limit' : left > FEASIBLE ? 'infeasible' : 'optimal';
    if (this.start === 'optimal') this.#dropArtificial();
    return this.start;
  }

  /** Reduced costs of a goal for the basis as it stands; the last entry is minus the goal's value. */
  costsOf(goal: Float64Array): Float64Array {
    const { matrix, free } = this.#model;
    const costs = new Float64Array(this.#width + 1);
    costs.set(goal);
    for (let k = 0; k < free; k += 1) costs[matrix.columns + k] = -(goal[matrix.columns - free + k] ?? 0);
    this.#rows.forEach((row, i) => {
      const cost = costs[this.#basis[i] ?? 0] ?? 0;
      if (cost !== 0) subtract(costs, row, cost);
    });
    return costs;
  }

  climb(costs: Float64Array, pivotLimit: number): 'optimal' | 'unbounded' | 'limit' {
    let stalled = 0;
    for (let step = 0; step < pivotLimit; step += 1) {
      const entering = this.#entering(costs, stalled > PATIENCE);
      if (entering === null) return 'optimal';
      const leaving = this.#leaving(entering);
      if (leaving === null) return 'unbounded';
      const before = costs[this.#width] ?? 0;
      this.#pivot(leaving, entering, costs);
      stalled = Math.abs((costs[this.#width] ?? 0) - before) > ZERO ? 0 : stalled + 1;
    }
    return 'limit';
  }

  values(): Float64Array {
    const { matrix, free } = this.#model;
    const values = new Float64Array(matrix.columns);
    this.#rows.forEach((row, i) => {
      const column = this.#basis[i] ?? -1;
      const amount = row[this.#width] ?? 0;
      if (column >= matrix.columns) values[column - free] = (values[column - free] ?? 0) - amount;
      else if (column >= 0) values[column] = (values[column] ?? 0) + amount;
    });
    return values;
  }

  #entering(costs: Float64Array, lowest: boolean): number | null {
    let best: number | null = null;
    let most = ZERO;
    for (let j = 0; j < this.#width; j += 1) {
      const cost = costs[j] ?? 0;
      if (cost <= most) continue;
      best = j;
      if (lowest) return best;
      most = cost;
    }
    return best;
  }

  /** The row that reaches its wall first; among equals an artificial one, then the largest entry. */
  #leaving(entering: number): number | null {
    let best: number | null = null;
    let nearest = Number.POSITIVE_INFINITY;
    let strength = 0;
    this.#rows.forEach((row, i) => {
      const entry = row[entering] ?? 0;
      if (entry <= PIVOT) return;
      const reach = Math.max(0, row[this.#width] ?? 0) / entry;
      const weight = this.#basis[i] === -1 ? Number.POSITIVE_INFINITY : entry;
      if (reach < nearest - ZERO || (reach <= nearest + ZERO && weight > strength)) {
        best = i;
        nearest = Math.min(nearest, reach);
        strength = weight;
      }
    });
    return best;
  }

  #pivot(leaving: number, entering: number, costs: Float64Array): void {
    const row = this.#rows[leaving];
    if (row === undefined) return;
    const entry = row[entering] ?? 1;
    for (let j = 0; j < row.length; j += 1) row[j] = (row[j] ?? 0) / entry;
    row[entering] = 1;
    for (const other of this.#rows) {
      const share = other[entering] ?? 0;
      if (other !== row && share !== 0) subtract(other, row, share);
      if (other !== row) other[entering] = 0;
    }
    subtract(costs, row, costs[entering] ?? 0);
    costs[entering] = 0;
    this.#basis[leaving] = entering;
    this.pivots += 1;
  }

  /** Artificial parts left at 0: pivot them out, or strike the row when it says nothing new. */
  #dropArtificial(): void {
    const nothing = new Float64Array(this.#width + 1);
    this.#basis.forEach((column, i) => {
      if (column !== -1) return;
      const row = this.#rows[i];
      if (row === undefined) return;
      const entering = largestEntry(row, this.#width);
      if (entering !== null) this.#pivot(i, entering, nothing);
    });
    const keep = this.#basis.map((column) => column !== -1);
    this.#rows = this.#rows.filter((_, i) => keep[i]);
    this.#basis = this.#basis.filter((_, i) => keep[i]);
  }
}

function add(target: Float64Array, row: Float64Array): void {
  row.forEach((value, j) => {
    target[j] = (target[j] ?? 0) + value;
  });
}

function subtract(target: Float64Array, row: Float64Array, share: number): void {
  for (let j = 0; j < target.length; j += 1) target[j] = (target[j] ?? 0) - share * (row[j] ?? 0);
}

/** The column of the largest entry of a row, or null when all are noise. */
function largestEntry(row: Float64Array, width: number): number | null {
  let best: number | null = null;
  let most = DEPENDENT;
  for (let j = 0; j < width; j += 1) {
    const size = Math.abs(row[j] ?? 0);
    if (size <= most) continue;
    most = size;
    best = j;
  }
  return best;
}
