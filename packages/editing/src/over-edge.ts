// How far a piece reaches over the edge of what it rests on, seen from above. mm.
// Past a straight edge, or a line that touches what is below, it reaches as far as its outline does square to that line.

import type { Outline, PlacedPiece, Side, Vec2 } from '@cairnmark/geometry';
import { CONTACT_MM, flatten, LEVEL_NORMAL, length2, reachAlong, scale2, sub2 } from '@cairnmark/geometry';
import { onGrid } from './grid.ts';
import { ALL_SIDES, sideOf, towards } from './sides.ts';

export interface OverEdge {
  /** To a hundredth of a millimetre. */
  readonly mm: number;
  /** Over which edge most. */
  readonly side: Side;
}

/** The furthest reach of `upper` over the edge of all that it rests on together; null when it stays within a contact's width. */
export function overEdge(upper: PlacedPiece, lower: readonly PlacedPiece[]): OverEdge | null {
  const below = lower.map((one) => topOf(one, upper.bottomMm));
  if (below.length === 0) return null;
  let furthest = { mm: Number.NEGATIVE_INFINITY, direction: towards('right') };
  for (const direction of directionsOver(upper.outline, below)) {
    const edgeMm = Math.max(...below.map((outline) => reachAlong(outline, direction)));
    const mm = reachAlong(upper.outline, direction) - edgeMm;
    if (mm > furthest.mm) furthest = { mm, direction };
  }
  return furthest.mm > CONTACT_MM ? { mm: onGrid(furthest.mm), side: sideOf(furthest.direction) } : null;
}

/** The level top face on which a piece can lie at this height; its outline where it offers none there. */
function topOf({ flatFaces, topMm, outline }: PlacedPiece, heightMm: number): Outline {
  const top = flatFaces.find(({ normal }) => normal[2] >= LEVEL_NORMAL);
  if (top === undefined || topMm < heightMm - CONTACT_MM) return outline;
  return top.kind === 'disc'
    ? { kind: 'disc', centre: flatten(top.centre), radiusMm: top.radiusMm }
    : { kind: 'polygon', points: top.corners.map(flatten) };
}

/** Square to every edge below, from every centre below to what reaches out furthest from it, and the four sides. */
function directionsOver(upper: Outline, below: readonly Outline[]): readonly Vec2[] {
  return [...ALL_SIDES.map(towards), ...below.flatMap((outline) => edgeDirections(outline, upper))];
}

function edgeDirections(below: Outline, upper: Outline): readonly Vec2[] {
  if (below.kind === 'polygon') {
    const step = Math.ceil(below.points.length / MOST_EDGES);
    return below.points.flatMap((corner, index) => {
      if (index % step > 0) return [];
      const [x, y] = sub2(corner, below.points.at(index - 1) ?? corner);
      return unit([y, -x]);
    });
  }
  const targets = upper.kind === 'disc' ? [upper.centre] : upper.points;
  return targets.flatMap((target) => unit(sub2(target, below.centre)));
}

/** Of an outline that stands for a curve by thousands of corners this many edges say enough: 0.03 mm on a radius of 50. */
const MOST_EDGES = 90;

/** The vector of length 1, or nothing for a vector without a direction. */
function unit(vector: Vec2): readonly Vec2[] {
  const length = length2(vector);
  return length > 0 ? [scale2(vector, 1 / length)] : [];
}
