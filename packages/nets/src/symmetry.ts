// Which point of a solid can be told apart from others, when nobody knows which way round it was put down.

import type { Solid, Vec3 } from '@cairnmark/geometry';
import { add3, cross3, dot3, length3, MOST_SIDES, scale3, sub3, unit3 } from '@cairnmark/geometry';
import { SAME_DIRECTION, SAME_POINT_SHARE } from './tolerance.ts';

/**
 * The mean of all places that `point` (own frame, mm) comes to by turning the solid into itself. A cube looks the same from
 * every side, so that mean is its middle; a pyramid turns about its upright axis alone, so the mean keeps its height.
 * With an `open` base every solid has a top and a base.
 */
export function meanOverTurns(solid: Solid, point: Vec3, base: 'closed' | 'open'): Vec3 {
  const middle = solid.centroids.full;
  const axes = axesOf(solid, middle);
  const [first, ...others] = base === 'closed' ? axes : axes.filter((axis) => Math.abs(axis[2]) > 1 - SAME_DIRECTION);
  if (first === undefined) return point;
  if (others.some((axis) => length3(cross3(first, axis)) > SAME_DIRECTION)) return middle;
  return add3(middle, scale3(first, dot3(sub3(point, middle), first)));
}

/** Axes, unit vectors, about which the solid turns into itself by less than a whole turn. */
function axesOf(solid: Solid, middle: Vec3): readonly Vec3[] {
  const { flatFaces, curvedSurfaces } = solid;
  if (curvedSurfaces.length > 0) return isAlikeBothWaysUp(solid) ? [UPRIGHT, ACROSS] : [UPRIGHT];
  const rings = flatFaces.flatMap((face) => (face.kind === 'polygon' ? [face.corners] : []));
  const corners = distinct(rings.flat().map((corner) => sub3(corner, middle)));
  const candidates = rings.flatMap((ring) => [
    sub3(mean(ring), middle),
    ...ring.flatMap((corner, k) => [
      sub3(corner, middle),
      sub3(mean([corner, ring[(k + 1) % ring.length] ?? corner]), middle),
    ]),
  ]);
  const reachMm = Math.max(...corners.map(length3));
  const away = candidates.filter((axis) => length3(axis) > SAME_POINT_SHARE * reachMm).map(unit3);
  return away.filter((axis) => TURNS.some((turns) => mapsOntoItself(corners, axis, (2 * Math.PI) / turns, reachMm)));
}

const UPRIGHT: Vec3 = [0, 0, 1];
const ACROSS: Vec3 = [1, 0, 0];

/** Parts of a whole turn. */
const TURNS: readonly number[] = Array.from({ length: MOST_SIDES - 1 }, (_, k) => k + 2);

const isAlikeBothWaysUp = ({ flatFaces }: Solid): boolean => {
  const [bottom, top] = flatFaces;
  return bottom?.kind === 'disc' && top?.kind === 'disc' && bottom.radiusMm === top.radiusMm;
};

const mean = (points: readonly Vec3[]): Vec3 => scale3(points.reduce(add3, [0, 0, 0]), 1 / points.length);

/** Faces share their corners, each with the same figures. */
const distinct = (points: readonly Vec3[]): readonly Vec3[] => [
  ...new Map(points.map((point) => [point.map((at) => at.toFixed(6)).join(' '), point])).values(),
];

function mapsOntoItself(corners: readonly Vec3[], axis: Vec3, byRad: number, reachMm: number): boolean {
  return corners.every((corner) => {
    const turned = turn(corner, axis, byRad);
    return corners.some((other) => length3(sub3(turned, other)) < SAME_POINT_SHARE * reachMm);
  });
}

/** Rodrigues' rotation formula. */
function turn(point: Vec3, axis: Vec3, byRad: number): Vec3 {
  const along = scale3(axis, dot3(axis, point) * (1 - Math.cos(byRad)));
  return add3(add3(scale3(point, Math.cos(byRad)), scale3(cross3(axis, point), Math.sin(byRad))), along);
}
