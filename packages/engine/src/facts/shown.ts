// Which measures a class sees: all but those that the challenge hides, unless places, points or rules depend on them. What
// a group wins or loses by is never kept from it; an own result that is rewarded is held against its measure.

import type { Challenge } from '../types.ts';

export function isShown(measure: string, { hidden, ranking, points, requirements, own }: Challenge): boolean {
  return (
    !hidden.includes(measure) ||
    [ranking.first, ...ranking.tieBreaks].some(({ by }) => by === measure) ||
    points.some((row) => row.measure === measure) ||
    requirements.some((rule) => rule.kind === 'measured' && rule.measure === measure) ||
    own.rewards.some((reward) => reward.measure === measure)
  );
}
