// Where the class is at work, as records.

import type { Attempt, Challenge, ClassRecord, Group } from '@cairnmark/engine';
import { attemptsOf } from './class-changes.ts';
import type { Place } from './device.ts';

export interface At {
  readonly record: ClassRecord;
  readonly group: Group;
  readonly challenge: Challenge;
  readonly tries: readonly Attempt[];
  /** null: not begun. */
  readonly attempt: Attempt | null;
}

/** null while no class is open, or the place is of another class. */
export function whereAt(record: ClassRecord | null, place: Place | null): At | null {
  const group = record?.groups.find(({ id }) => id === place?.group);
  const challenge = record?.challenges.find(({ id }) => id === place?.challenge);
  if (record === null || group === undefined || challenge === undefined) return null;
  const tries = attemptsOf(record, group.id, challenge.id);
  return { record, group, challenge, tries, attempt: tries.find(({ id }) => id === place?.attempt) ?? null };
}

/** The place as it is found again in a record: at the last try where its own was not kept; null when it is not there at all. */
export function placeIn(record: ClassRecord, place: Place): Place | null {
  const at = whereAt(record, place);
  return at === null ? null : { ...place, attempt: (at.attempt ?? at.tries.at(-1))?.id ?? null };
}

/** The first challenge of the first group, at its last try. */
export function firstPlace(classId: string, record: ClassRecord): Place | null {
  const [group] = record.groups;
  const [challenge] = record.challenges;
  if (group === undefined || challenge === undefined) return null;
  const attempt = attemptsOf(record, group.id, challenge.id).at(-1)?.id ?? null;
  return { classId, group: group.id, challenge: challenge.id, attempt };
}
