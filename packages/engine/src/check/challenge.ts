// Does a challenge make sense: every name it uses is one it has, and every number can be reckoned with.

import { CONTACT_MM } from '@cairnmark/geometry';
import type { PointsRow, RankingRule, Requirement } from '@cairnmark/scoring';
import { FIXED_TO } from '@cairnmark/scoring';
import { factIds, POINTS_ID } from '../facts/ids.ts';
import { GAP_ALLOWANCE_MM_MOST, MEASURING_ERROR_MM_MOST, POINTS_MOST, SLACK_MM_MOST, VALUE_MOST } from '../limits.ts';
import type { Challenge } from '../types.ts';
import type { Path } from './checks.ts';
import { idsTwice, outOfRange, pointsOutOfRange, unknownMeasure } from './checks.ts';
import type { EngineIssue } from './issues.ts';
import { kitIssues } from './kit.ts';

/** Everything that is wrong with the challenge, which stands at `path`. */
export function challengeIssues(challenge: Challenge, path: Path): EngineIssue[] {
  const known = factIds(challenge);
  return [
    ...kitIssues(challenge.kit, [...path, 'kit']),
    ...idsTwice(challenge.criteria, [...path, 'criteria']),
    ...idsTwice(challenge.points, [...path, 'points']),
    ...idsTwice(challenge.requirements, [...path, 'requirements']),
    ...(challenge.heightCounts.length === 0
      ? [{ code: 'height-source-missing' as const, path: [...path, 'heightCounts'], details: {} }]
      : []),
    ...outOfRange(challenge.gapAllowanceMm, [...path, 'gapAllowanceMm'], CONTACT_MM, GAP_ALLOWANCE_MM_MOST),
    ...outOfRange(challenge.slackMm, [...path, 'slackMm'], 0, SLACK_MM_MOST),
    ...outOfRange(challenge.measuringErrorMm, [...path, 'measuringErrorMm'], 0, MEASURING_ERROR_MM_MOST),
    ...challenge.points.flatMap((row, k) => rowIssues(row, known, [...path, 'points', k])),
    ...challenge.requirements.flatMap((one, k) => requirementIssues(one, known, [...path, 'requirements', k])),
    ...rankingIssues(challenge.ranking, known, [...path, 'ranking']),
  ];
}

/** Scoring fixes every value to a millionth, so that a smaller `per` would be 0. */
function rowIssues(row: PointsRow, known: ReadonlySet<string>, path: Path): EngineIssue[] {
  const { capPoints: cap, floorPoints: floor } = row;
  return [
    ...unknownMeasure(row.measure, known, [...path, 'measure']),
    ...pointsOutOfRange(row.points, [...path, 'points']),
    ...outOfRange(row.per, [...path, 'per'], FIXED_TO, VALUE_MOST),
    ...(cap === undefined ? [] : pointsOutOfRange(cap, [...path, 'capPoints'])),
    ...(floor === undefined ? [] : pointsOutOfRange(floor, [...path, 'floorPoints'])),
    ...(cap !== undefined && floor !== undefined && cap < floor
      ? [{ code: 'cap-below-floor' as const, path: [...path, 'capPoints'], details: { cap, floor } }]
      : []),
  ];
}

function requirementIssues(requirement: Requirement, known: ReadonlySet<string>, path: Path): EngineIssue[] {
  const { consequence } = requirement;
  return [
    ...(requirement.kind === 'measured'
      ? [
          ...unknownMeasure(requirement.measure, known, [...path, 'measure']),
          ...outOfRange(requirement.limit, [...path, 'limit'], 0, VALUE_MOST),
        ]
      : []),
    ...(consequence.kind === 'costs'
      ? outOfRange(consequence.points, [...path, 'consequence', 'points'], 0, POINTS_MOST)
      : []),
  ];
}

function rankingIssues({ first, tieBreaks }: RankingRule, known: ReadonlySet<string>, path: Path): EngineIssue[] {
  const rankable = new Set([...known, POINTS_ID]);
  const keys = [
    { key: first, at: [...path, 'first'] },
    ...tieBreaks.map((key, k) => ({ key, at: [...path, 'tieBreaks', k] })),
  ];
  return keys.flatMap(({ key, at }) => [
    ...unknownMeasure(key.by, rankable, [...at, 'by']),
    ...outOfRange(key.roundTo, [...at, 'roundTo'], 0, VALUE_MOST),
  ]);
}
