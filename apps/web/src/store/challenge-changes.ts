// Changes to the rules of one challenge. Each names what it changes, so that two people at work lose nothing of each other.

import type { Challenge, ClassRecord, Criterion } from '@cairnmark/engine';
import type { PointsRow, Requirement } from '@cairnmark/scoring';
import type { Change } from './class-changes.ts';
import { idFor } from './ids.ts';

/** From the rules of a challenge to the next. */
export type Alter = (challenge: Challenge) => Challenge;

export const changeChallenge =
  (id: string, alter: Alter): Change =>
  (record) => ({
    ...record,
    challenges: record.challenges.map((challenge) => (challenge.id === id ? alter(challenge) : challenge)),
  });

export const addRow =
  (row: Omit<PointsRow, 'id'>): Alter =>
  (challenge) => ({
    ...challenge,
    points: [...challenge.points, { ...row, id: idFor(row.measure, ids(challenge.points), 'row') }],
  });

export const changeRow =
  (id: string, change: (row: PointsRow) => PointsRow): Alter =>
  (challenge) => ({ ...challenge, points: challenge.points.map((row) => (row.id === id ? change(row) : row)) });

export const removeRow =
  (id: string): Alter =>
  (challenge) => ({ ...challenge, points: challenge.points.filter((row) => row.id !== id) });

/** `limit`: the most or the least that a row gives; null takes it away. */
export function withLimit(row: PointsRow, limit: 'capPoints' | 'floorPoints', points: number | null): PointsRow {
  const { [limit]: _, ...rest } = row;
  return points === null ? rest : { ...rest, [limit]: points };
}

/** A rule of any kind before it has its id. */
export type RuleBefore = Requirement extends infer R ? (R extends Requirement ? Omit<R, 'id'> : never) : never;

export const addRule =
  (rule: RuleBefore): Alter =>
  (challenge) => {
    const stem = rule.kind === 'measured' ? rule.measure : rule.kind;
    const id = idFor(stem, ids(challenge.requirements), 'rule');
    return { ...challenge, requirements: [...challenge.requirements, { ...rule, id }] };
  };

export const changeRule =
  (id: string, change: (rule: Requirement) => Requirement): Alter =>
  (challenge) => ({
    ...challenge,
    requirements: challenge.requirements.map((rule) => (rule.id === id ? change(rule) : rule)),
  });

/** With the answers that people gave to it: no answer may be about a rule that is not there. */
export const removeRule =
  (challenge: string, id: string): Change =>
  (record) =>
    changeChallenge(challenge, (one) => ({
      ...one,
      requirements: one.requirements.filter((rule) => rule.id !== id),
    }))({
      ...record,
      attempts: record.attempts.map((attempt) => {
        if (attempt.challenge !== challenge || !Object.hasOwn(attempt.answers, id)) return attempt;
        const { [id]: _, ...answers } = attempt.answers;
        return { ...attempt, answers };
      }),
    });

export const addCriterion =
  (name: string): Alter =>
  (challenge) => ({
    ...challenge,
    criteria: [...challenge.criteria, { id: idFor(name, ids(challenge.criteria), 'criterion'), name }],
  });

export const changeCriterion =
  (id: string, name: string): Alter =>
  (challenge) => ({
    ...challenge,
    criteria: challenge.criteria.map((one): Criterion => (one.id === id ? { id, name } : one)),
  });

/** With the marks that judges gave for it, and out of the list of what is hidden. */
export const removeCriterion =
  (challenge: string, id: string): Change =>
  (record): ClassRecord =>
    changeChallenge(challenge, (one) => ({
      ...one,
      criteria: one.criteria.filter((criterion) => criterion.id !== id),
      hidden: one.hidden.filter((measure) => measure !== `judged:${id}`),
    }))({
      ...record,
      attempts: record.attempts.map((attempt) =>
        attempt.challenge === challenge && attempt.judged.some(({ criterion }) => criterion === id)
          ? { ...attempt, judged: attempt.judged.filter(({ criterion }) => criterion !== id) }
          : attempt,
      ),
    });

const ids = (all: readonly { readonly id: string }[]): string[] => all.map(({ id }) => id);
