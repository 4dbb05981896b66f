// The report on an attempt whose names, numbers and sizes of pieces have been checked.

import type { BuildMeasures, Result, Stability, StabilityQuestion } from '@cairnmark/geometry';
import { stabilityOf, success } from '@cairnmark/geometry';
import type { SupplyEvent } from '@cairnmark/scoring';
import { exactSum, pointsLines, pointsOfRequirements, requirementLines, sumIfKnown } from '@cairnmark/scoring';
import type { Path } from '../check/checks.ts';
import type { EngineIssue } from '../check/issues.ts';
import { judgedFacts } from '../facts/judged.ts';
import { measuredFact } from '../facts/measured.ts';
import { kindFacts, stockBreaches, usedByKind } from '../facts/pieces.ts';
import { withCountingRatios } from '../facts/ratios.ts';
import { scoringFacts } from '../facts/scoring-facts.ts';
import { stoodFact, tiltFact } from '../facts/seen.ts';
import { ownLines } from '../own/own-lines.ts';
import type { Report } from '../report-types.ts';
import { stabilityQuestion } from '../stability/question.ts';
import type { Statics } from '../stability/statics.ts';
import { supplyFacts, supplyOf } from '../supply/supply-facts.ts';
import type { Attempt, AttemptState, Challenge, Group } from '../types.ts';
import { ENGINE_VERSION } from '../version.ts';
import { measure } from './measure.ts';

/** Whose attempt it is, with the strokes of all supply lists of the challenge. The attempt stands at `path`. */
export interface Setting {
  readonly challenge: Challenge;
  readonly group: Group;
  readonly events: readonly SupplyEvent[];
  readonly statics: Statics;
  readonly path: Path;
}

/** The report, or what geometry found wrong with the layout. */
export function reportOf(attempt: Attempt, setting: Setting): Result<Report, EngineIssue> {
  if (!hasBuilt(attempt.state)) return success(emptyReport(attempt));
  const { challenge, group, statics, path } = setting;
  const measured = measure(attempt, challenge, group, path);
  if (!measured.ok) return measured;
  const stability = judged(stabilityQuestion(attempt, challenge, group, statics));
  return success(scoredReport(attempt, setting, measured.value, stability));
}

const hasBuilt = ({ kind }: AttemptState): boolean => kind !== 'absent' && kind !== 'not-taking-part';

/** Throws RangeError for a layout that geometry refuses: it has been measured. */
function judged(question: StabilityQuestion | null): Stability | null {
  if (question === null) return null;
  const answer = stabilityOf(question);
  if (!answer.ok) throw new RangeError('a build that was measured cannot be judged');
  return answer.value;
}

function emptyReport({ id, group, challenge, at, chosen, state, confirmedBy, adjustments }: Attempt): Report {
  return {
    engineVersion: ENGINE_VERSION,
    challenge,
    group,
    attempt: id,
    at,
    chosen,
    state,
    confirmedBy,
    facts: [],
    gaps: [],
    stability: null,
    stockBreaches: [],
    requirements: [],
    points: [],
    adjustments,
    own: [],
    supply: null,
    total: null,
  };
}

function scoredReport(
  attempt: Attempt,
  { challenge, group, events }: Setting,
  { facts: predicted, gaps }: BuildMeasures,
  stability: Stability | null,
): Report {
  const { layout, answers, adjustments } = attempt;
  const supply = supplyOf(events, challenge, group);
  const facts = [
    ...withCountingRatios(predicted.map((fact) => measuredFact(fact, attempt, challenge, group))),
    stoodFact(attempt),
    tiltFact(stability, attempt),
    ...kindFacts(layout, challenge.kit),
    ...judgedFacts(challenge.criteria, attempt.judged),
    ...supplyFacts(supply, challenge, group),
  ];
  const values = scoringFacts(facts);
  const used = usedByKind(layout, challenge.kit);
  const requirements = requirementLines(challenge.requirements, values, answers, used, supply?.pieces ?? null);
  const { lines: points, sum } = pointsLines(challenge.points, values);
  const own = ownLines(attempt.own, challenge.own, { predicted, reported: facts });
  const byHand = adjustments.map((adjustment) => adjustment.points);
  const earned = sumIfKnown([sum, pointsOfRequirements(requirements), ...own.map((line) => line.points)]);
  return {
    ...emptyReport(attempt),
    facts,
    gaps,
    stability,
    stockBreaches: stockBreaches(layout, challenge.kit),
    requirements,
    points,
    own,
    supply,
    total: totalOf(attempt, challenge, earned, exactSum(byHand)),
  };
}

/** What a build that fell counts, the challenge says; null: nothing, which is not 0, or what was earned is not known. */
function totalOf({ state }: Attempt, { fallen }: Challenge, earned: number | null, byHand: number): number | null {
  if (state.kind === 'stood' || fallen.counts === 'as-measured') return sumIfKnown([earned, byHand]);
  return fallen.counts === 'points' ? exactSum([fallen.points, byHand]) : null;
}
