// Which measures a class sees: all but those that the challenge hides, unless places or points depend on them.

import type { Challenge } from '@cairnmark/engine';

export function isShown(measure: string, { hidden, ranking, points, requirements }: Challenge): boolean {
  return (
    !hidden.includes(measure) ||
    [ranking.first, ...ranking.tieBreaks].some(({ by }) => by === measure) ||
    points.some((row) => row.measure === measure) ||
    requirements.some((rule) => rule.kind === 'measured' && rule.measure === measure)
  );
}
