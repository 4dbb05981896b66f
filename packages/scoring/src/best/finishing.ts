// A tower set on the table, held to the rules: how many pieces, which of them, how much ground, how steep. Pieces that the
// tower leaves over may stand beside it where the task says so.

import type { Placed } from './placing.ts';
import { onTable } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import type { Finished } from './search.ts';
import { SAME_VALUE, STANDS_MM } from './tolerance.ts';

/** What stands beside the tower; null when the rules do not allow the tower. */
export type Allowed = (placed: Placed, used: readonly number[]) => readonly WayOf[] | null;

export function allowed(prepared: Prepared): Allowed {
  const { task, stock } = prepared;
  const asideOf = besideWays(prepared);
  return (placed, used) => {
    if (!placed.way.mayBeLowest || onTable(placed, prepared).stands < task.pushAtLeast * (1 - SAME_VALUE)) return null;
    const needed = task.kinds.map(({ least }, kind) => Math.max(0, least - (used[kind] ?? 0)));
    const neededInAll = needed.reduce((sum, count) => sum + count, 0);
    const missing = Math.max(task.pieces.least - placed.count, neededInAll);
    if (missing <= 0) return [];
    if (!task.beside || placed.count + missing > task.pieces.most) return null;
    const beside = [...asideOf].flatMap(([kind, way]) => alike(way, needed[kind] ?? 0));
    if (beside.length < neededInAll) return null;
    for (const [kind, way] of asideOf) {
      const left = (stock[kind] ?? 0) - (used[kind] ?? 0) - (needed[kind] ?? 0);
      beside.push(...alike(way, Math.min(left, missing - beside.length)));
    }
    const fits = task.baseAtMostMm2 === null || groundMm2({ placed, beside }) <= task.baseAtMostMm2 * (1 + SAME_VALUE);
    return beside.length === missing && fits ? beside : null;
  };
}

/** mm2. The ground that a tower and what stands beside it take together. */
export const groundMm2 = ({ placed, beside }: Pick<Finished, 'placed' | 'beside'>): number =>
  beside.reduce((sum, { up }) => sum + up.baseMm2, placed.way.up.baseMm2);

const alike = (way: WayOf, count: number): WayOf[] => Array.from({ length: Math.max(0, count) }, () => way);

/** Every way in which a piece may stand by itself. */
export const standingWays = ({ ways, task, gripOnTable }: Prepared): readonly WayOf[] =>
  ways.filter(({ kind }) => gripOnTable(kind) >= task.pushAtLeast * (1 - SAME_VALUE));

/** How a piece of each kind stands beside a tower: on the least ground, and of such ways in the steadiest. */
export function besideWays(prepared: Prepared): ReadonlyMap<number, WayOf> {
  const best = new Map<number, WayOf>();
  const steady = ({ up }: WayOf): number => up.bottomInsideMm / up.centreHeightMm;
  for (const way of standingWays(prepared)) {
    const known = best.get(way.kind);
    const more = known === undefined ? 1 : known.up.baseMm2 - way.up.baseMm2;
    if (known === undefined || more > STANDS_MM || (more > -STANDS_MM && steady(way) > steady(known)))
      best.set(way.kind, way);
  }
  return new Map([...best].sort(([, a], [, b]) => a.up.baseMm2 - b.up.baseMm2));
}
