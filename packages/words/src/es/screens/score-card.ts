// Textos en español de la tarjeta de puntos.

import type { scoreCard as pattern } from '../../en/screens/score-card.ts';

export const scoreCard: Readonly<Record<keyof typeof pattern, string>> = {
  'score-card.title': 'Tarjeta de puntos',
};
