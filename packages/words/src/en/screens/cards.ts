// The texts of the Score card and of the Board, in English: they come when one of them is opened.

import { board } from './board.ts';
import { cardHelp } from './card-help.ts';
import { scoreCard } from './score-card.ts';

export const cards = { ...scoreCard, ...board, ...cardHelp };
