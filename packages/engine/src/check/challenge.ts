// Does a challenge make sense: every name it uses is one it has, and every number can be reckoned with.

import { CONTACT_MM, MEASURES } from '@cairnmark/geometry';
import type { PointsRow, RankingRule, Requirement } from '@cairnmark/scoring';
import { FIXED_TO } from '@cairnmark/scoring';
import { factIds, POINTS_ID } from '../facts/ids.ts';
import {
  COUNT_MOST,
  GAP_ALLOWANCE_MM_MOST,
  MEASURING_ERROR_MM_MOST,
  POINTS_MOST,
  SECONDS_MOST,
  SLACK_MM_MOST,
  VALUE_MOST,
} from '../limits.ts';
import type { Challenge, OwnRule } from '../types.ts';
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
    ...challenge.requirements.flatMap((one, k) =>
      requirementIssues(one, challenge, known, [...path, 'requirements', k]),
    ),
    ...fallenIssues(challenge, [...path, 'fallen']),
    ...ownRuleIssues(challenge.own, [...path, 'own']),
    ...supplyRuleIssues(challenge, path),
    ...challenge.hidden.flatMap((measure, k) => unknownMeasure(measure, known, [...path, 'hidden', k])),
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

function requirementIssues(
  requirement: Requirement,
  { kit, supply }: Challenge,
  known: ReadonlySet<string>,
  path: Path,
): EngineIssue[] {
  const { consequence } = requirement;
  const kinds = new Set(kit.kinds.map(({ id }) => id));
  return [
    ...(requirement.kind === 'measured'
      ? [
          ...unknownMeasure(requirement.measure, known, [...path, 'measure']),
          ...outOfRange(requirement.limit, [...path, 'limit'], 0, VALUE_MOST),
        ]
      : []),
    ...(requirement.kind === 'only-kinds' && requirement.kinds.length === 0
      ? [{ code: 'kinds-missing' as const, path: [...path, 'kinds'], details: {} }]
      : []),
    ...(requirement.kind === 'only-kinds'
      ? requirement.kinds.flatMap((kind, k): EngineIssue[] =>
          kinds.has(kind) ? [] : [{ code: 'kind-unknown', path: [...path, 'kinds', k], details: { kind } }],
        )
      : []),
    ...(requirement.kind === 'only-earned' && supply === null
      ? [{ code: 'supply-missing' as const, path: [...path, 'kind'], details: {} }]
      : []),
    ...(consequence.kind !== 'must'
      ? outOfRange(consequence.points, [...path, 'consequence', 'points'], 0, POINTS_MOST)
      : []),
  ];
}

function fallenIssues({ fallen }: Challenge, path: Path): EngineIssue[] {
  return fallen.counts === 'points' ? pointsOutOfRange(fallen.points, [...path, 'points']) : [];
}

function ownRuleIssues({ closeShare, rewards }: OwnRule, path: Path): EngineIssue[] {
  const measures = new Set<string>(MEASURES.map(({ id }) => id));
  return [
    ...outOfRange(closeShare, [...path, 'closeShare'], 0, 1),
    ...rewards.flatMap(({ measure, points }, k) => [
      ...unknownMeasure(measure, measures, [...path, 'rewards', k, 'measure']),
      ...pointsOutOfRange(points, [...path, 'rewards', k, 'points']),
    ]),
  ];
}

function supplyRuleIssues({ supply }: Challenge, path: Path): EngineIssue[] {
  if (supply === null) return [];
  const at = [...path, 'supply', 'ends'];
  switch (supply.ends.kind) {
    case 'time':
      return outOfRange(supply.ends.seconds, [...at, 'seconds'], 1, SECONDS_MOST);
    case 'turns':
      return outOfRange(supply.ends.turns, [...at, 'turns'], 1, COUNT_MOST);
    case 'stock-empty':
      return [];
  }
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
