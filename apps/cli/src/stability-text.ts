// Does it stand? For people: the verdict, below it the figures, then what the answer rests on.

import type { Layout, Stability } from '@cairnmark/geometry';
import type { ClassWords, Words } from '@cairnmark/words';

/** The lines below the heading. null: nothing was judged, as there is no drawing of the pieces. */
export function stabilityLines(
  stability: Stability | null,
  layout: Layout,
  classWords: ClassWords,
  words: Words,
): readonly string[] {
  if (stability === null) return [words.say('measure.not-judged')];
  const { verdict, lines, limits } = classWords.stability(stability, kindsOf(layout));
  return [verdict, ...lines.map(indented), `${words.say('measure.stands-limits')}:`, ...limits.map(indented)];
}

/** Kind ids of the pieces in building order. */
const kindsOf = (layout: Layout): readonly string[] =>
  layout.kind === 'laid-out' ? layout.pieces.map(({ kind }) => kind) : layout.pieces;

const indented = (line: string): string => `  ${line}`;
