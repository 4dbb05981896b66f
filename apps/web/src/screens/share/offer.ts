// What is to be said of a try before it is taken in: where it would stand in this class, and what is different here.

import type { Attempt, Challenge, ClassRecord, Group } from '@cairnmark/engine';
import type { Prints } from '@cairnmark/formats';
import { printsOf } from '@cairnmark/formats';
import type { Act } from '../../app/roles.ts';
import { may } from '../../app/roles.ts';
import type { Held } from '../../store/bring-in-changes.ts';
import { asTaken, heldOf } from '../../store/bring-in-changes.ts';
import { attemptsOf } from '../../store/class-changes.ts';
import type { Role } from '../../store/device.ts';
import type { Offered } from './read-offered.ts';
import { asAllowed, saidOf } from './said-by-people.ts';

export type Warning = `other-${keyof Prints}` | 'rules-not-told' | 'supply-here';

export interface Offer {
  /** Of the group that it is taken in for; null: that is to be chosen, and nothing below is known. */
  readonly group: Group | null;
  /** null: this class has no such challenge. */
  readonly challenge: Challenge | null;
  /** With no more than the role may bring in. */
  readonly attempt: Attempt;
  /** What people have said of it, that comes in with it; and what stays out, for others to bring in. */
  readonly comes: readonly Act[];
  readonly staysOut: readonly Act[];
  readonly held: Held;
  /** Which try of the group it would be, or is, counted from 1 by their times. */
  readonly number: number;
  readonly warnings: readonly Warning[];
}

/**
 * `groupId`: of the group that was chosen in the place of one that is unknown here; null: the try's own. `role`: of whoever
 * brings it in.
 */
export function offerOf(
  record: ClassRecord,
  { attempt: brought, prints }: Offered,
  groupId: string | null,
  role: Role,
): Offer {
  const whole = groupId === null ? brought : { ...brought, group: groupId };
  const attempt = asAllowed(whole, (act) => may(role, act));
  const said = saidOf(whole);
  const group = record.groups.find(({ id }) => id === attempt.group) ?? null;
  const challenge = record.challenges.find(({ id }) => id === attempt.challenge) ?? null;
  const wholeHeld = heldOf(record, whole);
  const held = wholeHeld.kind === 'same' ? wholeHeld : heldOf(record, attempt);
  const there = held.kind === 'same' ? held.attempt : asTaken(record, attempt);
  const after = held.kind === 'same' ? record : { ...record, attempts: [...record.attempts, there] };
  return {
    group,
    challenge,
    attempt,
    comes: said.filter((act) => may(role, act)),
    staysOut: said.filter((act) => !may(role, act)),
    held,
    number: attemptsOf(after, attempt.group, attempt.challenge).indexOf(there) + 1,
    warnings: challenge === null || group === null ? [] : warningsOf(prints, challenge, group),
  };
}

function warningsOf(told: Prints | null, challenge: Challenge, group: Group): readonly Warning[] {
  const here = printsOf(challenge, group);
  const others = KEYS.filter((key) => told !== null && told[key] !== here[key]).map((key) => `other-${key}` as const);
  return [
    ...(told === null ? ['rules-not-told' as const] : others),
    // What was earned is no part of a try: rules and points that ask for it look at the list of this device.
    ...(challenge.supply === null ? [] : ['supply-here' as const]),
  ];
}

const KEYS = ['rules', 'kit', 'sizes'] as const satisfies readonly (keyof Prints)[];
