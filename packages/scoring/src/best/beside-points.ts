// Which pieces to set beside a finished tower so that all together earn most: every set of what is left, kind by kind, as far
// as it can still beat what is known.

import type { Placed } from './placing.ts';
import { onTable } from './placing.ts';
import type { PointsModel } from './points-model.ts';
import { gainLeft } from './points-model.ts';
import type { Prepared, WayOf } from './prepared.ts';
import { mostOf } from './room-below.ts';
import { BASE, pointsFor } from './row-bounds.ts';
import type { Finished } from './search.ts';
import { SAME_VALUE } from './tolerance.ts';

interface Tower {
  readonly placed: Placed;
  readonly used: readonly number[];
  readonly above: number;
}

/** null: the rules do not allow the tower, or none of the sets earns more than `above`. */
export function besidePoints(prepared: Prepared, model: PointsModel, tower: Tower): Finished | null {
  const { task } = prepared;
  const { placed } = tower;
  if (!placed.way.mayBeLowest || onTable(placed, prepared).stands < task.pushAtLeast * (1 - SAME_VALUE)) return null;
  const kinds = [...model.aside].sort((a, b) => model.pieceGain(b.kind) - model.pieceGain(a.kind));
  const start = {
    beside: [],
    used: tower.used,
    totals: model.totalsOf(placed, tower.used),
    baseMm2: placed.way.up.baseMm2,
  };
  return bestFrom(start, kinds, { prepared, model, placed, above: tower.above });
}

interface Chosen {
  readonly beside: readonly WayOf[];
  readonly used: readonly number[];
  readonly totals: readonly number[];
  readonly baseMm2: number;
}

interface Setting {
  readonly prepared: Prepared;
  readonly model: PointsModel;
  readonly placed: Placed;
  readonly above: number;
}

function bestFrom(chosen: Chosen, kinds: readonly WayOf[], setting: Setting): Finished | null {
  const { prepared, model, placed } = setting;
  const { task, stock } = prepared;
  const { beside, used, totals, baseMm2 } = chosen;
  const count = placed.count + beside.length;
  if (task.baseAtMostMm2 !== null && baseMm2 > task.baseAtMostMm2 * (1 + SAME_VALUE)) return null;
  const [way, ...rest] = kinds;
  if (way === undefined) {
    const complete = count >= task.pieces.least && task.kinds.every(({ least }, kind) => (used[kind] ?? 0) >= least);
    const value = pointsFor(model.rows, totals);
    return complete && value > setting.above ? { placed, beside, value } : null;
  }
  const room = task.pieces.most - count;
  const left = { stock, used, room, forced: task.pieces.least - count };
  const most = model.most(totals, {
    heightMm: 0,
    gain: gainLeft(
      mostOf(kinds, ({ kind }) => model.pieceGain(kind)),
      left,
    ),
    measure: (j) =>
      gainLeft(
        mostOf(kinds, ({ kind }) => model.perPiece[j]?.[kind] ?? 0),
        { ...left, forced: 0 },
      ),
    baseMm2: [baseMm2, baseMm2 + room * Math.max(...kinds.map(({ up }) => up.baseMm2))],
  });
  if (most <= setting.above) return null;
  let best: Finished | null = null;
  for (let more = Math.min(room, (stock[way.kind] ?? 0) - (used[way.kind] ?? 0)); more >= 0; more -= 1) {
    const next = bestFrom(withMore(chosen, way, more, model), rest, {
      ...setting,
      above: best?.value ?? setting.above,
    });
    best = next ?? best;
  }
  return best;
}

function withMore({ beside, used, totals, baseMm2 }: Chosen, way: WayOf, more: number, model: PointsModel): Chosen {
  const wider = baseMm2 + more * way.up.baseMm2;
  return {
    beside: [...beside, ...Array.from({ length: more }, () => way)],
    used: used.map((count, kind) => (kind === way.kind ? count + more : count)),
    totals: totals.map((total, j) =>
      model.rows[j]?.measure === BASE ? wider : total + more * (model.perPiece[j]?.[way.kind] ?? 0),
    ),
    baseMm2: wider,
  };
}
