// English texts of the board screen.

export const board = {
  'board.title': 'Board',
} as const;
