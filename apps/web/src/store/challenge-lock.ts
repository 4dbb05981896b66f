// Whether the rules of a challenge stay as they are, since groups have built under them. Copies of builds do not count: they
// are there so that a slip in the rules can be mended, and what was built still stands where it was built.

import type { Attempt, ClassRecord } from '@cairnmark/engine';
import { isPlayed } from './played.ts';

/** Ids of copied tries begin with it. A try that was begun by a group has the ids of its challenge and group before its number. */
export const COPIED = 'copied';

/** Of a try that came into a challenge as a copy. */
export const isCopiedId = (attempt: string): boolean => COPIED_ID.test(attempt);

export const isLocked = ({ attempts }: ClassRecord, challenge: string): boolean =>
  attempts.some((attempt) => attempt.challenge === challenge && !isCopy(attempt, attempts));

/** Whether the challenge has tries, all of them copies. */
export const hasCopiesOnly = (record: ClassRecord, challenge: string): boolean =>
  isPlayed(record, challenge) && !isLocked(record, challenge);

/** A copy that nobody has changed since, and whose build still stands under another challenge. */
const isCopy = (one: Attempt, all: readonly Attempt[]): boolean =>
  isCopiedId(one.id) &&
  all.some(
    (other) =>
      other.challenge !== one.challenge &&
      !isCopiedId(other.id) &&
      other.group === one.group &&
      other.at === one.at &&
      same(other.state, one.state) &&
      same(other.observed, one.observed) &&
      same(other.layout, one.layout),
  );

const COPIED_ID = new RegExp(`^${COPIED}(-\\d+)?$`);

const same = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
