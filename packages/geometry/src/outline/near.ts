// Which boxes lie near which: a grid of cells about as large as the boxes, so that the cost of a spread-out build grows with
// its number of pieces.

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
  if (boxes.length < 2) return;
  const grid = gridOver(boxes, reachMm);
  const cells = new Array<number[] | undefined>(grid.columns * grid.rows);
  boxes.forEach((box, j) => {
    const [left, right] = [grid.column(box.minX), grid.column(box.maxX + reachMm)];
    const [low, high] = [grid.row(box.minY), grid.row(box.maxY + reachMm)];
    for (let row = low; row <= high; row += 1) {
      for (let column = left; column <= right; column += 1) {
        const key = row * grid.columns + column;
        const cell = cells[key];
        if (cell === undefined) {
          cells[key] = [j];
          continue;
        }
        for (const i of cell) {
          const other = boxes[i];
          if (other === undefined || !boxesMeet(box, other, reachMm)) continue;
          // A pair may share several cells; it is visited in the one of the corner of its common box.
          const isFirst =
            column === Math.max(left, grid.column(other.minX)) && row === Math.max(low, grid.row(other.minY));
          if (isFirst) visit(i, j);
        }
        cell.push(j);
      }
    }
  });
}

interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly column: (x: number) => number;
  readonly row: (y: number) => number;
}

/** Cells at least as large as the boxes are on average, and no more of them than boxes. */
function gridOver(boxes: readonly Box[], reachMm: number): Grid {
  const { minX, minY, maxX, maxY } = boxAround(boxes);
  let [width, height] = [reachMm, reachMm];
  for (const box of boxes) {
    width += (box.maxX - box.minX) / boxes.length;
    height += (box.maxY - box.minY) / boxes.length;
  }
  const most = Math.sqrt(boxes.length);
  const stepX = Math.max(width, (maxX - minX) / most, Number.MIN_VALUE);
  const stepY = Math.max(height, (maxY - minY) / most, Number.MIN_VALUE);
  const column = (x: number): number => Math.floor((x - minX) / stepX);
  const row = (y: number): number => Math.floor((y - minY) / stepY);
  return { columns: column(maxX + reachMm) + 1, rows: row(maxY + reachMm) + 1, column, row };
}
