// Who earns what under a points table: a piece by itself, for its paper, for the time to fold it. Which one earns most is
// decided in whole numbers, so that a tie is a tie: 26 points in 6 minutes and 13 in 3 are the same.

import { MILLIONTHS_IN_ONE, toMillionths } from '../rounding/fixed.ts';
import type { Fraction } from './exact/fraction.ts';
import { compare } from './exact/fraction.ts';
import type { Earned, Earnings, LabData, LabKind } from './types.ts';

/**
 * [F1] to [F4] What one piece of each kind earns at these rates, in the order of the kit. Measures and rates may be any
 * finite numbers here; they are fixed to a millionth. Throws RangeError where the rates are not as many as the measures.
 */
export function whoEarns({ kinds }: LabData, rates: readonly number[]): Earnings {
  const takes = rates.some((rate) => rate < 0);
  const points = kinds.map((kind) => pointsOf(kind, rates));
  const told = (costOf: (kind: LabKind) => number | null): Earned =>
    earned(
      kinds,
      kinds.map((kind, k) => amount(points[k] ?? 0n, costOf(kind))),
      takes,
    );
  const known = (costOf: (kind: LabKind) => number | null): Earned | null => {
    const one = told(costOf);
    return one.values.some((value) => value !== null) ? one : null;
  };
  return {
    perPiece: told(() => 1),
    per100Cm2: known(({ paperMm2 }) => (paperMm2 === null ? null : paperMm2 / MM2_IN_100_CM2)),
    per10Minutes: known(({ minutes }) => (minutes === null ? null : minutes / 10)),
  };
}

const MM2_IN_100_CM2 = 10_000;

/** In millionths of millionths of a point: a product of two fixed numbers. */
function pointsOf({ id, measures }: LabKind, rates: readonly number[]): bigint {
  if (measures.length !== rates.length) throw new RangeError(`${rates.length} rates for the measures of ${id}`);
  return rates.reduce((sum, rate, j) => sum + toMillionths(rate) * toMillionths(measures[j] ?? 0), 0n);
}

const POINT = Number(MILLIONTHS_IN_ONE) ** 2;

interface Amount {
  readonly value: number;
  readonly exact: Fraction;
}

/** Points for what the piece takes; null where that is not known, or nothing. */
function amount(points: bigint, takes: number | null): Amount | null {
  const under = takes === null ? 0n : toMillionths(takes);
  if (takes === null || under <= 0n) return null;
  return { value: Number(points) / POINT / takes, exact: { over: points, under } };
}

function earned(kinds: readonly LabKind[], amounts: readonly (Amount | null)[], takes: boolean): Earned {
  const known = amounts.flatMap((one) => (one === null ? [] : [one])).sort((a, b) => compare(b.exact, a.exact));
  const [highest = NOTHING] = known;
  const isHighest = (one: Amount): boolean => compare(one.exact, highest.exact) === 0;
  const lowest = known.at(-1) ?? NOTHING;
  const next = known.find((one) => !isHighest(one)) ?? highest;
  return {
    values: amounts.map((one) => one?.value ?? null),
    favourites: kinds.filter((_, k) => amounts[k] != null && isHighest(amounts[k])).map(({ id }) => id),
    lead: highest.value - next.value,
    gap: isHighest(lowest) ? 0 : highest.value - lowest.value,
    share: takes || highest.value <= 0 ? null : lowest.value / highest.value,
  };
}

const NOTHING: Amount = { value: 0, exact: { over: 0n, under: 1n } };
