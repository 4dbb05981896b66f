// The texts of the talk after the build, in English.

import { graphs } from './graphs.ts';

export const talk = { ...graphs };
