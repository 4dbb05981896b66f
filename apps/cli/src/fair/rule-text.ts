// Scores and sums of the points lab, as the terminal writes them.

import type { LabRule } from '@cairnmark/scoring';
import type { TerminalLab } from './lab.ts';

/** "Cube 6, Cuboid 6, ..." */
export function scoresText({ scores }: LabRule, { kit, words, say }: TerminalLab): string {
  const each = kit.kinds.map(({ name }, k) => say('fair.score', { solid: name, points: words.number(scores[k] ?? 0) }));
  return say('fair.scores', { scores: each.join(', ') });
}

/** "faces 12, edges 18": what pieces have together, in the order of the rows. */
export const totalsText = (
  totals: readonly number[],
  rows: readonly string[],
  { inClass, words }: TerminalLab,
): string => rows.map((row, j) => `${inClass.label(row)} ${words.number(totals[j] ?? 0)}`).join(', ');
