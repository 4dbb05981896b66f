// What a class should know before it reads the places of the day.

import type { ClassRecord, ClassScore } from '@cairnmark/engine';
import type { TerminalWords } from '@cairnmark/words';

export function warningLines(
  { challenges, groups }: ClassRecord,
  { warnings }: ClassScore,
  words: TerminalWords,
): readonly string[] {
  const challengeOf = (id: string) => challenges.find((one) => one.id === id);
  return warnings.map((warning) =>
    words.dayWarning(warning, {
      challenge: (id) => challengeOf(id)?.name ?? id,
      criterion: (challenge, id) => challengeOf(challenge)?.criteria.find((one) => one.id === id)?.name ?? id,
      group: (id) => groups.find((one) => one.id === id)?.name ?? id,
    }),
  );
}
