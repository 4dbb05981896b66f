// That there is no whole solution, as a proof that can be added up without knowing how it was found: limits are parted at a
// variable until in each part a sum of rows cannot hold.

import type { NoRule } from '../favour-types.ts';
import type { Meter } from './meter.ts';
import type { Inside, Programme, Tableau } from './tableau.ts';
import { mended, tableauOf } from './tableau.ts';
import { branches, partedLine } from './whole.ts';

export interface NoWholeTask {
  /** Limits of the variables are rows of it, behind the `told` first rows of which the proof speaks. */
  readonly programme: Programme;
  /** All variables are whole; the proof tells them with this added. */
  readonly shift: bigint;
  readonly told: number;
  readonly meter: Meter;
}

/** null: a whole solution was met, or the meter stopped. */
export function noWhole({ programme, shift, told, meter }: NoWholeTask): NoRule | null {
  const variables = programme.cost.length;
  const prove = (start: Tableau): NoRule | null => {
    if (!meter.open()) return null;
    const { tableau, broken } = mended(start);
    if (broken !== null) return { shares: sharesOf(tableau, broken, variables, told) };
    const parted = partedLine(tableau, variables);
    if (parted === null) return null;
    const [less, more] = branches(tableau, parted);
    const below = prove(less);
    const above = below === null ? null : prove(more);
    if (below === null || above === null) return null;
    return { row: parted.variable, upTo: Number(parted.value / tableau.denominator + shift), below, above };
  };
  return prove(tableauOf(programme));
}

/** How often each told row stands in the line that nothing mends. */
function sharesOf(
  { outside, denominator }: Tableau,
  broken: Inside,
  variables: number,
  told: number,
): readonly bigint[] {
  return Array.from({ length: told }, (_, k) => {
    if (broken.variable === variables + k) return denominator;
    const column = outside.indexOf(variables + k);
    return column < 0 ? 0n : (broken.of[column] ?? 0n);
  });
}
