// Results that a group worked out itself, against the facts of its build as the class works them out: with the class's
// own pi. Where there is no drawing to work them out from, they are held against the value that counts: a ruler's reading,
// or what a person decided. mm, mm2, mm3, counts.

import type { Fact } from '@cairnmark/geometry';
import type { OwnLine, ReportedFact } from '../report-types.ts';
import type { OwnResult, OwnRule } from '../types.ts';
import { piOf } from './pi.ts';
import type { ClassWorking } from './slips.ts';
import { slipOf } from './slips.ts';
import { treeOf } from './tree-of-fact.ts';
import { EXACT, worth } from './working-tree.ts';

/** The facts of a build. */
export interface BuildFacts {
  /** As they were worked out from its layout. */
  readonly predicted: readonly Fact[];
  /** With the values that count. */
  readonly reported: readonly ReportedFact[];
}

/** One line for each own result, in their order. */
export function ownLines(own: readonly OwnResult[], rule: OwnRule, facts: BuildFacts): readonly OwnLine[] {
  return own.map((result) => ownLine(result, rule, facts));
}

function ownLine({ measure, value: own }: OwnResult, rule: OwnRule, facts: BuildFacts): OwnLine {
  const held = heldAgainst(measure, rule, facts);
  if (held === null) {
    const nothing = { expected: null, source: null, tolerance: 0 };
    return { measure, own, ...nothing, verdict: 'not-measured', slip: null, points: 0 };
  }
  const { source, working } = held;
  const { tolerance, expected } = working;
  const off = Math.abs(own - expected);
  const line = { measure, own, expected, source, tolerance };
  if (off <= Math.max(tolerance, EXACT)) {
    return { ...line, verdict: 'agrees', slip: null, points: rewardFor(measure, rule) };
  }
  const verdict = off <= rule.closeShare * Math.abs(expected) ? 'close' : 'check-the-working';
  return { ...line, verdict, slip: slipOf(own, working), points: 0 };
}

interface Held {
  readonly source: OwnLine['source'];
  readonly working: ClassWorking;
}

/** What the drawing gives, else the value that counts, which has no working; null: neither is there. */
function heldAgainst(measure: string, { pi }: OwnRule, { predicted, reported }: BuildFacts): Held | null {
  const fact = predicted.find(({ id }) => id === measure);
  if (fact?.status === 'measured') {
    const { unit, tolerance } = fact;
    const tree = treeOf(fact, predicted);
    const expected = worth(tree, piOf(pi));
    return { source: 'predicted', working: { unit, tolerance, facts: predicted, tree, expected, pi } };
  }
  const counted = reported.find(({ id }) => id === measure);
  if (counted === undefined || counted.value === null) return null;
  const { unit, tolerance, value, source } = counted;
  return { source, working: { unit, tolerance, facts: predicted, tree: { value }, expected: value, pi } };
}

const rewardFor = (measure: string, { rewards }: OwnRule): number =>
  rewards.find((reward) => reward.measure === measure)?.points ?? 0;
