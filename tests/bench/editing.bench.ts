// The editor's answer to a move of the pointer in a build of 30 pieces, and what it takes to pick a piece up, beside
// dropping the whole build once.

import type { Drag, FromShelf, Pieces, Spot } from '@cairnmark/editing';
import { dragOf, readBack } from '@cairnmark/editing';
import { dropPieces } from '@cairnmark/geometry';
import { benchOf } from '../reference/edited-builds.ts';
import * as builds from '../reference/stacked-builds.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'editor';

const BENCH = benchOf({ cube: builds.cube(50), post: builds.box(20, 20, 50), slab: builds.box(120, 50, 10) }, 99, 2);
const POST: FromShelf = { kind: 'post', resting: null };

/** Ten bridges in two rows, each of two posts and a slab. */
const BRIDGES: Pieces = Array.from({ length: 10 }, (_, k) => {
  const [xMm, yMm] = [130 * (k % 5), 60 * Math.floor(k / 5)];
  return [builds.put('post', xMm - 40, yMm), builds.put('post', xMm + 40, yMm), builds.put('slab', xMm, yMm)];
}).flat();

const TOWER: Pieces = Array.from({ length: 30 }, (_, k) => builds.put('cube', k % 3, 0, { turnRad: 0.3 * k }));

export async function run(report: Report): Promise<void> {
  const moves = {
    'a post under a slab, ten bridges': alongside(dragOf(BRIDGES, POST, BENCH), 0),
    'a post over them': alongside(dragOf(BRIDGES, POST, BENCH), null),
    'a post pointed at the foot of a tower': alongside(dragOf(TOWER, POST, BENCH), 0),
    'the foot of a tower': alongside(dragOf(TOWER, 0, BENCH), 0),
  };
  for (const [label, ms] of Object.entries(interleave(moves, 9))) {
    report({ label: `move: ${label}`, value: 1000 * ms, unit: 'us', target: 'under 2000' });
  }
  const times = interleave(
    {
      drop: () => dropPieces(TOWER, BENCH.solids, BENCH.slackMm),
      'pick up the foot of a tower': () => dragOf(TOWER, 0, BENCH),
      'read a tower back': () => readBack(TOWER, BENCH),
    },
    9,
  );
  for (const label of ['pick up the foot of a tower', 'read a tower back'] as const) {
    report({ label: `${label}, by dropping it once`, value: times[label] / times.drop, unit: 'x' });
  }
}

/** Moves to spots round the middle, a different one each time; the first hundred, while code is still slow, go before. */
function alongside(drag: Drag, surfaceMm: number | null): () => NonNullable<unknown> {
  let calls = 0;
  const move = () => {
    calls += 1;
    const spot: Spot = { xMm: ((7 * calls) % 60) - 30, yMm: ((3 * calls) % 30) - 15, surfaceMm, lineUp: 'piece-below' };
    return drag.at(spot);
  };
  while (calls < 100) move();
  return move;
}
