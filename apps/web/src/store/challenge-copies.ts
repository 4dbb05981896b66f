// A further challenge: a new one, a copy, or a copy with its builds.

import type { Challenge, ClassRecord } from '@cairnmark/engine';
import { NAME_CHARACTERS_MOST } from '@cairnmark/formats';
import { COPIED } from './challenge-lock.ts';
import type { Change } from './class-changes.ts';
import { idFor } from './ids.ts';

/** The same rules under a name and an id of their own. */
export function copyOf(record: ClassRecord, challenge: Challenge): Challenge {
  const name = nameTold(
    challenge.name,
    record.challenges.map((one) => one.name),
  );
  return withOwnId(record, { ...challenge, name });
}

/** The challenge with an id that no other one of the class has. */
export function withOwnId({ challenges }: ClassRecord, challenge: Challenge): Challenge {
  const taken = challenges.map(({ id }) => id);
  return { ...challenge, id: idFor(challenge.name, taken, 'challenge') };
}

/** A name that is told apart from all others by the next free number: "Tall Light 2" of "Tall Light", "Round 6" of "Round 5". */
export function nameTold(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  const [, stem = name, last = '1'] = /^(.*\S)\s+(\d{1,6})$/.exec(name) ?? [];
  let number = Number(last) + 1;
  let told = numbered(stem, number);
  while (taken.includes(told)) {
    number += 1;
    told = numbered(stem, number);
  }
  return told;
}

const numbered = (stem: string, number: number): string =>
  `${stem.slice(0, NAME_CHARACTERS_MOST - String(number).length - 1)} ${number}`;

/** Right behind another one, or last where that is not there. */
export const addChallenge =
  (challenge: Challenge, behind: string): Change =>
  (record) => {
    const place = record.challenges.findIndex(({ id }) => id === behind);
    const at = place < 0 ? record.challenges.length : place + 1;
    return {
      ...record,
      challenges: [...record.challenges.slice(0, at), challenge, ...record.challenges.slice(at)],
    };
  };

/**
 * A copy together with all that was built, seen, marked and earned under the first one, which stays as it is. It weighs
 * nothing in the day, so that no build counts there twice, until somebody says otherwise.
 */
export const addWithBuilds =
  (copy: Challenge, original: string): Change =>
  (record) => {
    const taken = new Set(record.attempts.map(({ id }) => id));
    const attempts = record.attempts
      .filter(({ challenge }) => challenge === original)
      .map((attempt) => {
        const id = idFor(COPIED, taken, COPIED);
        taken.add(id);
        return { ...attempt, id, challenge: copy.id };
      });
    const added = addChallenge(copy, original)(record);
    const strokes = record.supplies[original];
    return {
      ...added,
      attempts: [...added.attempts, ...attempts],
      supplies: strokes === undefined ? added.supplies : { ...added.supplies, [copy.id]: strokes },
      day: { ...added.day, weights: { ...added.day.weights, [copy.id]: 0 } },
    };
  };
