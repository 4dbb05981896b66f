// Most points of rows that sum over pieces. What a row gives is worked out exactly as the points table does, rounding, caps
// and floors included; what it could still give is bounded from above.

import type { PointsRow } from '../types.ts';
import { sorted } from './aims.ts';
import { besidePoints } from './beside-points.ts';
import { ceilingMm } from './ceiling.ts';
import { allowed } from './finishing.ts';
import type { PointsModel } from './points-model.ts';
import { eitherOf, gainLeft, pointsModel } from './points-model.ts';
import type { Prepared } from './prepared.ts';
import { prepare } from './prepared.ts';
import { firstLeft, heightBelow, mostOf } from './room-below.ts';
import { BASE, HEIGHT, pointsFor } from './row-bounds.ts';
import type { Aim } from './search.ts';
import type { BestTask } from './types.ts';

export function mostPoints(prepared: Prepared, rows: readonly PointsRow[]): Aim {
  const { ways } = prepared;
  const model = pointsModel(prepared, rows);
  const isAllowed = allowed(prepared);
  const withBeside = besidePoints(prepared, model);
  return {
    ways: sorted(
      ways,
      (way) => -model.wayGain(way),
      ({ massG }) => massG,
      ({ up }) => -up.bottomInsideMm,
    ),
    finish: (placed, used, above, spend) => {
      if (model.aside.length > 0) return withBeside({ placed, used, above, spend });
      if (isAllowed(placed, used) === null) return null;
      return { placed, beside: [], value: pointsFor(rows, model.totalsOf(placed, used)) };
    },
    boundBelow: boundOf(prepared, model),
    matters: { height: heightMatters(rows), push: false },
    above: Number.NEGATIVE_INFINITY,
  };
}

function boundOf(prepared: Prepared, model: PointsModel): Aim['boundBelow'] {
  const { task, ways, stock, most } = prepared;
  const { aside, pieceGain, wayGain, rows, perPiece, heightSlope } = model;
  const carriers = ways.filter(({ carries }) => carries);
  const lowest = mostOf(
    carriers.filter(({ mayBeLowest }) => mayBeLowest),
    ({ up }) => up.baseMm2,
  );
  const asideGains = mostOf(aside, ({ kind }) => pieceGain(kind));
  const placedGains = eitherOf(carriers, wayGain, asideGains);
  const pieceGains = eitherOf(carriers, ({ kind }) => pieceGain(kind), asideGains);
  const measures = rows.map((_, j) => mostOf([...carriers, ...aside], ({ kind }) => perPiece[j]?.[kind] ?? 0));
  const heightRoom = heightBelow(prepared);
  const asideMm = Math.max(0, ...aside.map(({ up }) => up.heightMm));
  const bases = ways.map(({ up }) => up.baseMm2);
  const baseMm2 = [Math.min(...bases), Math.max(...bases) * (task.beside ? most : 1)] as const;
  return (placed, used) => {
    const room = most - placed.count;
    const heightMm = heightRoom(placed, used);
    if (room <= 0 || heightMm < 0 || firstLeft(lowest, stock, used) === null) return Number.NEGATIVE_INFINITY;
    const left = { stock, used, room, forced: task.pieces.least - placed.count };
    const byPieces = gainLeft(pieceGains, left);
    const slope = Math.max(0, heightSlope);
    const asTower = Math.min(gainLeft(placedGains, left), byPieces + slope * heightMm);
    // What stands beside may be higher than the tower will be.
    const overMm = asideMm - placed.heightMm;
    return model.most(model.totalsOf(placed, used), {
      heightMm: Math.max(heightMm, overMm),
      gain: overMm > 0 ? Math.max(asTower, byPieces + slope * overMm) : asTower,
      measure: (j) => gainLeft(measures[j] ?? [], { ...left, forced: 0 }),
      baseMm2,
    });
  };
}

/** What being higher does to the points, all rows together. */
function heightMatters(rows: readonly PointsRow[]): Aim['matters']['height'] {
  const signs = new Set(rows.filter(({ measure }) => measure === HEIGHT).map(({ points }) => Math.sign(points)));
  signs.delete(0);
  if (signs.size === 0) return 'no';
  if (signs.size > 1) return 'same';
  return signs.has(1) ? 'more' : 'less';
}

/** No build of these pieces earns more; null: none was found. */
export function pointsCeiling(task: BestTask, rows: readonly PointsRow[]): number | null {
  if (rows.some(({ measure, points }) => measure === BASE && points > 0)) return null;
  // However a piece lies, it counts: all kinds, whether they stand or not.
  const model = pointsModel(prepare({ ...task, beside: false }), rows);
  const anyOf = (gainOf: (kind: number) => number) =>
    task.kinds.map((_, kind) => ({ kind, value: gainOf(kind) })).sort((a, b) => b.value - a.value);
  const stock = task.kinds.map((kind) => kind.stock);
  const room = Math.min(
    task.pieces.most,
    stock.reduce((sum, count) => sum + count, 0),
  );
  const left = { stock, used: stock.map(() => 0), room, forced: task.pieces.least };
  const heightMm = ceilingMm(task);
  return model.most(
    rows.map(() => 0),
    {
      heightMm,
      gain: gainLeft(anyOf(model.pieceGain), left) + Math.max(0, model.heightSlope) * heightMm,
      measure: (j) =>
        gainLeft(
          anyOf((kind) => model.perPiece[j]?.[kind] ?? 0),
          { ...left, forced: 0 },
        ),
      baseMm2: [0, Number.POSITIVE_INFINITY],
    },
  );
}
