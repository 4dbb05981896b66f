// The texts of the talk after the build, in English.

import { best } from './best.ts';
import { fair } from './fair.ts';
import { graphs } from './graphs.ts';
import { lab } from './lab.ts';

export const talk = { ...best, ...fair, ...graphs, ...lab };
