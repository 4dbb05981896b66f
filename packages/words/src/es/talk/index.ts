// The texts of the talk after the build, in Spanish.

import type { TalkTexts } from '../../talk.ts';
import { best } from './best.ts';
import { fair } from './fair.ts';
import { graphs } from './graphs.ts';
import { lab } from './lab.ts';

export const talk: TalkTexts = { ...best, ...fair, ...graphs, ...lab };
