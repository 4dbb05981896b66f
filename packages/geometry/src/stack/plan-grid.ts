// Which pieces are near enough in plan to be asked about: a uniform grid whose cells are as wide as the widest piece,
// each piece in the one cell that holds its box's centre, so that neighbours are within one cell. Spread-out builds
// then cost a near-constant number of looks a piece.

import type { Box3 } from '../kernel/box.ts';

/**
 * For the piece of a given index: the earlier pieces whose boxes, seen from above, come within `reachMm` of its own,
 * the latest first.
 */
export function earlierNeighbours(boxes: readonly Box3[], reachMm: number): (index: number) => readonly number[] {
  const cellMm = boxes.reduce((widest, box) => Math.max(widest, widthOf(box)), 0) + reachMm;
  const cells = new Map<string, number[]>();
  boxes.forEach((box, index) => {
    const [column, row] = cellOf(box, cellMm);
    const key = cellKey(column, row);
    const cell = cells.get(key);
    if (cell === undefined) cells.set(key, [index]);
    else cell.push(index);
  });
  return (index) => {
    const box = boxes[index];
    if (box === undefined) return [];
    const [column, row] = cellOf(box, cellMm);
    const found: number[] = [];
    for (const key of cellsAround(column, row)) {
      for (const other of cells.get(key) ?? []) {
        if (other >= index) break;
        const otherBox = boxes[other];
        if (otherBox !== undefined && meetInPlan(box, otherBox, reachMm)) found.push(other);
      }
    }
    return found.sort((a, b) => b - a);
  };
}

const widthOf = ({ min, max }: Box3): number => Math.max(max[0] - min[0], max[1] - min[1]);

const cellOf = ({ min, max }: Box3, cellMm: number): readonly [column: number, row: number] => [
  Math.floor((min[0] + max[0]) / 2 / cellMm),
  Math.floor((min[1] + max[1]) / 2 / cellMm),
];

const cellKey = (column: number, row: number): string => `${column} ${row}`;

function* cellsAround(column: number, row: number): Generator<string> {
  for (const dx of [-1, 0, 1]) for (const dy of [-1, 0, 1]) yield cellKey(column + dx, row + dy);
}

/** True when two boxes, seen from above, come within `reachMm` of each other. */
export const meetInPlan = (a: Box3, b: Box3, reachMm: number): boolean =>
  a.min[0] <= b.max[0] + reachMm &&
  b.min[0] <= a.max[0] + reachMm &&
  a.min[1] <= b.max[1] + reachMm &&
  b.min[1] <= a.max[1] + reachMm;
