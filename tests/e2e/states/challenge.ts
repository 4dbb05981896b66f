// States of the Challenge screen.

import type { State } from './state.ts';

export const challenge: readonly State[] = [];
