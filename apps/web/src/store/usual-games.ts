// Supply games to begin with, one for each way in which a game ends. Common practice, no source.

import type { SupplyRule } from '@cairnmark/scoring';

/** With all that goes for every end. */
export const usualGame = (kind: SupplyRule['ends']['kind']): SupplyRule => ({
  ends: usualEnd(kind),
  handOver: 'at-a-touch',
  dropped: 'must-be-fetched',
});

export function usualEnd(kind: SupplyRule['ends']['kind']): SupplyRule['ends'] {
  switch (kind) {
    case 'time':
      return { kind, seconds: 300 };
    case 'turns':
      return { kind, turns: 12 };
    case 'stock-empty':
      return { kind };
  }
}

export const GAME_ENDS: readonly SupplyRule['ends']['kind'][] = ['time', 'turns', 'stock-empty'];
