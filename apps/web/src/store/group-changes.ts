// Changes to the groups of a class: a late one, another name, two that become one, one that leaves.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import type { Change } from './class-changes.ts';
import { idFor } from './ids.ts';
import { againstJoining } from './joining.ts';

/** Groups more, in the order of their names. */
export const addGroups =
  (names: readonly string[]): Change =>
  (record) => {
    const ids = record.groups.map(({ id }) => id);
    const groups = names.map((name) => {
      const id = idFor(name, ids, 'group');
      ids.push(id);
      return { id, name, measured: {} };
    });
    return { ...record, groups: [...record.groups, ...groups] };
  };

/** The id stays, so that everything of the group stays with it. */
export const renameGroup =
  (id: string, name: string): Change =>
  (record) => ({ ...record, groups: record.groups.map((group) => (group.id === id ? { ...group, name } : group)) });

/**
 * Two groups go on as one: tries and supply strokes of `from` are those of `into`, which keeps its name and its measured
 * sizes. Where both have chosen a try of a challenge, that of `into` counts. Nothing happens where a result would change:
 * see `againstJoining`.
 */
export const mergeGroups =
  (from: string, into: string): Change =>
  (record) => {
    if (from === into || againstJoining(record, from, into) !== null) return record;
    const moved = (attempt: Attempt): Attempt =>
      attempt.group !== from
        ? attempt
        : { ...attempt, group: into, chosen: attempt.chosen && !hasChosen(record, into, attempt.challenge) };
    return {
      ...record,
      groups: record.groups.filter(({ id }) => id !== from),
      attempts: record.attempts.map(moved),
      supplies: Object.fromEntries(
        Object.entries(record.supplies).map(([challenge, events]) => [
          challenge,
          events.map((event) => (event.group === from ? { ...event, group: into } : event)),
        ]),
      ),
    };
  };

const hasChosen = ({ attempts }: ClassRecord, group: string, challenge: string): boolean =>
  attempts.some((one) => one.group === group && one.challenge === challenge && one.chosen);

/** The group leaves with its tries, and what it earned goes back into the stock. */
export const removeGroup =
  (id: string): Change =>
  (record) => ({
    ...record,
    groups: record.groups.filter((group) => group.id !== id),
    attempts: record.attempts.filter(({ group }) => group !== id),
    supplies: Object.fromEntries(
      Object.entries(record.supplies).map(([challenge, events]) => [
        challenge,
        events.filter(({ group }) => group !== id),
      ]),
    ),
  });

/** The class to play again: its groups with what they measured, its challenges and its day, without any result. */
export const withoutResults = (record: ClassRecord, name: string): ClassRecord => ({
  ...record,
  name,
  attempts: [],
  supplies: {},
});
