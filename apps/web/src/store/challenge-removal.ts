// A challenge is taken out of the class with all that is its own, and is put back with it.

import type { Attempt, Challenge, ClassRecord, Group } from '@cairnmark/engine';
import { copyOf } from './challenge-copies.ts';
import { COPIED, isCopiedId } from './challenge-lock.ts';
import type { Change } from './class-changes.ts';
import { idFor } from './ids.ts';

/** With its tries, its supply lists, its weight in the day, and sizes measured of kinds that no other challenge has. */
export const removeChallenge =
  (id: string): Change =>
  (record) => {
    const challenges = record.challenges.filter((one) => one.id !== id);
    const { [id]: _strokes, ...supplies } = record.supplies;
    const { [id]: _weight, ...weights } = record.day.weights;
    const kinds = new Set(challenges.flatMap(({ kit }) => kit.kinds.map((kind) => kind.id)));
    return {
      ...record,
      challenges,
      attempts: record.attempts.filter(({ challenge }) => challenge !== id),
      supplies,
      day: { ...record.day, weights },
      groups: record.groups.map((group) => measuredOnly(group, (kind) => kinds.has(kind))),
    };
  };

/**
 * Undoes a removal: all that `before` held of the challenge, into the class as it is now. Where its id has been given to
 * another one since, it comes back under another id and name.
 */
export const putBack =
  (before: ClassRecord, id: string): Change =>
  (record) => {
    const place = before.challenges.findIndex((one) => one.id === id);
    const lifted = before.challenges[place];
    if (lifted === undefined || record.challenges.includes(lifted)) return record;
    const isTaken = record.challenges.some((one) => one.id === id);
    const challenge = isTaken ? copyOf(record, lifted) : lifted;
    const [strokes, weight] = [before.supplies[id], before.day.weights[id]];
    return {
      ...record,
      challenges: [...record.challenges.slice(0, place), challenge, ...record.challenges.slice(place)],
      attempts: [...record.attempts, ...triesBack(before, record, id, challenge.id)],
      supplies: strokes === undefined ? record.supplies : { ...record.supplies, [challenge.id]: strokes },
      day:
        weight === undefined
          ? record.day
          : { ...record.day, weights: { ...record.day.weights, [challenge.id]: weight } },
      groups: record.groups.map((group) => ({
        ...group,
        measured: { ...measuredOf(before, group.id, challenge), ...group.measured },
      })),
    };
  };

/** The tries of a challenge that comes back, each with an id that no try has got since. */
function triesBack(before: ClassRecord, record: ClassRecord, id: string, now: string): readonly Attempt[] {
  const groups = new Set(record.groups.map((group) => group.id));
  const taken = new Set(record.attempts.map((attempt) => attempt.id));
  return before.attempts
    .filter((one) => one.challenge === id && groups.has(one.group))
    .map((attempt) => {
      const own = taken.has(attempt.id)
        ? idFor(isCopiedId(attempt.id) ? COPIED : attempt.id, taken, COPIED)
        : attempt.id;
      taken.add(own);
      return { ...attempt, id: own, challenge: now };
    });
}

function measuredOnly(group: Group, keep: (kind: string) => boolean): Group {
  const kept = Object.entries(group.measured).filter(([kind]) => keep(kind));
  return kept.length === Object.keys(group.measured).length ? group : { ...group, measured: Object.fromEntries(kept) };
}

function measuredOf(before: ClassRecord, group: string, { kit }: Challenge): Group['measured'] {
  const old = before.groups.find(({ id }) => id === group);
  return old === undefined ? {} : measuredOnly(old, (kind) => kit.kinds.some(({ id }) => id === kind)).measured;
}
