// How much a search has done, shared by the searches that make up one answer.

import type { Work } from '../types.ts';

export interface Meter {
  /** Counts a branch; false: the limit is reached or the caller gave up, and nothing further may be opened. */
  readonly open: () => boolean;
  readonly branches: () => number;
}

export function meterOf({ branchesMost, stop }: Work): Meter {
  let branches = 0;
  let stopped = false;
  const open = (): boolean => {
    if (!stopped && branches < branchesMost) {
      branches += 1;
      stopped = branches % TOLD_EVERY === 0 && stop?.(branches) === true;
    } else stopped = true;
    return !stopped;
  };
  return { open, branches: () => branches };
}

/** Another meter that stops earlier, after so many branches of its own; what it opens counts in the first one too. */
export function within(meter: Meter, branchesMost: number): Meter {
  let branches = 0;
  const open = (): boolean => {
    if (branches >= branchesMost) return false;
    branches += 1;
    return meter.open();
  };
  return { open, branches: meter.branches };
}

/** Branches; some thousandths of a second. */
const TOLD_EVERY = 8;
