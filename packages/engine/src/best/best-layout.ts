// The best build as a layout that the engine evaluates like any other: the tower with every centre of mass over the middle of
// the table, and the other pieces in rows to the right of it.

import type { LaidPiece, Layout, Outline, TabsOf, Vec2 } from '@cairnmark/geometry';
import type { BestTower, PutPiece } from '@cairnmark/scoring';
import type { Challenge, Group } from '../types.ts';
import type { Shape } from './best-plan.ts';
import { shapesOf } from './best-plan.ts';
import { offCentre } from './ways-up.ts';

/** mm. Between what stands side by side: room for a hand. */
const APART_MM = 50;

/** Throws RangeError for a kind or a way up that the challenge does not have. */
export function bestLayout(
  { pieces, beside }: BestTower,
  challenge: Challenge,
  group: Group | null,
  tabsOf: TabsOf,
): Layout {
  const shapes = new Map(shapesOf(challenge, group, tabsOf).map((shape) => [shape.kind.id, shape]));
  const tower = pieces.map((put) => laid(put, shapes, [0, 0]));
  const reachMm = Math.max(...[...pieces, ...beside].map((put) => reachOf(put, shapes)));
  const cellMm = 2 * reachMm + APART_MM;
  const others = beside.map(
    (put, k): LaidPiece => ({
      ...laid(put, shapes, [((k % IN_ROW) + 1) * cellMm, -Math.floor(k / IN_ROW) * cellMm]),
      on: 'table',
    }),
  );
  return { kind: 'laid-out', pieces: [...tower, ...others] };
}

/** So many stand in a row beside the tower. */
const IN_ROW = 8;

type Shapes = ReadonlyMap<string, Shape>;

function laid(put: PutPiece, shapes: Shapes, [xMm, yMm]: Vec2): LaidPiece {
  const { solid, mass, resting } = found(put, shapes);
  const [aside, behind] = offCentre(solid, mass, resting);
  return { kind: put.kind, resting: put.way, xMm: xMm - aside, yMm: yMm - behind, turnRad: 0 };
}

/** How far it reaches from its centre of mass, seen from above, mm; no farther than that. */
function reachOf(put: PutPiece, shapes: Shapes): number {
  const { solid, mass, resting } = found(put, shapes);
  const [aside, behind] = offCentre(solid, mass, resting);
  return Math.hypot(aside, behind) + extentOf(resting.outline);
}

const extentOf = (outline: Outline): number =>
  outline.kind === 'disc'
    ? Math.hypot(...outline.centre) + outline.radiusMm
    : Math.max(...outline.points.map((point) => Math.hypot(...point)));

function found({ kind, way }: PutPiece, shapes: Shapes) {
  const shape = shapes.get(kind);
  const resting = shape?.solid.restings.find(({ id }) => id === way);
  if (shape === undefined || resting === undefined) throw new RangeError(`no ${kind} with its ${way} down`);
  return { ...shape, resting };
}
