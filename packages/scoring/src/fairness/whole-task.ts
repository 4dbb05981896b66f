// A task in whole numbers: points in steps, and what the chosen kind has more of than each other one.

import type { FavourTask } from './favour-types.ts';
import type { LabData, PointStep } from './types.ts';

export interface WholeFavour {
  /** The other kinds in the order of the kit: what the favourite has more of, row by row. */
  readonly more: readonly (readonly bigint[])[];
  /** In steps of the points. */
  readonly lead: bigint;
  readonly most: bigint;
  readonly rows: number;
  readonly negative: boolean;
}

/** Throws RangeError for a task that makes no sense: an error of the programmer. */
export function wholeFavour({ data, favourite, lead, most, negative, step }: FavourTask): WholeFavour {
  const measures = wholeMeasures(data);
  const at = data.kinds.findIndex(({ id }) => id === favourite);
  const own = measures[at];
  if (own === undefined) throw new RangeError(`no kind ${favourite}`);
  return {
    more: measures.filter((_, k) => k !== at).map((theirs) => own.map((count, j) => count - (theirs[j] ?? 0n))),
    lead: inSteps(lead, step),
    most: inSteps(most, step),
    rows: data.rows.length,
    negative,
  };
}

/** Throws RangeError for fewer than two kinds, and for measures that are not whole numbers from 0 on, one for each row. */
export function wholeMeasures({ kinds, rows }: LabData): readonly (readonly bigint[])[] {
  if (kinds.length < 2) throw new RangeError('one kind alone has nobody to be compared with');
  return kinds.map(({ id, measures }) => {
    const whole = measures.length === rows.length && measures.every((one) => Number.isSafeInteger(one) && one >= 0);
    if (!whole) throw new RangeError(`the measures of ${id} are not whole`);
    return measures.map(BigInt);
  });
}

/** Throws RangeError for points that are not above 0, or no multiple of the step. */
export function inSteps(points: number, step: PointStep): bigint {
  const steps = points / step;
  if (!Number.isSafeInteger(steps) || steps <= 0) throw new RangeError(`${points} points are no steps of ${step}`);
  return BigInt(steps);
}
