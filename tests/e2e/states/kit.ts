// States of the Kit screen.

import type { State } from './state.ts';

export const kit: readonly State[] = [];
