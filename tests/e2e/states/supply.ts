// States of the Supply screen.

import type { State } from './state.ts';

export const supply: readonly State[] = [];
