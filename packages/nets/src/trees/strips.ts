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
  const hanging = ends.map((end) => hung(table, walls, end));
  return { joints: [...row(walls), ...hanging], lids: ends };
}

/** The same row with the two ends on different walls: the first on the middle one, the second on each of the others. */
export function shiftedStrips(walls: readonly number[], [first, second]: readonly [number, number]): readonly Tree[] {
  const bearer = walls[middleOf(walls)] ?? -1;
  return walls
    .filter((wall) => wall !== bearer)
    .map((wall) => ({ joints: [...row(walls), [bearer, first], [wall, second]], lids: [first, second] }));
}

/** The list begun at its entry `start`. */
export const begunAt = (list: readonly number[], start: number): readonly number[] => [
  ...list.slice(start),
  ...list.slice(0, start),
];

/** Whole numbers from `first` on. */
export const from = (first: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, k) => first + k);

const middleOf = (walls: readonly number[]): number => Math.floor((walls.length - 1) / 2);

function row(walls: readonly number[]): readonly Joint[] {
  const middle = middleOf(walls);
  const after = walls.slice(middle + 1).map((wall, k): Joint => [walls[middle + k] ?? wall, wall]);
  const before = walls.slice(0, middle).map((wall, k): Joint => [walls[k + 1] ?? wall, wall]);
  return [...before.reverse(), ...after];
}

function hung(table: FaceTable, walls: readonly number[], end: number): Joint {
  const middle = middleOf(walls);
  const [nearest] = walls
    .map((wall, k) => ({ wall, off: Math.abs(k - middle) }))
    .filter(({ wall }) => commonSide(table, wall, end) !== undefined)
    .sort((a, b) => a.off - b.off);
  if (nearest === undefined) throw new RangeError(`face ${end} is no end of this strip`);
  return [nearest.wall, end];
}
