// The supply game of a challenge: its rules, then what each group has from it.

import type { ClassRecord } from '@cairnmark/engine';
import { supplies } from '@cairnmark/scoring';
import type { TerminalWords } from '@cairnmark/words';
import type { Board } from './boards.ts';

/** None where pieces are not earned. */
export function supplyLines(
  { challenge, reader, words: classWords }: Board,
  record: ClassRecord,
  words: TerminalWords,
): readonly string[] {
  if (challenge.supply === null) return [];
  const stock = Object.fromEntries(challenge.kit.kinds.map((kind) => [kind.id, kind.stock]));
  const groups = supplies(record.supplies[challenge.id] ?? [], stock);
  return [
    ...words.game(challenge.supply),
    ...groups.flatMap((supply) => [
      reader.groupName(supply.group),
      ...classWords.supply(supply).map((line) => `  ${line}`),
    ]),
  ];
}
