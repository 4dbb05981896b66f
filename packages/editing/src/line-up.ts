// What a piece lines up with when it is let go: the grid, the piece below it, or what stands on the same surface. Along
// each axis by itself, and only where the hand was near it already. Plane of the table, mm.

import type { Outline, Side, Vec2 } from '@cairnmark/geometry';
import { CONTACT_MM, planOverlapDepth, SAME_LENGTH_MM } from '@cairnmark/geometry';
import { onGrid } from './grid.ts';
import type { InHand, Staying } from './in-hand.ts';
import { nearTo } from './in-hand.ts';
import { ALL_SIDES, DIRECTIONS, pointAt } from './sides.ts';
import { touchingNear } from './touching.ts';
import type { Spot } from './types.ts';

/** mm. Steps of the grid: half a square of the sheet. */
export const GRID_MM = 5;

/** mm. How near a piece has to be let go to what it lines up with: a shaky finger, and less than half of a small solid. */
export const LINE_UP_MM = 6;

/** Where the axis of the piece in hand comes to stand. `reachMm`: surfaces within it of the one pointed at are one with it. */
export function lineUp(spot: Spot, hand: InHand, reachMm: number): Vec2 {
  const at: Vec2 = [spot.xMm, spot.yMm];
  switch (spot.lineUp) {
    case 'free':
      return [onGrid(at[0]), onGrid(at[1])];
    case 'grid':
      return [onGridOf(at[0]), onGridOf(at[1])];
    case 'piece-below': {
      const below = pieceBelow(spot, hand.staying, reachMm);
      const along = (axis: 0 | 1): number => nearest(at[axis], below === null ? [] : linesOf(hand, below, axis));
      const [xMm, yMm] = besideWhatStands(spot, hand, below, reachMm) ?? [along(0), along(1)];
      return [onGrid(xMm), onGrid(yMm)];
    }
  }
}

const onGridOf = (mm: number): number => onGrid(Math.round(mm / GRID_MM) * GRID_MM);

/** The highest piece under the spot that reaches up to the surface pointed at; null over the table. */
function pieceBelow(spot: Spot, staying: readonly Staying[], reachMm: number): Staying | null {
  const point: Outline = { kind: 'disc', centre: [spot.xMm, spot.yMm], radiusMm: 0 };
  const surfaceMm = spot.surfaceMm ?? Number.POSITIVE_INFINITY;
  let highest: Staying | null = null;
  for (const one of staying) {
    const { bottomMm, topMm, outline } = one.placed;
    if (topMm > surfaceMm + reachMm || bottomMm > surfaceMm - CONTACT_MM) continue;
    if (topMm <= (highest?.placed.topMm ?? 0) || planOverlapDepth(point, outline) < 0) continue;
    highest = one;
  }
  return highest;
}

/** Places along an axis that line up with a piece: centre on centre, and level edges flush. */
function linesOf({ own }: InHand, { entry, placed }: Staying, axis: 0 | 1): readonly number[] {
  const centre = centreOf(entry.laid)[axis];
  const [mine, other] = [levelEdges(own.outline, axis), levelEdges(placed.outline, axis)];
  return mine === null || other === null ? [centre] : [centre, other[0] - mine[0], other[1] - mine[1]];
}

const centreOf = ({ xMm, yMm }: Staying['entry']['laid']): Vec2 => [xMm, yMm];

/** The two ends along an axis of a rectangle whose edges are level with the axes; null for any other outline. */
function levelEdges(outline: Outline, axis: 0 | 1): readonly [number, number] | null {
  if (outline.kind === 'disc' || outline.points.length !== 4) return null;
  const across = outline.points.map((point) => point[axis]);
  const [least, most] = [Math.min(...across), Math.max(...across)];
  const isLevel = outline.points.every(
    (point, index) =>
      levelTo(point, outline.points.at(index - 1) ?? point, 0) ||
      levelTo(point, outline.points.at(index - 1) ?? point, 1),
  );
  return isLevel ? [least, most] : null;
}

const levelTo = (a: Vec2, b: Vec2, axis: 0 | 1): boolean => Math.abs(a[axis] - b[axis]) <= SAME_LENGTH_MM;

function nearest(mm: number, lines: readonly number[]): number {
  const away = (line: number): number => Math.abs(line - mm);
  const best = lines.reduce<number | null>(
    (sofar, line) => (sofar === null || away(line) < away(sofar) ? line : sofar),
    null,
  );
  return best !== null && away(best) <= LINE_UP_MM ? best : mm;
}

/** Against the nearest side of a piece that stands on the surface pointed at; null where none is near. */
function besideWhatStands(spot: Spot, hand: InHand, below: Staying | null, reachMm: number): Vec2 | null {
  const { surfaceMm } = spot;
  if (surfaceMm === null) return null;
  const at: Vec2 = [spot.xMm, spot.yMm];
  let best: Meeting | null = null;
  for (const one of nearTo(hand, at, 2 * LINE_UP_MM)) {
    if (Math.abs(one.placed.bottomMm - surfaceMm) > reachMm) continue;
    for (const side of ALL_SIDES) {
      const found = against(side, at, hand, one, below);
      if (found !== null && found.awayMm < (best?.awayMm ?? Number.POSITIVE_INFINITY)) best = found;
    }
  }
  return best?.at ?? null;
}

interface Meeting {
  readonly at: Vec2;
  readonly awayMm: number;
}

/** Where the piece in hand touches a side of another, and how far along that is from where it was let go. */
function against(side: Side, at: Vec2, hand: InHand, one: Staying, below: Staying | null): Meeting | null {
  const { axis } = DIRECTIONS[side];
  const crosswise = axis === 0 ? 1 : 0;
  const lines = [one, ...(below === null ? [] : [below])].flatMap((piece) => linesOf(hand, piece, crosswise));
  const acrossMm = onGrid(nearest(at[crosswise], lines));
  const meeting = pointAt(axis, at[axis], acrossMm);
  const alongMm = touchingNear(hand.own.outline, one.placed.outline, side, meeting, LINE_UP_MM);
  if (alongMm === null) return null;
  return { at: pointAt(axis, alongMm, acrossMm), awayMm: Math.abs(alongMm - at[axis]) };
}
