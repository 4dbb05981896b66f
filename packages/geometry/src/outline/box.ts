// Upright boxes in the plane, for a quick "cannot touch" before any exact question; mm.

import type { Vec2 } from '../kernel/vec.ts';
import type { Side } from './edge.ts';

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export function boxOfSide({ ax, ay, bx, by }: Side): Box {
  return { minX: Math.min(ax, bx), minY: Math.min(ay, by), maxX: Math.max(ax, bx), maxY: Math.max(ay, by) };
}

/** True when the boxes touch, overlap, or come within `reachMm` of each other along both axes. */
export const boxesMeet = (a: Box, b: Box, reachMm: number): boolean =>
  a.minX <= b.maxX + reachMm && b.minX <= a.maxX + reachMm && a.minY <= b.maxY + reachMm && b.minY <= a.maxY + reachMm;

/** True when the box of a side touches or overlaps a box, or comes within `reachMm` of it along both axes. */
export const sideMeetsBox = ({ ax, ay, bx, by }: Side, box: Box, reachMm: number): boolean =>
  Math.min(ax, bx) <= box.maxX + reachMm &&
  Math.max(ax, bx) >= box.minX - reachMm &&
  Math.min(ay, by) <= box.maxY + reachMm &&
  Math.max(ay, by) >= box.minY - reachMm;

/** The smallest box around points; around none it is empty (min above max). */
export function boxAroundPoints(points: readonly Vec2[]): Box {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (const [x, y] of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

/** The smallest box around boxes; around none it is empty. */
export function boxAround(boxes: readonly Box[]): Box {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (const box of boxes) {
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  return { minX, minY, maxX, maxY };
}
