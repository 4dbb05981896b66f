// A task made ready for the search: its ways up in one list, and what every step asks for.

import { SAME_VALUE, STANDS_MM } from './tolerance.ts';
import type { BestTask, WayUp } from './types.ts';

/** A way up of a kind, by the place of the kind in the list. */
export interface WayOf {
  readonly kind: number;
  readonly massG: number;
  readonly up: WayUp;
  readonly carries: boolean;
  /** Whether it may be the lowest, by its base. */
  readonly mayBeLowest: boolean;
}

export interface Prepared {
  readonly task: BestTask;
  /** Every way in which a piece stands and bears the push by itself. */
  readonly ways: readonly WayOf[];
  readonly stock: readonly number[];
  readonly most: number;
  readonly gripBetween: (upper: number, lower: number) => number;
  readonly gripOnTable: (kind: number) => number;
}

export function prepare(asked: BestTask): Prepared {
  const isSpread = asked.beside && asked.goal.kind !== 'tallest-for-width' && asked.goal.kind !== 'greatest-tilt';
  const task: BestTask = { ...asked, beside: isSpread };
  const { kinds, grips, pushAtLeast } = task;
  const stock = kinds.map((kind) => kind.stock);
  const gripOnTable = (kind: number): number => grips?.onTable[kind] ?? Number.POSITIVE_INFINITY;
  const ways = kinds.flatMap(({ massG, ways: ups, stock: count }, kind) =>
    count === 0
      ? []
      : ups
          .filter(({ bottomInsideMm: inside }) => inside > STANDS_MM)
          .filter((up) => up.bottomInsideMm / up.centreHeightMm >= pushAtLeast * (1 - SAME_VALUE))
          .map((up): WayOf => {
            const mayBeLowest = onSmallBase(up, task) && gripOnTable(kind) >= pushAtLeast * (1 - SAME_VALUE);
            return { kind, massG, up, carries: up.topInsideMm > STANDS_MM, mayBeLowest };
          }),
  );
  return {
    task,
    ways,
    stock,
    most: Math.min(
      task.pieces.most,
      stock.reduce((sum, count) => sum + count, 0),
    ),
    gripBetween: (upper, lower) => grips?.between[upper]?.[lower] ?? Number.POSITIVE_INFINITY,
    gripOnTable,
  };
}

const onSmallBase = ({ baseMm2 }: WayUp, { baseAtMostMm2 }: BestTask): boolean =>
  baseAtMostMm2 === null || baseMm2 <= baseAtMostMm2 * (1 + SAME_VALUE);

/** The same where only some of the ways may be the lowest. */
export const standingOn = (prepared: Prepared, may: (up: WayUp) => boolean): Prepared => ({
  ...prepared,
  ways: prepared.ways.map((way) => ({ ...way, mayBeLowest: way.mayBeLowest && may(way.up) })),
});

/** Every base that a tower may stand on, by some number of it, the smallest first. */
export function basesBy({ ways }: Prepared, numberOf: (up: WayUp) => number): readonly number[] {
  const bases = ways.filter(({ mayBeLowest }) => mayBeLowest).map(({ up }) => numberOf(up));
  return [...new Set(bases)].sort((a, b) => a - b);
}
