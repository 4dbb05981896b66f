// States of the Record sheet.

import type { State } from './state.ts';

export const record: readonly State[] = [];
