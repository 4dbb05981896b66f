// English texts of the Supply screen.

export const supplyGame = {
  'supply-game.title': 'Supply',
} as const;
