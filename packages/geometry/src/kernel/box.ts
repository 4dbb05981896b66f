// Upright boxes around things, for a quick "cannot touch" before any exact question is asked. Lengths in mm.

import type { Vec3 } from './vec.ts';

export interface Box3 {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The smallest box around the points; around no points it is empty (min above max). */
export function boxAround(points: readonly Vec3[]): Box3 {
  let box: Box3 = EMPTY_BOX;
  for (const point of points) box = boxOfBoth(box, { min: point, max: point });
  return box;
}

/** The smallest box around both boxes. */
export function boxOfBoth(a: Box3, b: Box3): Box3 {
  return {
    min: [Math.min(a.min[0], b.min[0]), Math.min(a.min[1], b.min[1]), Math.min(a.min[2], b.min[2])],
    max: [Math.max(a.max[0], b.max[0]), Math.max(a.max[1], b.max[1]), Math.max(a.max[2], b.max[2])],
  };
}

/** True when the boxes touch, overlap, or come within `reachMm` of each other along every axis. */
export function boxesMeet(a: Box3, b: Box3, reachMm: number): boolean {
  return (
    a.min[0] <= b.max[0] + reachMm &&
    b.min[0] <= a.max[0] + reachMm &&
    a.min[1] <= b.max[1] + reachMm &&
    b.min[1] <= a.max[1] + reachMm &&
    a.min[2] <= b.max[2] + reachMm &&
    b.min[2] <= a.max[2] + reachMm
  );
}

export const EMPTY_BOX: Box3 = {
  min: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
  max: [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY],
};
