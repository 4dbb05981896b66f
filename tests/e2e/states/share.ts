// States of the ways in which a try leaves a device and comes in.

import type { State } from './state.ts';

export const share: readonly State[] = [];
