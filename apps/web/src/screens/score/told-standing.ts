// The place that the score card may tell: none that the Board of this device keeps hidden. Both are often seen on one
// projector, and a card that says "Place 1" would spoil the showing place by place.

import type { Standing } from '@cairnmark/scoring';
import type { BoardState } from '../../store/board-state.ts';
import { isRevealed, placesToReveal } from '../board/reveal.ts';

export function toldStanding(
  standing: Standing | null,
  all: readonly Standing[],
  challenge: string,
  { placesHidden, reveal }: Pick<BoardState, 'placesHidden' | 'reveal'>,
): Standing | null {
  if (standing === null || placesHidden) return null;
  const revealed = reveal === null ? null : (reveal[challenge] ?? 0);
  return isRevealed(standing, placesToReveal(all), revealed) ? standing : null;
}
