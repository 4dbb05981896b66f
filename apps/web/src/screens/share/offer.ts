// What is to be said of a try before it is taken in: where it would stand in this class, and what is different here.

import type { Attempt, Challenge, ClassRecord, Group } from '@cairnmark/engine';
import type { Prints } from '@cairnmark/formats';
import { printsOf } from '@cairnmark/formats';
import type { Held } from '../../store/bring-in-changes.ts';
import { asTaken, heldOf } from '../../store/bring-in-changes.ts';
import { attemptsOf } from '../../store/class-changes.ts';
import type { Offered } from './read-offered.ts';

export type Warning = `other-${keyof Prints}` | 'rules-not-told';

export interface Offer {
  /** Of the group that it is taken in for; null: that is to be chosen, and nothing below is known. */
  readonly group: Group | null;
  /** null: this class has no such challenge. */
  readonly challenge: Challenge | null;
  readonly attempt: Attempt;
  readonly held: Held;
  /** Which try of the group it would be, or is, counted from 1 by their times. */
  readonly number: number;
  readonly warnings: readonly Warning[];
}

/** `groupId`: of the group that was chosen in the place of one that is unknown here; null: the try's own. */
export function offerOf(record: ClassRecord, { attempt: brought, prints }: Offered, groupId: string | null): Offer {
  const attempt = groupId === null ? brought : { ...brought, group: groupId };
  const group = record.groups.find(({ id }) => id === attempt.group) ?? null;
  const challenge = record.challenges.find(({ id }) => id === attempt.challenge) ?? null;
  const held = heldOf(record, attempt);
  const there = held.kind === 'same' ? held.attempt : asTaken(record, attempt);
  const after = held.kind === 'same' ? record : { ...record, attempts: [...record.attempts, there] };
  return {
    group,
    challenge,
    attempt,
    held,
    number: attemptsOf(after, attempt.group, attempt.challenge).indexOf(there) + 1,
    warnings: challenge === null || group === null ? [] : warningsOf(prints, printsOf(challenge, group)),
  };
}

function warningsOf(told: Prints | null, here: Prints): readonly Warning[] {
  if (told === null) return ['rules-not-told'];
  const keys = ['rules', 'kit', 'sizes'] as const;
  return keys.filter((key) => told[key] !== here[key]).map((key) => `other-${key}` as const);
}
