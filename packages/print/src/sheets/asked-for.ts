// What a challenge asks of a build: the measures that its places, points or rules depend on.

import type { Challenge } from '@cairnmark/engine';

/** In the order in which a class meets them: places, points, rules. */
export const askedFor = ({ ranking, points, requirements }: Challenge): ReadonlySet<string> =>
  new Set([
    ranking.first.by,
    ...ranking.tieBreaks.map(({ by }) => by),
    ...points.map(({ measure }) => measure),
    ...requirements.flatMap((rule) => (rule.kind === 'measured' ? [rule.measure] : [])),
  ]);
