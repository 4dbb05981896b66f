// A stroke in words: "1 × Cube earned, round 2, carrier 3".

import type { SupplyEvent } from '@cairnmark/scoring';
import type { Game } from './game.ts';

export function strokeText(
  { what, round, carrier }: SupplyEvent,
  { at, say, words }: Pick<Game, 'at' | 'say' | 'words'>,
): string {
  const parts = [whatText(what, { at, say, words })];
  if (round !== undefined) parts.push(say('supply-game.in-round', { round }));
  if (carrier !== undefined) parts.push(carrier);
  return parts.join(', ');
}

function whatText(what: SupplyEvent['what'], { at, say, words }: Pick<Game, 'at' | 'say' | 'words'>): string {
  if (what.kind === 'penalty') {
    const points = words.counted('points', what.points);
    return say('supply-game.stroke-penalty', { points, reason: what.reason });
  }
  const { count, piece } = what;
  const kind = at.challenge.kit.kinds.find(({ id }) => id === piece)?.name ?? piece;
  if (what.kind === 'lost') return say('supply-game.stroke-lost', { count, kind, reason: what.reason });
  return say(`supply-game.stroke-${what.kind}`, { count, kind });
}
