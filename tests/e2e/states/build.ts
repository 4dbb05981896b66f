// States of Build.

import { openDemo } from '../tools/classes.ts';
import type { State } from './state.ts';

export const build: readonly State[] = [{ name: 'build', go: openDemo }];
