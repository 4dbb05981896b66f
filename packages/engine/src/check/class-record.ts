// Does a class hang together: every attempt is of a group and a challenge that there are, and each of them makes sense.

import { POINTS_MOST } from '../limits.ts';
import type { Attempt, Challenge, ClassRecord } from '../types.ts';
import { attemptIssues } from './attempt.ts';
import { challengeIssues } from './challenge.ts';
import { idsTwice, outOfRange, pointsOutOfRange } from './checks.ts';
import type { EngineIssue } from './issues.ts';
import { ownSizeIssues } from './kit.ts';
import { supplyEventIssues } from './supply.ts';

/** Everything that is wrong with the class; paths start at the record. */
export function classIssues(record: ClassRecord): EngineIssue[] {
  const kits = record.challenges.map(({ kit }) => kit);
  return [
    ...idsTwice(record.groups, ['groups']),
    ...idsTwice(record.challenges, ['challenges']),
    ...idsTwice(record.attempts, ['attempts']),
    ...record.challenges.flatMap((challenge, k) => challengeIssues(challenge, ['challenges', k])),
    ...measuredKindIssues(record),
    ...record.groups.flatMap((group, k) => ownSizeIssues(group, kits, ['groups', k])),
    ...record.attempts.flatMap((attempt, k) => attemptInClassIssues(attempt, k, record)),
    ...suppliesIssues(record),
    ...dayIssues(record),
  ];
}

/** Sizes measured by a group of a kind that no challenge has, which would otherwise go unnoticed. */
function measuredKindIssues({ groups, challenges }: ClassRecord): EngineIssue[] {
  const kinds = new Set(challenges.flatMap(({ kit }) => kit.kinds.map(({ id }) => id)));
  return groups.flatMap(({ measured }, k) =>
    Object.keys(measured)
      .filter((kind) => !kinds.has(kind))
      .map((kind) => ({ code: 'kind-unknown' as const, path: ['groups', k, 'measured', kind], details: { kind } })),
  );
}

function attemptInClassIssues(attempt: Attempt, k: number, { groups, challenges }: ClassRecord): EngineIssue[] {
  const challenge = challenges.find(({ id }) => id === attempt.challenge);
  return [
    ...(groups.some(({ id }) => id === attempt.group)
      ? []
      : [{ code: 'group-unknown' as const, path: ['attempts', k, 'group'], details: { group: attempt.group } }]),
    ...(challenge === undefined ? [unknownChallenge(attempt, k)] : attemptIssues(attempt, challenge, ['attempts', k])),
  ];
}

function unknownChallenge({ challenge }: Attempt, k: number): EngineIssue {
  return { code: 'challenge-unknown', path: ['attempts', k, 'challenge'], details: { challenge } };
}

function suppliesIssues({ supplies, challenges, groups }: ClassRecord): EngineIssue[] {
  const known = new Set(groups.map(({ id }) => id));
  return Object.entries(supplies).flatMap(([id, events]): EngineIssue[] => {
    const path = ['supplies', id];
    const challenge = challenges.find((one) => one.id === id);
    if (challenge === undefined) return [{ code: 'challenge-unknown', path, details: { challenge: id } }];
    return [
      ...events.flatMap(({ group }, k): EngineIssue[] =>
        known.has(group) ? [] : [{ code: 'group-unknown', path: [...path, k, 'group'], details: { group } }],
      ),
      ...supplyEventIssues(events, challenge, path),
    ];
  });
}

function dayIssues({ day, challenges }: ClassRecord): EngineIssue[] {
  const known = new Set(challenges.map(({ id }: Challenge) => id));
  return [
    ...day.placePoints.flatMap((points, k) => pointsOutOfRange(points, ['day', 'placePoints', k])),
    ...Object.entries(day.weights).flatMap(([challenge, weight]): EngineIssue[] => [
      ...(known.has(challenge)
        ? []
        : [{ code: 'challenge-unknown' as const, path: ['day', 'weights', challenge], details: { challenge } }]),
      ...outOfRange(weight, ['day', 'weights', challenge], 0, POINTS_MOST),
    ]),
  ];
}
