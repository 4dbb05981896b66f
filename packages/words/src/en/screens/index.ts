// The texts of the frame, of Start and of Build, and what several screens use, in English.

import { build } from './build.ts';
import { field } from './field.ts';
import { frame } from './frame.ts';
import { help } from './help.ts';
import { shared } from './shared.ts';
import { start } from './start.ts';

export const screens = { ...frame, ...help, ...field, ...start, ...build, ...shared };
