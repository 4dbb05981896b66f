// What a search may be after, but for points: the tallest tower, the steadiest one.

import type { Allowed } from './finishing.ts';
import { allowed, groundMm2 } from './finishing.ts';
import type { Placed } from './placing.ts';
import { onTable } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import { firstLeft, heightBelow, mostOf, sumLeft } from './room-below.ts';
import type { Aim } from './search.ts';

/** Tallest, if it is taller than `aboveMm`. */
export function tallest(prepared: Prepared, aboveMm: number): Aim {
  const isAllowed = allowed(prepared);
  const below = heightBelow(prepared);
  return {
    ways: sorted(
      prepared.ways,
      ({ up }) => -up.heightMm,
      ({ massG }) => massG,
      ({ up }) => -up.bottomInsideMm,
    ),
    finish: finishAs(isAllowed, ({ heightMm }) => heightMm),
    boundBelow: (placed, used) => placed.heightMm + below(placed, used),
    matters: { height: 'more', push: false },
    above: aboveMm,
  };
}

/** On the least ground, if it is less than `belowMm2`, of all that are at least so tall. The value is the ground with its sign turned. */
export function narrowest(prepared: Prepared, heightAtLeastMm: number, belowMm2: number): Aim {
  const isAllowed = allowed(prepared);
  const { ways, boundBelow } = tallest(prepared, heightAtLeastMm);
  const lowest = mostOf(
    prepared.ways.filter(({ carries, mayBeLowest }) => carries && mayBeLowest),
    ({ up }) => -up.baseMm2,
  );
  return {
    ways,
    finish: (placed, used, above) => {
      const beside = placed.heightMm < heightAtLeastMm ? null : isAllowed(placed, used);
      const value = beside === null ? Number.NEGATIVE_INFINITY : -groundMm2({ placed, beside });
      return beside === null || value <= above ? null : { placed, beside, value };
    },
    boundBelow: (placed, used) =>
      boundBelow(placed, used) < heightAtLeastMm
        ? Number.NEGATIVE_INFINITY
        : (firstLeft(lowest, prepared.stock, used) ?? Number.NEGATIVE_INFINITY),
    matters: { height: 'more', push: false },
    above: -belowMm2,
  };
}

/** Bears the greatest push, if it is more than `abovePush`, of all that are at least so tall; 0: however tall. */
export function steadiest(prepared: Prepared, heightAtLeastMm: number, abovePush: number): Aim {
  const { most, task, stock } = prepared;
  const isAllowed = allowed(prepared);
  const heightRoom = heightBelow(prepared);
  const carriers = prepared.ways.filter(({ carries }) => carries);
  const masses = mostOf(carriers, ({ massG }) => massG);
  const lowestInsides = mostOf(
    carriers.filter(({ mayBeLowest }) => mayBeLowest),
    ({ up }) => up.bottomInsideMm,
  );
  const flattest = mostOf(carriers, ({ up }) => -up.heightMm);
  const pushOf = (placed: Placed): number => onTable(placed, prepared).stands;
  return {
    ways: sorted(
      prepared.ways,
      ({ massG }) => massG,
      ({ up }) => up.heightMm,
      ({ up }) => -up.bottomInsideMm,
    ),
    finish: (placed, used, above, spend) =>
      placed.heightMm < heightAtLeastMm ? null : finishAs(isAllowed, pushOf)(placed, used, above, spend),
    boundBelow: (placed, used) => {
      const room = most - placed.count;
      const insideMm = firstLeft(lowestInsides, stock, used);
      if (room <= 0 || insideMm === null) return Number.NEGATIVE_INFINITY;
      if (heightAtLeastMm > 0 && placed.heightMm + heightRoom(placed, used) < heightAtLeastMm)
        return Number.NEGATIVE_INFINITY;
      const fewest = Math.max(1, task.beside ? 1 : task.pieces.least - placed.count);
      const liftMm = Math.max(-sumLeft(flattest, stock, used, fewest), heightAtLeastMm - placed.heightMm);
      const massMostG = placed.massG + sumLeft(masses, stock, used, room);
      const onFootPush = (insideMm * massMostG) / (placed.moment + placed.massG * liftMm);
      return Math.min(placed.tipsPush, placed.slidesPush, onFootPush);
    },
    matters: { height: heightAtLeastMm > 0 ? 'more' : 'no', push: true },
    above: abovePush,
  };
}

const finishAs =
  (isAllowed: Allowed, valueOf: (placed: Placed) => number): Aim['finish'] =>
  (placed, used, above) => {
    const value = valueOf(placed);
    const beside = value > above ? isAllowed(placed, used) : null;
    return beside === null ? null : { placed, beside, value };
  };

/** Sorted by the first number, then the second, and so on. */
export function sorted(ways: readonly WayOf[], ...by: readonly ((way: WayOf) => number)[]): readonly WayOf[] {
  return [...ways].sort((a, b) => by.reduce((order, of) => (order === 0 ? of(a) - of(b) : order), 0));
}
