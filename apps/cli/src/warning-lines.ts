// What a class should know before it reads the places of the day.

import type { Challenge, ClassRecord, ClassScore } from '@cairnmark/engine';
import type { Words } from '@cairnmark/words';
import { readerOf } from './class-reader.ts';

export function warningLines(
  { challenges, groups }: ClassRecord,
  { warnings }: ClassScore,
  words: Words,
): readonly string[] {
  const challengeOf = (id: string) => challenges.find((one) => one.id === id);
  const labelIn = (challenge: Challenge | undefined, id: string) =>
    challenge === undefined ? id : words.inClass(readerOf(challenge, groups)).label(id);
  return warnings.map((warning) =>
    words.dayWarning(warning, {
      challenge: (id) => challengeOf(id)?.name ?? id,
      criterion: (challenge, id) => challengeOf(challenge)?.criteria.find((one) => one.id === id)?.name ?? id,
      measure: (challenge, id) => labelIn(challengeOf(challenge), id),
      group: (id) => groups.find((one) => one.id === id)?.name ?? id,
    }),
  );
}
