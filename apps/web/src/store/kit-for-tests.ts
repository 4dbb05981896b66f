// For tests: the demo class, with builds under all of its challenges or under none.

import { demoClass } from '@cairnmark/demo';
import type { Challenge, ClassRecord, KindOfPiece } from '@cairnmark/engine';

/** Groups have built under all three challenges. */
export const played = (): ClassRecord => demoClass();

/** Nobody has built yet, but under the challenges of these ids. */
export const unplayed = (...built: readonly string[]): ClassRecord => {
  const record = demoClass();
  return { ...record, attempts: record.attempts.filter(({ challenge }) => built.includes(challenge)) };
};

export function challengeOf(record: ClassRecord, id = 'tall-light'): Challenge {
  const found = record.challenges.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`no challenge ${id}`);
  return found;
}

export function kindOf(record: ClassRecord, kind: string, challenge = 'tall-light'): KindOfPiece {
  const found = challengeOf(record, challenge).kit.kinds.find(({ id }) => id === kind);
  if (found === undefined) throw new RangeError(`no kind ${kind}`);
  return found;
}
