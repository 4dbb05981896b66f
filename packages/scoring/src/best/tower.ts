// A finished search result as a build, from the table upwards.

import { groundMm2 } from './finishing.ts';
import type { Placed } from './placing.ts';
import { onTable } from './placing.ts';
import type { Prepared, WayOf } from './prepared.ts';
import type { Finished } from './search.ts';
import type { BestTower, PutPiece } from './types.ts';

export function towerOf(prepared: Prepared, { placed, beside }: Pick<Finished, 'placed' | 'beside'>): BestTower {
  const { task, gripOnTable } = prepared;
  const put = ({ kind, up }: WayOf): PutPiece => ({ kind: task.kinds[kind]?.id ?? '', way: up.id });
  const pushes = onTable(placed, prepared);
  const besideTips = beside.map(({ up }) => up.bottomInsideMm / up.centreHeightMm);
  const tipsPush = Math.min(pushes.tips, ...besideTips);
  return {
    pieces: fromTheTable(placed).map(put),
    beside: beside.map(put),
    heightMm: Math.max(placed.heightMm, ...beside.map(({ up }) => up.heightMm)),
    baseMm2: groundMm2({ placed, beside }),
    tipsPush,
    standsPush: Math.min(tipsPush, pushes.stands, ...beside.map(({ kind }) => gripOnTable(kind))),
  };
}

function fromTheTable(placed: Placed): readonly WayOf[] {
  const ways: WayOf[] = [];
  for (let one: Placed | null = placed; one !== null; one = one.above) ways.push(one.way);
  return ways;
}
