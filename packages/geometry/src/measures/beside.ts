// Which pieces touch, seen from above, without overlapping, and in which direction. Outlines are convex; the widest
// strip between two convex figures lies square to a side of one of them, or to a line from a centre to a corner or to a
// centre. Plane of the table, mm.

import type { Outline } from '../kernel/outline.ts';
import { CONTACT_MM, SAME_LENGTH_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { add2, dot2, length2, scale2, sub2 } from '../kernel/vec.ts';
import { bodyBox } from '../stack/body-box.ts';
import { earlierNeighbours } from '../stack/plan-grid.ts';
import { planOverlapDepth } from '../stack/plan-overlap.ts';
import type { PlacedPiece, Stack } from '../stack/types.ts';

/** Two pieces whose outlines touch. */
export interface Beside {
  readonly first: number;
  readonly second: number;
  /** True when both reach to a common height, so that one pushes the other; else they only look flush from above. */
  readonly pushes: boolean;
  /** Unit vector from the first to the second. */
  readonly direction: Vec2;
}

/** All pairs of pieces whose outlines touch without overlapping. */
export function besideEachOther({ pieces }: Pick<Stack, 'pieces'>): readonly Beside[] {
  const boxes = pieces.map((piece) => bodyBox(piece.body));
  const neighbours = earlierNeighbours(boxes, CONTACT_MM);
  return pieces.flatMap((second) =>
    neighbours(second.index).flatMap((index): readonly Beside[] => {
      const first = pieces[index];
      const direction = first === undefined ? null : touchingDirection(first.outline, second.outline);
      if (first === undefined || direction === null) return [];
      return [{ first: index, second: second.index, pushes: atCommonHeight(first, second), direction }];
    }),
  );
}

/** How far an outline reaches along a unit direction. */
export function reachAlong(outline: Outline, direction: Vec2): number {
  if (outline.kind === 'disc') return dot2(outline.centre, direction) + outline.radiusMm;
  return outline.points.reduce(
    (furthest, point) => Math.max(furthest, dot2(point, direction)),
    Number.NEGATIVE_INFINITY,
  );
}

function atCommonHeight(a: PlacedPiece, b: PlacedPiece): boolean {
  return Math.min(a.topMm, b.topMm) - Math.max(a.bottomMm, b.bottomMm) > CONTACT_MM;
}

/**
 * The unit direction from `a` to `b` in which they are furthest apart, when that is a contact; null otherwise. Where two
 * corners meet, several directions do equally well: then the one between them.
 */
function touchingDirection(a: Outline, b: Outline): Vec2 | null {
  if (Math.abs(planOverlapDepth(a, b)) > CONTACT_MM) return null;
  const gaps = directionsBetween(a, b).map((direction) => ({
    direction,
    gapMm: -reachAlong(b, scale2(direction, -1)) - reachAlong(a, direction),
  }));
  const widestMm = Math.max(...gaps.map(({ gapMm }) => gapMm));
  if (Math.abs(widestMm) > CONTACT_MM) return null;
  const widest = gaps.filter(({ gapMm }) => gapMm > widestMm - SAME_LENGTH_MM);
  const [between] = unit(widest.reduce<Vec2>((total, { direction }) => add2(total, direction), [0, 0]));
  return between ?? null;
}

function directionsBetween(a: Outline, b: Outline): readonly Vec2[] {
  const turned = (directions: readonly Vec2[]): readonly Vec2[] => directions.map((direction) => scale2(direction, -1));
  return [...sideNormals(a), ...turned(sideNormals(b)), ...fromCentre(a, b), ...turned(fromCentre(b, a))];
}

/** Outward unit normals of the sides of a polygon that runs counter-clockwise; none of a disc. */
function sideNormals(outline: Outline): readonly Vec2[] {
  if (outline.kind === 'disc') return [];
  return outline.points.flatMap((corner, index) => {
    const [x, y] = sub2(corner, outline.points.at(index - 1) ?? corner);
    return unit([y, -x]);
  });
}

/** From the centre of a disc to the corners of a polygon, or to the other centre; nothing from a polygon. */
function fromCentre(disc: Outline, other: Outline): readonly Vec2[] {
  if (disc.kind === 'polygon') return [];
  const targets = other.kind === 'disc' ? [other.centre] : other.points;
  return targets.flatMap((target) => unit(sub2(target, disc.centre)));
}

/** The vector of length 1, or nothing for a vector without a direction. */
function unit(vector: Vec2): readonly Vec2[] {
  const length = length2(vector);
  return length > 0 ? [scale2(vector, 1 / length)] : [];
}
