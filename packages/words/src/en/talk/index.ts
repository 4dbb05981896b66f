// The texts of the talk after the build, in English.

import { fair } from './fair.ts';
import { graphs } from './graphs.ts';
import { lab } from './lab.ts';

export const talk = { ...fair, ...graphs, ...lab };
