// The texts of the talk after the build, in English.

import { graphs } from './graphs.ts';
import { lab } from './lab.ts';

export const talk = { ...graphs, ...lab };
