// All states, screen by screen. A new screen is a file beside this one and a line here.

import { board } from './board.ts';
import { build } from './build.ts';
import { frame } from './frame.ts';
import { scoreCard } from './score-card.ts';
import { start } from './start.ts';
import type { State } from './state.ts';

export const STATES: readonly State[] = [...start, ...frame, ...build, ...scoreCard, ...board];
