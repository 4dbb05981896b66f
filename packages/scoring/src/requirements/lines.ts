// The rules that a build must keep or pays for, each with its verdict and the numbers behind it. Rules [Q..] of RULES.md.

import { toMillionths } from '../rounding/fixed.ts';
import { exactSum } from '../rounding/sum.ts';
import type { Comparison, Facts, Requirement, RequirementLine, Verdict } from '../types.ts';

type Measured = Extract<Requirement, { kind: 'measured' }>;

/** A line for every requirement, kept or not. `answers`: requirement id to "it is kept", as a person judged it. */
export function requirementLines(
  requirements: readonly Requirement[],
  facts: Facts,
  answers: Readonly<Record<string, boolean>>,
): RequirementLine[] {
  return requirements.map((requirement) =>
    requirement.kind === 'measured' ? measuredLine(requirement, facts) : judgedLine(requirement, answers),
  );
}

/** The points that the broken requirements cost, as a positive number. */
export function costOfBroken(lines: readonly RequirementLine[]): number {
  return exactSum(
    lines.map(({ verdict, consequence }) =>
      verdict === 'broken' && consequence.kind === 'costs' ? consequence.points : 0,
    ),
  );
}

function measuredLine({ id, measure, comparison, limit, consequence }: Measured, facts: Facts): RequirementLine {
  const value = facts.get(measure)?.value ?? null;
  const verdict = value === null ? 'not-measured' : verdictOf(isKept(value, comparison, limit));
  return { requirement: id, verdict, measure, value, comparison, limit, consequence };
}

function judgedLine({ id, consequence }: Requirement, answers: Readonly<Record<string, boolean>>): RequirementLine {
  const answer = Object.hasOwn(answers, id) ? answers[id] : undefined;
  const verdict = answer === undefined ? 'not-judged' : verdictOf(answer);
  return { requirement: id, verdict, measure: null, value: null, comparison: null, limit: null, consequence };
}

const verdictOf = (kept: boolean): Verdict => (kept ? 'kept' : 'broken');

function isKept(value: number, comparison: Comparison, limit: number): boolean {
  const [fixed, fixedLimit] = [toMillionths(value), toMillionths(limit)];
  switch (comparison) {
    case 'exactly':
      return fixed === fixedLimit;
    case 'at-least':
      return fixed >= fixedLimit;
    case 'at-most':
      return fixed <= fixedLimit;
  }
}
