// Which pieces to set beside a finished tower so that all together earn most: every set of what is left, kind by kind, as far
// as it can still beat what is known.

import type { Placed } from './placing.ts';
import { onTable } from './placing.ts';
import type { PointsModel } from './points-model.ts';
import { gainLeft } from './points-model.ts';
import type { Prepared, WayOf } from './prepared.ts';
import type { MostOf } from './room-below.ts';
import { mostOf } from './room-below.ts';
import { BASE, HEIGHT, pointsFor } from './row-bounds.ts';
import type { Finished } from './search.ts';
import { SAME_VALUE } from './tolerance.ts';

/** `spend` counts one set that is looked at; false: the work limit is met. */
export type Spend = () => boolean;

interface Tower {
  readonly placed: Placed;
  readonly used: readonly number[];
  readonly above: number;
  readonly spend: Spend;
}

/**
 * A function from a tower to the tower with what earns most beside it. null: the rules do not allow the tower, or none of the
 * sets earns more than `above`.
 */
export function besidePoints(prepared: Prepared, model: PointsModel): (tower: Tower) => Finished | null {
  const { task } = prepared;
  const ways = [...model.aside].sort((a, b) => model.pieceGain(b.kind) - model.pieceGain(a.kind));
  const stages = ways.map((way, k): Stage => {
    const rest = ways.slice(k);
    return {
      way,
      gains: mostOf(rest, ({ kind }) => model.pieceGain(kind)),
      measures: model.rows.map((_, j) => mostOf(rest, ({ kind }) => model.perPiece[j]?.[kind] ?? 0)),
      widestMm2: Math.max(...rest.map(({ up }) => up.baseMm2)),
      highestMm: Math.max(...rest.map(({ up }) => up.heightMm)),
    };
  });
  return ({ placed, used, above, spend }) => {
    if (!placed.way.mayBeLowest || onTable(placed, prepared).stands < task.pushAtLeast * (1 - SAME_VALUE)) return null;
    const totals = model.totalsOf(placed, used);
    const start = { beside: [], used, totals, baseMm2: placed.way.up.baseMm2, heightMm: placed.heightMm };
    return bestFrom(start, 0, { prepared, model, stages, placed, above, spend });
  };
}

/** A way in which the next pieces may stand beside, and what it and all after it bring at most. */
interface Stage {
  readonly way: WayOf;
  readonly gains: MostOf;
  readonly measures: readonly MostOf[];
  readonly widestMm2: number;
  readonly highestMm: number;
}

interface Chosen {
  readonly beside: readonly WayOf[];
  readonly used: readonly number[];
  readonly totals: readonly number[];
  readonly baseMm2: number;
  /** Of the tower, or of what stands beside it and is higher. */
  readonly heightMm: number;
}

interface Setting extends Omit<Tower, 'used'> {
  readonly prepared: Prepared;
  readonly model: PointsModel;
  readonly stages: readonly Stage[];
}

function bestFrom(chosen: Chosen, from: number, setting: Setting): Finished | null {
  const { prepared, model, placed, above } = setting;
  const { task, stock } = prepared;
  const { beside, used, totals, baseMm2, heightMm } = chosen;
  const count = placed.count + beside.length;
  if (!setting.spend()) return null;
  if (task.baseAtMostMm2 !== null && baseMm2 > task.baseAtMostMm2 * (1 + SAME_VALUE)) return null;
  const stage = setting.stages[from];
  if (stage === undefined) {
    const complete = count >= task.pieces.least && task.kinds.every(({ least }, kind) => (used[kind] ?? 0) >= least);
    const value = complete ? pointsFor(model.rows, totals) : above;
    return value > above ? { placed, beside, value } : null;
  }
  const { way } = stage;
  const room = Math.min(task.pieces.most, prepared.most) - count;
  const left = { stock, used, room, forced: task.pieces.least - count };
  const higherMm = Math.max(0, stage.highestMm - heightMm);
  const most = model.most(totals, {
    heightMm: higherMm,
    gain: gainLeft(stage.gains, left) + Math.max(0, model.heightSlope) * higherMm,
    measure: (j) => gainLeft(stage.measures[j] ?? [], { ...left, forced: 0 }),
    baseMm2: [baseMm2, baseMm2 + room * stage.widestMm2],
  });
  if (most <= above) return null;
  let best: Finished | null = null;
  for (let more = Math.min(room, (stock[way.kind] ?? 0) - (used[way.kind] ?? 0)); more >= 0; more -= 1) {
    const next = bestFrom(withMore(chosen, way, more, model), from + 1, { ...setting, above: best?.value ?? above });
    best = next ?? best;
  }
  return best;
}

function withMore(chosen: Chosen, way: WayOf, more: number, model: PointsModel): Chosen {
  const { beside, used, totals } = chosen;
  const baseMm2 = chosen.baseMm2 + more * way.up.baseMm2;
  const heightMm = more > 0 ? Math.max(chosen.heightMm, way.up.heightMm) : chosen.heightMm;
  return {
    beside: [...beside, ...Array.from({ length: more }, () => way)],
    used: used.map((count, kind) => (kind === way.kind ? count + more : count)),
    totals: totals.map((total, j) => {
      const measure = model.rows[j]?.measure;
      if (measure === BASE) return baseMm2;
      return measure === HEIGHT ? heightMm : total + more * (model.perPiece[j]?.[way.kind] ?? 0);
    }),
    baseMm2,
    heightMm,
  };
}
