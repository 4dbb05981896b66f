// How far the measuring error of a difference may swing points that follow a measure in steps: by nothing where neither
// build is near a step, by whole steps where one is. A step that would only take the two further apart is none between
// them. Points and values in whole millionths.

import { rowPoints } from '../points/lines.ts';
import { rulePoints } from '../requirements/lines.ts';
import type { Millionths } from '../rounding/fixed.ts';
import { fromMillionths, toMillionths } from '../rounding/fixed.ts';
import type { ScoringFact, SteppedPoints } from '../types.ts';
import type { ReadingError } from './difference.ts';
import { differenceErrorSq, readingError, rootAbove } from './difference.ts';

/** The points that a build has by one measure. */
export interface Stepped {
  readonly value: Millionths;
  readonly error: ReadingError;
  readonly pointsAt: (value: Millionths) => Millionths;
  /** The swing of two builds is no more than their reaches together. */
  readonly reach: Millionths;
}

/** By measure. */
export type SteppedByMeasure = ReadonlyMap<string, Stepped>;

export function steppedByMeasure(steps: readonly SteppedPoints[]): SteppedByMeasure {
  return new Map(steps.map((one) => [one.fact.id, stepped(one)]));
}

/** The sum, over all measures, of the squares of the swings that bring one build down to one with no more points. */
export function swingsSq(ahead: SteppedByMeasure, behind: SteppedByMeasure): bigint {
  let sum = 0n;
  for (const measure of new Set([...ahead.keys(), ...behind.keys()])) {
    const swing = swingOf(ahead.get(measure), behind.get(measure));
    sum += swing * swing;
  }
  return sum;
}

/** How far a value may lie from what it is held for, in its unit. */
export interface ErrorReach {
  readonly below: number;
  readonly above: number;
}

/**
 * Of one build alone, compared with none: its tolerance either way, and with it, in quadrature, what its steps fall or rise
 * at the two ends of the errors of their measures.
 */
export function errorReach({ tolerance, steps = [] }: Pick<ScoringFact, 'tolerance' | 'steps'>): ErrorReach {
  const even = toMillionths(tolerance);
  let [belowSq, aboveSq] = [even * even, even * even];
  for (const one of steps.map(stepped)) {
    const { fall, rise } = changes(one, nearestRoot(one.error.wholeSq));
    belowSq += fall * fall;
    aboveSq += rise * rise;
  }
  return { below: fromMillionths(nearestRoot(belowSq)), above: fromMillionths(nearestRoot(aboveSq)) };
}

function stepped({ fact, rows, rules }: SteppedPoints): Stepped {
  const error = readingError(fact.tolerance, fact.errors);
  const pointsAt = (value: Millionths): Millionths =>
    rows.reduce((sum, row) => sum + rowPoints(row, value).points, 0n) +
    rules.reduce((sum, rule) => sum + rulePoints(rule, value), 0n);
  // An error moves a row by so many times `per`, and by one more that rounding makes of it; a rule turns at most once.
  const mostTimes = (per: number): number => Number(rootAbove(error.wholeSq)) / Number(toMillionths(per)) + 1;
  const most =
    rows.reduce((sum, { points, per }) => sum + Math.abs(points) * mostTimes(per), 0) +
    rules.reduce((sum, { consequence }) => sum + (consequence.kind === 'must' ? 0 : consequence.points), 0);
  return { value: toMillionths(fact.value ?? 0), error, pointsAt, reach: toMillionths(most) + 1n };
}

/** By how much the one may fall, or the other rise. What was measured of one build alone errs as that one does. */
function swingOf(ahead: Stepped | undefined, behind: Stepped | undefined): Millionths {
  const errorSq =
    ahead === undefined || behind === undefined
      ? ((ahead ?? behind)?.error.wholeSq ?? 0n)
      : differenceErrorSq(ahead.error, behind.error);
  const error = nearestRoot(errorSq);
  if (error === 0n) return 0n;
  const fall = ahead === undefined ? 0n : changes(ahead, error).fall;
  const rise = behind === undefined ? 0n : changes(behind, error).rise;
  return larger(fall, rise);
}

/** Of the points, when the measure moves up or down by the error; no measure is less than 0. */
function changes({ value, pointsAt }: Stepped, error: Millionths): { readonly fall: bigint; readonly rise: bigint } {
  const now = pointsAt(value);
  const [up, down] = [pointsAt(value + error) - now, pointsAt(larger(value - error, 0n)) - now];
  return { fall: larger(0n, larger(-up, -down)), rise: larger(0n, larger(up, down)) };
}

/** To the nearest millionth. */
const nearestRoot = (square: bigint): Millionths => BigInt(Math.round(Math.sqrt(Number(square))));

const larger = (a: bigint, b: bigint): bigint => (a > b ? a : b);
