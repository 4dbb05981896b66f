// Changes to a class, each a function from a record to the next. Nothing is changed in place.

import type { Adjustment, Attempt, Challenge, ClassRecord, Decision, Group, Mark, OwnResult } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import type { Answer } from '@cairnmark/scoring';

export type Change = (record: ClassRecord) => ClassRecord;

/** A further try of a group, empty and not yet seen by anybody; `at`: ISO 8601 with zone. */
export function newAttempt(
  record: ClassRecord,
  group: Pick<Group, 'id'>,
  challenge: Pick<Challenge, 'id'>,
  at: string,
): Attempt {
  const taken = new Set(record.attempts.map(({ id }) => id));
  const stem = `${challenge.id}-${group.id}`;
  let number = attemptsOf(record, group.id, challenge.id).length + 1;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return {
    id: `${stem}-${number}`,
    group: group.id,
    challenge: challenge.id,
    at,
    state: { kind: 'stood' },
    layout: { kind: 'laid-out', pieces: [] },
    observed: { heightReadingsMm: [] },
    judged: [],
    answers: {},
    own: [],
    decisions: [],
    adjustments: [],
    confirmedBy: null,
    chosen: false,
  };
}

/** The tries of a group at a challenge, oldest first: a file may list them in any order. */
export const attemptsOf = ({ attempts }: ClassRecord, group: string, challenge: string): readonly Attempt[] =>
  attempts
    .filter((one) => one.group === group && one.challenge === challenge)
    .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));

export const addAttempt =
  (attempt: Attempt): Change =>
  (record) => ({ ...record, attempts: [...record.attempts, attempt] });

/** Changes one attempt. */
export const changeAttempt =
  (id: string, change: (attempt: Attempt) => Attempt): Change =>
  (record) => ({
    ...record,
    attempts: record.attempts.map((attempt) => (attempt.id === id ? stillSeen(attempt, change(attempt)) : attempt)),
  });

/**
 * Nobody has seen a build whose pieces, readings or state changed since it was confirmed: it is provisional again.
 * What people judged or decided of it, and what the group worked out, changes nothing of the build.
 */
export function stillSeen(before: Attempt, after: Attempt): Attempt {
  const same = after.layout === before.layout && after.observed === before.observed && after.state === before.state;
  const seenNow = after.confirmedBy !== before.confirmedBy;
  return same || seenNow || after.confirmedBy === null ? after : { ...after, confirmedBy: null };
}

/** Exactly one try of the group is the chosen one. */
export const chooseAttempt =
  (chosen: Attempt): Change =>
  (record) => ({
    ...record,
    attempts: record.attempts.map((attempt) =>
      attempt.group === chosen.group && attempt.challenge === chosen.challenge
        ? { ...attempt, chosen: attempt.id === chosen.id }
        : attempt,
    ),
  });

export const withLayout =
  (layout: Layout) =>
  (attempt: Attempt): Attempt => ({ ...attempt, layout });

export const withOwn =
  (result: OwnResult) =>
  (attempt: Attempt): Attempt => ({
    ...attempt,
    own: [...attempt.own.filter(({ measure }) => measure !== result.measure), result],
  });

export const withoutOwn =
  (measure: OwnResult['measure']) =>
  (attempt: Attempt): Attempt => ({ ...attempt, own: attempt.own.filter((one) => one.measure !== measure) });

/** One mark a judge and criterion: a further one takes the place of the first. */
export const withMark =
  (mark: Mark) =>
  (attempt: Attempt): Attempt => ({
    ...attempt,
    judged: [...attempt.judged.filter((one) => one.judge !== mark.judge || one.criterion !== mark.criterion), mark],
  });

export const withAnswer =
  (requirement: string, answer: Answer) =>
  (attempt: Attempt): Attempt => ({ ...attempt, answers: { ...attempt.answers, [requirement]: answer } });

export const withDecision =
  (decision: Decision) =>
  (attempt: Attempt): Attempt => ({ ...attempt, decisions: [...attempt.decisions, decision] });

/** The decision stays in the record, marked as taken back. */
export const withDecisionTakenBack =
  (decision: Decision, takenBack: NonNullable<Decision['takenBack']>) =>
  (attempt: Attempt): Attempt => ({
    ...attempt,
    decisions: attempt.decisions.map((one) => (one === decision ? { ...one, takenBack } : one)),
  });

export const withAdjustment =
  (adjustment: Adjustment) =>
  (attempt: Attempt): Attempt => ({ ...attempt, adjustments: [...attempt.adjustments, adjustment] });
