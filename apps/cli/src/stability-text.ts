// Does it stand? For people: the verdict, below it the figures, then what the answer rests on.

import { piecesUsed } from '@cairnmark/engine';
import type { Layout, Stability } from '@cairnmark/geometry';
import type { ClassWords, TerminalWords } from '@cairnmark/words';

/** The lines below the heading. null: nothing was judged, as there is no drawing of the pieces. */
export function stabilityLines(
  stability: Stability | null,
  layout: Layout,
  classWords: ClassWords,
  words: TerminalWords,
): readonly string[] {
  if (stability === null) return [words.say('measure.not-judged')];
  const { verdict, lines, limits } = classWords.stability(stability, piecesUsed(layout));
  return [verdict, ...lines.map(indented), `${words.say('measure.stands-limits')}:`, ...limits.map(indented)];
}

const indented = (line: string): string => `  ${line}`;
