// The search and trying everything on one seeded kit: do they say the same?

import { bestBuild } from '@cairnmark/scoring';
import { tryEverything } from './best-brute-force.ts';
import { SMALL_KITS, seededTask } from './best-kits.ts';

export interface Compared {
  readonly goal: string;
  readonly outcome: 'any' | 'centred' | 'none';
  readonly agree: boolean;
  readonly towers: number;
}

/** Every tower of a small kit is tried; none has more than this. */
const MOST_TOWERS = 10_000_000;
/** Pieces tried; far more than a small kit takes. */
const LIMIT = 10_000_000;
const RELATIVE = 1e-9;
/** Points are fixed to a millionth, each row by itself; brute force does not. */
const POINTS = 1e-5;

export function compared(seed: number): Compared {
  const task = seededTask(seed, SMALL_KITS, seed % 2 === 0);
  const found = bestBuild(task, LIMIT);
  const tried = tryEverything(task, MOST_TOWERS);
  if (found.kind === 'not-finished') throw new RangeError(`kit ${seed} was not finished`);
  const outcome: Compared['outcome'] = found.kind === 'best' ? found.scope : 'none';
  const said = { goal: task.goal.kind, outcome, towers: tried.towers };
  if (found.kind === 'none' || tried.value === null || tried.baseMm2 === null) {
    return { ...said, agree: found.kind === 'none' && tried.value === null };
  }
  const near = task.goal.kind === 'most-points' ? POINTS : RELATIVE * Math.abs(tried.value);
  const narrow =
    task.goal.kind !== 'tallest-on-smallest-base' ||
    Math.abs(found.tower.baseMm2 - tried.baseMm2) <= RELATIVE * tried.baseMm2;
  return { ...said, agree: narrow && Math.abs(found.value - tried.value) <= near };
}
