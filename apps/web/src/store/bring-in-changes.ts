// Tries that come in from another device. Nothing that is here is ever overwritten: the same try again changes nothing, and
// one with other content comes in beside the one that is here, under an id of its own.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { encode } from '@cairnmark/formats';
import type { Change } from './class-changes.ts';
import { addAttempt, newAttempt } from './class-changes.ts';

/** What a class already has of a try. */
export type Held =
  | { readonly kind: 'none' }
  | { readonly kind: 'same'; readonly attempt: Attempt }
  | { readonly kind: 'other'; readonly attempt: Attempt };

/** `same`: all that was built, measured, judged and decided is alike, whatever the id, and whether or not it is the chosen one. */
export function heldOf({ attempts }: ClassRecord, brought: Attempt): Held {
  const content = contentOf(brought);
  const same = attempts.find((one) => one.at === brought.at && contentOf(one) === content);
  if (same !== undefined) return { kind: 'same', attempt: same };
  const other = attempts.find(({ id }) => id === brought.id);
  return other === undefined ? { kind: 'none' } : { kind: 'other', attempt: other };
}

/**
 * The try as it would stand in the class, with its own time. Its id is another one where that is taken, and it is not the
 * chosen one where the group has chosen already.
 */
export function asTaken(record: ClassRecord, brought: Attempt): Attempt {
  const { attempts } = record;
  const isChosen = attempts.some(
    ({ group, challenge, chosen }) => chosen && group === brought.group && challenge === brought.challenge,
  );
  const isTaken = attempts.some(({ id }) => id === brought.id);
  return {
    ...brought,
    id: isTaken ? freeId(record, brought) : brought.id,
    chosen: brought.chosen && !isChosen,
  };
}

export const takeIn =
  (brought: Attempt): Change =>
  (record) =>
    heldOf(record, brought).kind === 'same' ? record : addAttempt(asTaken(record, brought))(record);

function freeId(record: ClassRecord, { group, challenge, at }: Attempt): string {
  return newAttempt(record, { id: group }, { id: challenge }, at).id;
}

const contentOf = (attempt: Attempt): string => encode('attempt', { ...attempt, id: 'any', chosen: false });
