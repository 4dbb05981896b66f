// States of the class and its groups.

import type { State } from './state.ts';

export const classPlan: readonly State[] = [];
