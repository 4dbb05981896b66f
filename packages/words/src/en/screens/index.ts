// The texts of all screens, in English.

import { board } from './board.ts';
import { build } from './build.ts';
import { field } from './field.ts';
import { frame } from './frame.ts';
import { help } from './help.ts';
import { scoreCard } from './score-card.ts';
import { start } from './start.ts';

export const screens = { ...frame, ...help, ...field, ...start, ...build, ...scoreCard, ...board };
