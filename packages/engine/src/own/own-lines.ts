// Results that a group worked out itself, against the facts of its build as the class works them out: with the class's
// own pi. mm, mm2, mm3, counts.

import type { Fact } from '@cairnmark/geometry';
import type { OwnLine } from '../report-types.ts';
import type { OwnResult, OwnRule } from '../types.ts';
import { piOf } from './pi.ts';
import { slipOf } from './slips.ts';
import { treeOf } from './tree-of-fact.ts';
import { EXACT, worth } from './working-tree.ts';

/** One line for each own result, in their order. `facts`: those of the build as they were worked out from its layout. */
export function ownLines(own: readonly OwnResult[], rule: OwnRule, facts: readonly Fact[]): readonly OwnLine[] {
  return own.map((result) => ownLine(result, rule, facts));
}

function ownLine({ measure, value: own }: OwnResult, rule: OwnRule, facts: readonly Fact[]): OwnLine {
  const fact = facts.find(({ id }) => id === measure);
  if (fact?.status !== 'measured') {
    return { measure, own, expected: null, tolerance: 0, verdict: 'not-measured', slip: null, points: 0 };
  }
  const { tolerance } = fact;
  const tree = treeOf(fact, facts);
  const expected = worth(tree, piOf(rule.pi));
  const off = Math.abs(own - expected);
  const line = { measure, own, expected, tolerance };
  if (off <= Math.max(tolerance, EXACT)) {
    return { ...line, verdict: 'agrees', slip: null, points: rewardFor(measure, rule) };
  }
  const verdict = off <= rule.closeShare * Math.abs(expected) ? 'close' : 'check-the-working';
  return { ...line, verdict, slip: slipOf(own, { fact, facts, tree, expected, pi: rule.pi }), points: 0 };
}

const rewardFor = (measure: string, { rewards }: OwnRule): number =>
  rewards.find((reward) => reward.measure === measure)?.points ?? 0;
