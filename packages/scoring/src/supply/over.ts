// When a supply game ends.

import type { SupplyRule } from './types.ts';

/** `played`: so far. `left`: pieces that the class has left, by kind id. The last second or turn itself ends the game. */
export function isOver(
  { ends }: SupplyRule,
  played: { readonly seconds: number; readonly turns: number },
  left: Readonly<Record<string, number>>,
): boolean {
  switch (ends.kind) {
    case 'time':
      return played.seconds >= ends.seconds;
    case 'turns':
      return played.turns >= ends.turns;
    case 'stock-empty':
      return Object.values(left).every((count) => count <= 0);
  }
}
