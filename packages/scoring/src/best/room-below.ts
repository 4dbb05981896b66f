// What can still be added below a tower that is being built from the top down: never too little, whatever the order.

import type { Placed } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';

/** How much more of something the pieces below may bring, at most; minus infinity when none can go below. */
export type RoomBelow = (placed: Placed, used: readonly number[]) => number;

/** Height below, mm. */
export function heightBelow(prepared: Prepared): RoomBelow {
  const { most, task, stock } = prepared;
  const carriers = prepared.ways.filter(({ carries }) => carries);
  const heights = mostOf(carriers, ({ up }) => up.heightMm);
  const masses = mostOf(carriers, ({ massG }) => massG);
  const lowest = carriers.filter(({ mayBeLowest }) => mayBeLowest);
  const lowestHeights = mostOf(lowest, ({ up }) => up.heightMm);
  const lowestInsides = mostOf(lowest, ({ up }) => up.bottomInsideMm);
  return (placed, used) => {
    const room = most - placed.count;
    const lastMm = firstLeft(lowestHeights, stock, used);
    if (room <= 0 || lastMm === null) return Number.NEGATIVE_INFINITY;
    const freelyMm = Math.min(sumLeft(heights, stock, used, room), sumLeft(heights, stock, used, room - 1) + lastMm);
    if (task.pushAtLeast <= 0) return freelyMm;
    // On the table the common centre of mass is no higher than the widest foot allows; what goes below lifts all of this.
    const centreMostMm = (firstLeft(lowestInsides, stock, used) ?? 0) / task.pushAtLeast;
    const massMostG = placed.massG + sumLeft(masses, stock, used, room);
    return Math.min(freelyMm, (centreMostMm * massMostG - placed.moment) / placed.massG);
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
