// English texts of the score card.

export const scoreCard = {
  'score-card.title': 'Score card',
} as const;
