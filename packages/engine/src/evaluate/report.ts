// The report on an attempt whose names, numbers and sizes of pieces have been checked.

import type { BuildMeasures, Result, Stability, StabilityQuestion } from '@cairnmark/geometry';
import { stabilityOf, success } from '@cairnmark/geometry';
import { costOfBroken, exactSum, pointsLines, requirementLines } from '@cairnmark/scoring';
import type { Path } from '../check/checks.ts';
import type { EngineIssue } from '../check/issues.ts';
import { judgedFacts } from '../facts/judged.ts';
import { measuredFact } from '../facts/measured.ts';
import { kindFacts, stockBreaches } from '../facts/pieces.ts';
import { scoringFacts } from '../facts/scoring-facts.ts';
import { stabilityQuestion } from '../stability/question.ts';
import type { Statics } from '../stability/statics.ts';
import type { Attempt, AttemptState, Challenge, Group, Report, ReportedFact } from '../types.ts';
import { ENGINE_VERSION } from '../version.ts';
import { measure } from './measure.ts';

/** The report, or what geometry found wrong with the layout. The attempt stands at `path`. */
export function reportOf(
  attempt: Attempt,
  challenge: Challenge,
  group: Group,
  statics: Statics,
  path: Path,
): Result<Report, EngineIssue> {
  if (!hasBuilt(attempt.state)) return success(emptyReport(attempt));
  const measured = measure(attempt, challenge, group, path);
  if (!measured.ok) return measured;
  const scored = scoredReport(attempt, challenge, measured.value);
  return success({ ...scored, stability: judged(stabilityQuestion(attempt, challenge, group, statics)) });
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
    total: null,
  };
}

function scoredReport(attempt: Attempt, challenge: Challenge, { facts: predicted, gaps }: BuildMeasures): Report {
  const facts: readonly ReportedFact[] = [
    ...predicted.map((fact) => measuredFact(fact, attempt, challenge)),
    ...kindFacts(attempt.layout, challenge.kit),
    ...judgedFacts(challenge.criteria, attempt.judged),
  ];
  const values = scoringFacts(facts);
  const requirements = requirementLines(challenge.requirements, values, attempt.answers);
  const points = pointsLines(challenge.points, values);
  const byHand = attempt.adjustments.map((adjustment) => adjustment.points);
  return {
    ...emptyReport(attempt),
    facts,
    gaps,
    stockBreaches: stockBreaches(attempt.layout, challenge.kit),
    requirements,
    points: points.lines,
    total: exactSum([points.sum, -costOfBroken(requirements), ...byHand]),
  };
}
