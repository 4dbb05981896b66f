// The cheapest solution in whole numbers: branch and bound. A variable that came out between two whole numbers is held
// below, then above. Each branch goes on from the table of the one before it. Nothing is rounded, so what is called
// impossible is so.

import { ceiling } from './fraction.ts';
import type { Meter } from './meter.ts';
import type { Inside, Programme, Tableau } from './tableau.ts';
import { mended, tableauOf, withBound } from './tableau.ts';

export interface WholeTask {
  readonly programme: Programme;
  /** The first so many variables are to be whole; costs are whole wherever they are. */
  readonly whole: number;
  /** Only what is cheaper than this is looked for; null: whatever it costs. */
  readonly below: bigint | null;
  /** true: any whole solution will do, however dear. */
  readonly first: boolean;
  readonly meter: Meter;
}

export type WholeAnswer =
  | { readonly status: 'found'; readonly values: readonly bigint[]; readonly cost: bigint }
  | { readonly status: 'none' }
  | { readonly status: 'stopped' };

export function cheapestWhole({ programme, whole, below, first, meter }: WholeTask): WholeAnswer {
  let best: { readonly values: readonly bigint[]; readonly cost: bigint } | null = null;
  const open: Tableau[] = [tableauOf(programme)];
  for (let next = open.pop(); next !== undefined && !(first && best !== null); next = open.pop()) {
    if (!meter.open()) return { status: 'stopped' };
    const { tableau, broken } = mended(next);
    const limit = best?.cost ?? below;
    if (broken !== null || (limit !== null && costOf(tableau) >= limit)) continue;
    const parted = partedLine(tableau, whole);
    if (parted === null) best = { values: valuesOf(tableau, whole), cost: costOf(tableau) };
    else {
      const [less, more] = branches(tableau, parted);
      open.push(more, less);
    }
  }
  return best === null ? { status: 'none' } : { status: 'found', ...best };
}

/** Rounded up: the cost of a whole solution is whole. */
const costOf = ({ goal, denominator }: Tableau): bigint => ceiling({ over: goal.value, under: denominator });

/** The line of the first variable that is to be whole and is not. */
export function partedLine({ inside, denominator }: Tableau, whole: number): Inside | null {
  let found: Inside | null = null;
  for (const line of inside) {
    if (line.variable >= whole || line.value % denominator === 0n) continue;
    if (found === null || line.variable < found.variable) found = line;
  }
  return found;
}

/** The whole numbers below and above, each as a table of its own. Values are never below 0. */
export function branches(tableau: Tableau, line: Inside): readonly [below: Tableau, above: Tableau] {
  const most = line.value / tableau.denominator;
  return [withBound(tableau, line, { most }), withBound(tableau, line, { least: most + 1n })];
}

/** Of the first so many variables; those outside are 0. */
export function valuesOf({ inside, denominator }: Tableau, count: number): readonly bigint[] {
  const values = Array.from({ length: count }, () => 0n);
  for (const { variable, value } of inside) if (variable < count) values[variable] = value / denominator;
  return values;
}
