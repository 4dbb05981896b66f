// The measuring error of a sum of points. Points that follow their measures evenly err in proportion: a reading that several
// rows are built on is off by the same in all of them, so its parts add up, signs and all; what is a measure's own adds in
// quadrature (JCGM 100:2008, 5.2.2 and 5.1.2; from memory). Points that go in steps err by nothing or by whole steps: how
// many depends on the build that they are compared with, so they are told apart.

import type { Facts, MeasuredRule, PointsRow, Requirement, ScoringFact, SteppedPoints } from '../types.ts';

/** In points. As with a fact, the squares of `errors` sum to no more than the tolerance squared. */
export interface PointsErrors {
  /** Expanded; of what follows its measures evenly. */
  readonly tolerance: number;
  /** The parts of it by the reading they come from, which other builds may share. */
  readonly errors: Readonly<Record<string, number>>;
  readonly steps: readonly SteppedPoints[];
}

/** The error of what rows and rules make of the facts. What was not measured carries none. */
export function pointsErrors(
  rows: readonly PointsRow[],
  requirements: readonly Requirement[],
  facts: Facts,
): PointsErrors {
  const parts = new Map<string, number>();
  const own: number[] = [];
  const steps: SteppedPoints[] = [];
  for (const earning of byMeasure(rows, requirements, facts)) {
    const { fact } = earning;
    if (!isEven(earning)) {
      steps.push(earning);
      continue;
    }
    const rate = earning.rows.reduce((sum, { points, per }) => sum + points / per, 0);
    for (const [reading, error] of Object.entries(fact.errors)) {
      parts.set(reading, (parts.get(reading) ?? 0) + rate * error);
    }
    own.push(rate * ownError(fact));
  }
  return { tolerance: Math.hypot(...parts.values(), ...own), errors: Object.fromEntries(parts), steps };
}

/** What each measure that errs gives and takes. */
function byMeasure(
  rows: readonly PointsRow[],
  requirements: readonly Requirement[],
  facts: Facts,
): readonly SteppedPoints[] {
  const rules = requirements.filter(isPriced);
  return [...new Set([...rows, ...rules].map(({ measure }) => measure))].flatMap((measure) => {
    const fact = facts.get(measure);
    if (fact === undefined || fact.value === null || fact.tolerance === 0) return [];
    const ofMeasure = (one: { readonly measure: string }): boolean => one.measure === measure;
    return [{ fact, rows: rows.filter(ofMeasure), rules: rules.filter(ofMeasure) }];
  });
}

/** True for a rule on a measure that costs or earns points. */
const isPriced = (requirement: Requirement): requirement is MeasuredRule =>
  requirement.kind === 'measured' && requirement.consequence.kind !== 'must';

/** Each unit of the measure gives as much as any other. */
const isEven = ({ rows, rules }: SteppedPoints): boolean =>
  rules.length === 0 &&
  rows.every((row) => row.rounding === 'none' && row.capPoints === undefined && row.floorPoints === undefined);

/** What the shared parts leave of the tolerance. */
function ownError({ tolerance, errors }: ScoringFact): number {
  const sharedSq = Object.values(errors).reduce((sum, error) => sum + error ** 2, 0);
  return Math.sqrt(Math.max(0, tolerance ** 2 - sharedSq));
}
