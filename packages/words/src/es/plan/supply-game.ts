// Spanish texts of the Supply screen.

export const supplyGame = {
  'supply-game.title': 'Lo ganado',
} as const;
