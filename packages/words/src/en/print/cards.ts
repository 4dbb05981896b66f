// English texts of the table cards.

export const tableCards = {
  'print.card-cut': 'Cut along the dashed lines. One card for the table of each group.',
  'print.card-word': 'Table word',
  'print.card-how': 'Point the camera at the square, or type the six letters.',
} as const;
