// The rules that a build must keep, pays for or earns by, each with its verdict and the numbers behind it. Rules [Q..] of
// RULES.md.

import type { Millionths } from '../rounding/fixed.ts';
import { toMillionths } from '../rounding/fixed.ts';
import { sumIfKnown } from '../rounding/sum.ts';
import type {
  Answer,
  Consequence,
  Facts,
  MeasuredRule,
  Pieces,
  Requirement,
  RequirementLine,
  Verdict,
} from '../types.ts';
import { earnedVerdict, kindsVerdict } from './pieces.ts';

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

/** What the requirements add to the points: what kept ones earn, less what broken ones cost. null: not known. */
export function pointsOfRequirements(lines: readonly RequirementLine[]): number | null {
  return sumIfKnown(lines.map(requirementPoints));
}

/** What one of them adds; null: not known, since it may cost points and what it is about was not measured. */
export function requirementPoints({ verdict, consequence }: RequirementLine): number | null {
  const mayCost = consequence.kind === 'costs' && consequence.points > 0;
  return mayCost && verdict === 'not-measured' ? null : pointsFor(verdict, consequence);
}

/** What the rule adds to the points for a value of its measure. */
export function rulePoints(rule: MeasuredRule, value: Millionths): Millionths {
  return toMillionths(pointsFor(verdictAt(rule, value), rule.consequence));
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

function measuredVerdict(rule: MeasuredRule, facts: Facts): Found {
  const { measure, comparison, limit } = rule;
  const value = facts.get(measure)?.value ?? null;
  const verdict = value === null ? 'not-measured' : verdictAt(rule, toMillionths(value));
  return { verdict, measure, value, comparison, limit };
}

function judgedVerdict(id: string, answers: Readonly<Record<string, Answer>>): Found {
  const answer = Object.hasOwn(answers, id) ? answers[id] : undefined;
  const verdict = answer === undefined ? 'not-judged' : verdictOf(answer.kept);
  return { verdict, note: answer?.note ?? null };
}

const verdictOf = (kept: boolean): Verdict => (kept ? 'kept' : 'broken');

/** What the rule says of a value of its measure. */
function verdictAt({ comparison, limit }: MeasuredRule, value: Millionths): Verdict {
  const fixedLimit = toMillionths(limit);
  switch (comparison) {
    case 'exactly':
      return verdictOf(value === fixedLimit);
    case 'at-least':
      return verdictOf(value >= fixedLimit);
    case 'at-most':
      return verdictOf(value <= fixedLimit);
  }
}

function pointsFor(verdict: Verdict, consequence: Consequence): number {
  if (consequence.kind === 'earns') return verdict === 'kept' ? consequence.points : 0;
  return consequence.kind === 'costs' && verdict === 'broken' ? -consequence.points : 0;
}
