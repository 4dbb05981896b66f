// What can still be added below a tower that is being built from the top down: never too little, whatever the order.

import type { Placed } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import { SAME_VALUE } from './tolerance.ts';

/** How much more of something the pieces below may bring, at most; minus infinity when none can go below. */
export type RoomBelow = (placed: Placed, used: readonly number[]) => number;

/** Height below, mm. */
export function heightBelow(prepared: Prepared): RoomBelow {
  const { most, task, stock } = prepared;
  const carriers = prepared.ways.filter(({ carries }) => carries);
  const heights = mostOf(carriers, ({ up }) => up.heightMm);
  const flattest = mostOf(carriers, ({ up }) => -up.heightMm);
  const lightest = mostOf(carriers, ({ massG }) => -massG);
  const lowest = carriers.filter(({ mayBeLowest }) => mayBeLowest);
  const lowestHeights = mostOf(lowest, ({ up }) => up.heightMm);
  const lowestInsides = mostOf(lowest, ({ up }) => up.bottomInsideMm);
  const balances = new Map(
    lowestInsides.map(({ value: insideMm }) => {
      const centreMm = insideMm / task.pushAtLeast;
      return [insideMm, mostOf(carriers, ({ massG, up }) => massG * Math.max(0, centreMm - up.centreHeightMm))];
    }),
  );
  return (placed, used) => {
    const room = most - placed.count;
    const lastMm = firstLeft(lowestHeights, stock, used);
    if (room <= 0 || lastMm === null) return Number.NEGATIVE_INFINITY;
    if (task.pushAtLeast <= 0) {
      const freelyMm = sumLeft(heights, stock, used, room);
      return Math.min(freelyMm, sumLeft(heights, stock, used, room - 1) + lastMm);
    }
    // On the table the common centre of mass is no higher than the widest foot allows. What goes below brings it down by its
    // own weight, and lifts all that is above: what is placed, and of the pieces below each one those over it.
    const insideMm = firstLeft(lowestInsides, stock, used) ?? 0;
    const balance = sums(balances.get(insideMm) ?? [], stock, used, room);
    const tallest = sums(heights, stock, used, room);
    const leastLift = (firstLeft(flattest, stock, used) ?? 0) * (firstLeft(lightest, stock, used) ?? 0);
    const levelMm = insideMm / task.pushAtLeast - placed.moment / placed.massG;
    const fewest = task.beside ? 1 : Math.max(1, task.pieces.least - placed.count);
    let mostMm = Number.NEGATIVE_INFINITY;
    for (let below = fewest; below < tallest.length; below += 1) {
      const lift = (leastLift * below * (below - 1)) / 2;
      const steadyMm = levelMm + ((balance[below] ?? 0) - lift) / placed.massG;
      const leastMm = -sumLeft(flattest, stock, used, below);
      const freelyMm = Math.min(tallest[below] ?? 0, (tallest[below - 1] ?? 0) + lastMm);
      if (steadyMm >= leastMm * (1 - SAME_VALUE)) mostMm = Math.max(mostMm, Math.min(freelyMm, steadyMm));
    }
    return mostMm;
  };
}

/** Whether the kinds that must be used still can be, below or, where the task allows it, beside. */
export function needsFit({ task, ways, stock, most }: Prepared): (placed: Placed, used: readonly number[]) => boolean {
  const carried = new Set(ways.filter(({ carries }) => carries).map(({ kind }) => kind));
  const needed = task.kinds.flatMap(({ least }, kind) => (least > 0 ? [{ kind, least }] : []));
  if (needed.some(({ kind, least }) => least > (stock[kind] ?? 0))) return () => false;
  return (placed, used) => {
    const missing = needed.map(({ kind, least }) => ({ kind, count: Math.max(0, least - (used[kind] ?? 0)) }));
    const inAll = missing.reduce((sum, { count }) => sum + count, 0);
    return (
      placed.count + inAll <= most &&
      (task.beside || missing.every(({ kind, count }) => count === 0 || carried.has(kind)))
    );
  };
}

/** What each kind brings at most, the most first. */
export type MostOf = readonly { readonly kind: number; readonly value: number }[];

export function mostOf(ways: readonly WayOf[], valueOf: (way: WayOf) => number): MostOf {
  const best = new Map<number, number>();
  for (const way of ways) best.set(way.kind, Math.max(best.get(way.kind) ?? Number.NEGATIVE_INFINITY, valueOf(way)));
  return [...best].map(([kind, value]) => ({ kind, value })).sort((a, b) => b.value - a.value);
}

/** The most that one piece that is left brings; null when none is left. */
export function firstLeft(order: MostOf, stock: readonly number[], used: readonly number[]): number | null {
  for (const { kind, value } of order) if ((stock[kind] ?? 0) > (used[kind] ?? 0)) return value;
  return null;
}

/** What the first `room` pieces that are left bring together. */
export function sumLeft(order: MostOf, stock: readonly number[], used: readonly number[], room: number): number {
  let [sum, left] = [0, room];
  for (const { kind, value } of order) {
    if (left <= 0) break;
    const count = Math.min(left, (stock[kind] ?? 0) - (used[kind] ?? 0));
    sum += count * value;
    left -= count;
  }
  return sum;
}

/** The same for no piece, one, two and so on, as far as there are pieces and room. */
function sums(order: MostOf, stock: readonly number[], used: readonly number[], room: number): readonly number[] {
  const all = [0];
  let sum = 0;
  for (const { kind, value } of order) {
    for (let left = (stock[kind] ?? 0) - (used[kind] ?? 0); left > 0 && all.length <= room; left -= 1) {
      sum += value;
      all.push(sum);
    }
  }
  return all;
}
