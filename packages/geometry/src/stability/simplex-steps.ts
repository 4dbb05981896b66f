// The steps of the simplex method on a table: first to an answer at all, then up to the best one. The largest reduced cost
// enters; after a run of steps without gain the lowest index does (Bland 1977, from memory), which cannot cycle.

import type { SimplexTable, TableRow } from './simplex-table.ts';

/** No unit (rows are scaled to about 1). Entries and costs smaller than this count as 0. */
const ZERO = 1e-11;
/** No unit. An entry must exceed this to be pivoted on: dividing by rounding noise spoils every row. */
const PIVOT = 1e-9;
/** No unit. The first phase ends well when the artificial parts sum to less than this. */
const FEASIBLE = 1e-9;
/** Steps without gain after which the lowest index enters. */
const PATIENCE = 40;

/** Phase one: drives the artificial parts to 0. */
export function makeFeasible(table: SimplexTable, pivotLimit: number): 'optimal' | 'infeasible' | 'limit' {
  const artificial = table.rows.filter(({ basic }) => basic === null);
  const costs = Float64Array.from({ length: table.columns + 1 }, (_, j) =>
    artificial.reduce((sum, { entries }) => sum + (entries[j] ?? 0), 0),
  );
  if (climb(table, costs, pivotLimit) === 'limit') return 'limit';
  const left = artificial.reduce((sum, { basic, entries }) => sum + (basic === null ? table.rightOf(entries) : 0), 0);
  if (left > FEASIBLE) return 'infeasible';
  table.dropArtificial();
  return 'optimal';
}

/** Phase two, for reduced costs that are kept up to date. */
export function climb(table: SimplexTable, costs: Float64Array, pivotLimit: number): 'optimal' | 'unbounded' | 'limit' {
  let stalled = 0;
  for (let step = 0; step < pivotLimit; step += 1) {
    const entering = enteringColumn(table, costs, stalled > PATIENCE);
    if (entering === null) return 'optimal';
    const leaving = leavingRow(table, entering);
    if (leaving === null) return 'unbounded';
    const before = table.rightOf(costs);
    table.pivot(leaving, entering, costs);
    stalled = Math.abs(table.rightOf(costs) - before) > ZERO ? 0 : stalled + 1;
  }
  return 'limit';
}

/** Unknowns of either sign that are not solved for gain without end, whichever way they go. */
function enteringColumn({ columns, firstFree }: SimplexTable, costs: Float64Array, lowest: boolean): number | null {
  let best: number | null = null;
  let most = ZERO;
  for (let j = 0; j < columns; j += 1) {
    const cost = j < firstFree ? (costs[j] ?? 0) : Math.abs(costs[j] ?? 0);
    if (cost <= most) continue;
    best = j;
    if (lowest) return best;
    most = cost;
  }
  return best;
}

/** The row that reaches 0 first; among equals an artificial one, then the largest entry. */
function leavingRow(table: SimplexTable, entering: number): TableRow | null {
  let best: TableRow | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  let strength = 0;
  for (const row of table.rows) {
    const entry = row.entries[entering] ?? 0;
    if (row.isFree || entry <= PIVOT) continue;
    const reach = Math.max(0, table.rightOf(row.entries)) / entry;
    const weight = row.basic === null ? Number.POSITIVE_INFINITY : entry;
    if (reach < nearest - ZERO || (reach <= nearest + ZERO && weight > strength)) {
      best = row;
      nearest = Math.min(nearest, reach);
      strength = weight;
    }
  }
  return best;
}
