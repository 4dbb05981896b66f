// The rules that a build must keep, pays for or earns by, each with its verdict and the numbers behind it. Rules [Q..] of
// RULES.md.

import { toMillionths } from '../rounding/fixed.ts';
import { exactSum } from '../rounding/sum.ts';
import type { Answer, Comparison, Facts, Pieces, Requirement, RequirementLine, Verdict } from '../types.ts';
import { earnedVerdict, kindsVerdict } from './pieces.ts';

type Measured = Extract<Requirement, { kind: 'measured' }>;

/**
 * A line for every requirement, kept or not. `answers`: by requirement id, what a person said of a yes/no rule.
 * `used`: the pieces of the build; `earned`: those that its group has. A rule about pieces that are not known is not
 * measured, and its `measure` then names the fact that is missing.
 */
export function requirementLines(
  requirements: readonly Requirement[],
  facts: Facts,
  answers: Readonly<Record<string, Answer>>,
  used: Pieces,
  earned: Pieces,
): RequirementLine[] {
  return requirements.map((requirement) => ({
    ...EMPTY,
    requirement: requirement.id,
    consequence: requirement.consequence,
    ...verdictOn(requirement, { facts, answers, used, earned }),
  }));
}

/** What the requirements add to the points: what kept ones earn, less what broken ones cost. */
export function pointsOfRequirements(lines: readonly RequirementLine[]): number {
  return exactSum(lines.map(pointsOf));
}

const EMPTY = { measure: null, value: null, comparison: null, limit: null, breaches: [], note: null };

/** What there is to look at. */
interface Known {
  readonly facts: Facts;
  readonly answers: Readonly<Record<string, Answer>>;
  readonly used: Pieces;
  readonly earned: Pieces;
}

type Found = Pick<RequirementLine, 'verdict'> & Partial<RequirementLine>;

function verdictOn(requirement: Requirement, { facts, answers, used, earned }: Known): Found {
  switch (requirement.kind) {
    case 'measured':
      return measuredVerdict(requirement, facts);
    case 'judged':
      return judgedVerdict(requirement.id, answers);
    case 'only-kinds':
      return kindsVerdict(requirement.kinds, used);
    case 'only-earned':
      return earnedVerdict(used, earned);
  }
}

function measuredVerdict({ measure, comparison, limit }: Measured, facts: Facts): Found {
  const value = facts.get(measure)?.value ?? null;
  const verdict = value === null ? 'not-measured' : verdictOf(isKept(value, comparison, limit));
  return { verdict, measure, value, comparison, limit };
}

function judgedVerdict(id: string, answers: Readonly<Record<string, Answer>>): Found {
  const answer = Object.hasOwn(answers, id) ? answers[id] : undefined;
  const verdict = answer === undefined ? 'not-judged' : verdictOf(answer.kept);
  return { verdict, note: answer?.note ?? null };
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

function pointsOf({ verdict, consequence }: RequirementLine): number {
  if (consequence.kind === 'earns') return verdict === 'kept' ? consequence.points : 0;
  return consequence.kind === 'costs' && verdict === 'broken' ? -consequence.points : 0;
}
