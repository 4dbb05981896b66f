// Which things lie near which: a sweep along the longer way, so that the cost of a spread-out build grows little faster
// than its number of pieces.

import type { Box } from './box.ts';
import { boxAround, boxesMeet } from './box.ts';

/** For each box the indices, rising, of the others that come within `reachMm` of it. */
export function nearBoxes(boxes: readonly Box[], reachMm: number): readonly (readonly number[])[] {
  const near: number[][] = boxes.map(() => []);
  forNearPairs(boxes, reachMm, (i, j) => {
    near[i]?.push(j);
    near[j]?.push(i);
  });
  for (const list of near) list.sort((a, b) => a - b);
  return near;
}

/** Visits every pair of boxes that come within `reachMm` of each other once, in no particular order. */
export function forNearPairs(boxes: readonly Box[], reachMm: number, visit: (i: number, j: number) => void): void {
  const around = boxAround(boxes);
  const alongX = around.maxX - around.minX >= around.maxY - around.minY;
  const rising = boxes
    .map((box, index) => ({
      box,
      index,
      start: alongX ? box.minX : box.minY,
      end: (alongX ? box.maxX : box.maxY) + reachMm,
    }))
    .sort((a, b) => a.start - b.start);
  let open: typeof rising = [];
  for (const next of rising) {
    open = open.filter((one) => one.end >= next.start);
    for (const one of open) if (boxesMeet(one.box, next.box, reachMm)) visit(one.index, next.index);
    open.push(next);
  }
}
