// The report on an attempt whose names, numbers and sizes of pieces have been checked.

import type { BuildMeasures, Result } from '@cairnmark/geometry';
import { success } from '@cairnmark/geometry';
import { costOfBroken, exactSum, pointsLines, requirementLines } from '@cairnmark/scoring';
import type { Path } from '../check/checks.ts';
import type { EngineIssue } from '../check/issues.ts';
import { judgedFacts } from '../facts/judged.ts';
import { measuredFact } from '../facts/measured.ts';
import { kindFacts, stockBreaches } from '../facts/pieces.ts';
import { scoringFacts } from '../facts/scoring-facts.ts';
import type { Attempt, AttemptState, Challenge, Group, Report, ReportedFact } from '../types.ts';
import { ENGINE_VERSION } from '../version.ts';
import { measure } from './measure.ts';

/** The report, or what geometry found wrong with the layout. The attempt stands at `path`. */
export function reportOf(
  attempt: Attempt,
  challenge: Challenge,
  group: Group,
  path: Path,
): Result<Report, EngineIssue> {
  if (!hasBuilt(attempt.state)) return success(emptyReport(attempt));
  const measured = measure(attempt, challenge, group, path);
  return measured.ok ? success(scoredReport(attempt, challenge, measured.value)) : measured;
}

const hasBuilt = ({ kind }: AttemptState): boolean => kind !== 'absent' && kind !== 'not-taking-part';

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
