// Linear programmes in whole numbers, without any rounding: minimise cost . x where every row . x is at least its limit and
// no x is below 0. No cost is below 0, so that setting all x to 0 is as cheap as can be from the start, and only broken rows
// have to be mended, one after the other: the dual simplex method. The numbers of the table are kept whole over one common
// denominator, and each pivot divides without a rest.
// Sources: C. E. Lemke 1954 (dual simplex), R. G. Bland 1977 (smallest index: it ends), J. Edmonds 1967 and E. H. Bareiss
// 1968 (whole pivots); from memory.

export interface Programme {
  /** None below 0. */
  readonly cost: readonly bigint[];
  readonly rows: readonly AtLeast[];
}

export interface AtLeast {
  readonly of: readonly bigint[];
  readonly limit: bigint;
}

/** A variable in terms of those outside: (value - of . outside) / denominator. */
export interface Inside {
  readonly variable: number;
  readonly value: bigint;
  readonly of: readonly bigint[];
}

/**
 * Variables are numbered: first the x, then what each row has beyond its limit, in the order of the rows. Those outside are
 * 0. The goal is (value + of . outside) / denominator.
 */
export interface Tableau {
  readonly denominator: bigint;
  readonly outside: readonly number[];
  readonly inside: readonly Inside[];
  readonly goal: { readonly value: bigint; readonly of: readonly bigint[] };
}

export function tableauOf({ cost, rows }: Programme): Tableau {
  return {
    denominator: 1n,
    outside: cost.map((_, j) => j),
    inside: rows.map(({ of, limit }, k) => ({
      variable: cost.length + k,
      value: -limit,
      of: of.map((coefficient) => -coefficient),
    })),
    goal: { value: 0n, of: cost },
  };
}

/**
 * The cheapest solution; or the line that nothing mends: its value is below 0 and nothing of it is, so that its variable
 * would be below 0 whatever the others are.
 */
export function mended(start: Tableau): { readonly tableau: Tableau; readonly broken: Inside | null } {
  let tableau = start;
  for (;;) {
    const at = brokenLine(tableau.inside);
    const line = tableau.inside[at];
    if (line === undefined) return { tableau, broken: null };
    const column = entering(tableau, line);
    if (column === null) return { tableau, broken: line };
    tableau = pivoted(tableau, at, column);
  }
}

/** The tableau with one more row about a variable inside: at most, or at least, a whole number. */
export function withBound(
  tableau: Tableau,
  line: Inside,
  bound: { readonly most: bigint } | { readonly least: bigint },
): Tableau {
  const variable = tableau.outside.length + tableau.inside.length;
  const { denominator } = tableau;
  const added: Inside =
    'most' in bound
      ? { variable, value: bound.most * denominator - line.value, of: line.of.map((one) => -one) }
      : { variable, value: line.value - bound.least * denominator, of: line.of };
  return { ...tableau, inside: [...tableau.inside, added] };
}

/** The line below 0 with the smallest variable; -1 where there is none. */
function brokenLine(inside: readonly Inside[]): number {
  let found = -1;
  inside.forEach(({ value, variable }, k) => {
    if (value < 0n && (found < 0 || variable < (inside[found]?.variable ?? 0))) found = k;
  });
  return found;
}

/** The column that mends the line at the least cost for each step; of equals, the one with the smallest variable. */
function entering({ goal, outside }: Tableau, line: Inside): number | null {
  let best: number | null = null;
  line.of.forEach((one, j) => {
    if (one >= 0n) return;
    const order = best === null ? -1 : costlier(goal.of, line.of, j, best);
    if (order < 0 || (order === 0 && (outside[j] ?? 0) < (outside[best ?? 0] ?? 0))) best = j;
  });
  return best;
}

/** Compares cost over step of two columns whose steps are below 0. */
function costlier(cost: readonly bigint[], step: readonly bigint[], a: number, b: number): number {
  const difference = (cost[b] ?? 0n) * (step[a] ?? 0n) - (cost[a] ?? 0n) * (step[b] ?? 0n);
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** The line at `at` goes out, the column comes in. The pivot is below 0, so all signs are turned to keep the denominator above. */
function pivoted({ denominator, outside, inside, goal }: Tableau, at: number, column: number): Tableau {
  const leaving = inside[at];
  const pivot = -(leaving?.of[column] ?? 0n);
  if (leaving === undefined || pivot <= 0n) throw new RangeError('a pivot is below 0');
  const over = (value: bigint, ownStep: bigint, ofLeaving: bigint): bigint =>
    (value * pivot + ownStep * ofLeaving) / denominator;
  const changed = (line: Inside): Inside => {
    const step = line.of[column] ?? 0n;
    return {
      variable: line.variable,
      value: over(line.value, step, leaving.value),
      of: line.of.map((one, j) => (j === column ? step : over(one, step, leaving.of[j] ?? 0n))),
    };
  };
  const entered: Inside = {
    variable: outside[column] ?? 0,
    value: -leaving.value,
    of: leaving.of.map((one, j) => (j === column ? -denominator : -one)),
  };
  const cost = goal.of[column] ?? 0n;
  return {
    denominator: pivot,
    outside: outside.map((variable, j) => (j === column ? leaving.variable : variable)),
    inside: inside.map((line, k) => (k === at ? entered : changed(line))),
    goal: {
      value: (goal.value * pivot - cost * leaving.value) / denominator,
      of: goal.of.map((one, j) => (j === column ? cost : (one * pivot + cost * (leaving.of[j] ?? 0n)) / denominator)),
    },
  };
}
