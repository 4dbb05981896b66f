// The texts of the frame, of Start and of Build, and what several screens use, in Spanish.

import type { ScreenTexts } from '../../screens.ts';
import { build } from './build.ts';
import { field } from './field.ts';
import { frame } from './frame.ts';
import { help } from './help.ts';
import { shared } from './shared.ts';
import { start } from './start.ts';

export const screens: ScreenTexts = { ...frame, ...help, ...field, ...start, ...build, ...shared };
