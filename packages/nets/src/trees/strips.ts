// Strips: the side faces of a solid in a row, as they stand around it, with one end face on each side of the row.
// What teachers draw for a prism, an antiprism, an octahedron.

import type { FaceTable } from '../unfold/faces.ts';
import { commonSide } from '../unfold/faces.ts';
import type { Joint, Tree } from '../unfold/unfold.ts';

/**
 * The faces of `walls` in a row, laid from the middle one outwards; each of `ends` hangs on the wall nearest to the middle
 * that it has a side in common with, and is a lid.
 */
export function strip(table: FaceTable, walls: readonly number[], ends: readonly number[]): Tree {
  const middle = Math.floor((walls.length - 1) / 2);
  const after = walls.slice(middle + 1).map((wall, k): Joint => [walls[middle + k] ?? wall, wall]);
  const before = walls.slice(0, middle).map((wall, k): Joint => [walls[k + 1] ?? wall, wall]);
  const hanging = ends.map((end) => hung(table, walls, middle, end));
  return { joints: [...before.reverse(), ...after, ...hanging], lids: ends };
}

/** The list begun at its entry `start`. */
export const begunAt = (list: readonly number[], start: number): readonly number[] => [
  ...list.slice(start),
  ...list.slice(0, start),
];

/** Whole numbers from `first` on. */
export const from = (first: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, k) => first + k);

function hung(table: FaceTable, walls: readonly number[], middle: number, end: number): Joint {
  const [nearest] = walls
    .map((wall, k) => ({ wall, off: Math.abs(k - middle) }))
    .filter(({ wall }) => commonSide(table, wall, end) !== undefined)
    .sort((a, b) => a.off - b.off);
  if (nearest === undefined) throw new RangeError(`face ${end} is no end of this strip`);
  return [nearest.wall, end];
}
