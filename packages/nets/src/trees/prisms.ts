// Prisms: the sides in a strip, both bases on a middle side; on a page too small for that, the bases on different sides.
// Faces: 0 the base, 1 the top, then the sides from the front.

import type { FaceTable } from '../unfold/faces.ts';
import { begunAt, from, shiftedStrips, strip } from './strips.ts';
import type { NetRecipe } from './types.ts';

/** All sides alike. */
export const regularPrism: NetRecipe = {
  kind: 'faces',
  usual: (table) => [strip(table, sidesOf(table), [0, 1])],
  spare: (table) => shiftedStrips(sidesOf(table), [0, 1]),
};

/** The sides differ: any of them may be the middle one. */
export const triangularPrism: NetRecipe = {
  kind: 'faces',
  usual: (table) => from(0, 3).map((start) => strip(table, begunAt(sidesOf(table), start), [0, 1])),
  spare: (table) => from(0, 3).flatMap((start) => shiftedStrips(begunAt(sidesOf(table), start), [0, 1])),
};

/** A box has three pairs of ends: 0 and 1 below and above, 2 and 4 front and back, 3 and 5 right and left. */
export const rectangularPrism: NetRecipe = {
  kind: 'faces',
  usual: (table) => AXES.flatMap(({ walls, ends }) => [0, 1].map((start) => strip(table, begunAt(walls, start), ends))),
  spare: () => AXES.flatMap(({ walls, ends }) => [0, 1].flatMap((start) => shiftedStrips(begunAt(walls, start), ends))),
};

const AXES: readonly { readonly walls: readonly number[]; readonly ends: readonly [number, number] }[] = [
  { walls: [2, 3, 4, 5], ends: [0, 1] },
  { walls: [0, 3, 1, 5], ends: [2, 4] },
  { walls: [0, 2, 1, 4], ends: [3, 5] },
];

const sidesOf = ({ faces }: FaceTable): readonly number[] => from(2, faces.length - 2);
