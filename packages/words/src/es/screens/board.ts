// Textos en español de la pantalla board.

import type { board as pattern } from '../../en/screens/board.ts';

export const board: Readonly<Record<keyof typeof pattern, string>> = {
  'board.title': 'Tablero',
};
