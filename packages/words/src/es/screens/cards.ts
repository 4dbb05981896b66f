// The texts of the Score card and of the Board, in Spanish: they come when one of them is opened.

import type { CardTexts } from '../../cards.ts';
import { board } from './board.ts';
import { cardHelp } from './card-help.ts';
import { scoreCard } from './score-card.ts';

export const cards: CardTexts = { ...scoreCard, ...board, ...cardHelp };
