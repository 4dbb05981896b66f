// Frustums of pyramids: the sides around the base like a star, the top on one of them. From five sides on also a row of
// sides with both ends on the middle one, where that needs the smaller page; to four only on a page too small for the
// star. Open at the base it is that row. Faces: 0 the base, 1 the top, then the sides from the front; over a rectangle the
// top hangs on the back side or on the right one.

import type { FaceTable } from '../unfold/faces.ts';
import type { Joint, Tree } from '../unfold/unfold.ts';
import { fanHasRoom } from './pyramids.ts';
import { from, strip } from './strips.ts';
import type { NetRecipe } from './types.ts';

export const rectangularFrustum: NetRecipe = {
  kind: 'faces',
  usual: (table) => [star(table, 4), star(table, 3)],
  spare: rows,
  open: openRow,
};

export const regularFrustum: NetRecipe = {
  kind: 'faces',
  usual(table) {
    const sides = table.faces.length - 2;
    return [star(table, 2 + Math.floor(sides / 2)), ...(sides > 4 ? rows(table) : [])];
  },
  spare: (table) => (table.faces.length - 2 > 4 ? [] : rows(table)),
  open: openRow,
};

function rows(table: FaceTable): readonly Tree[] {
  const sides = from(2, table.faces.length - 2);
  return fanHasRoom(table, sides) ? [strip(table, sides, [0, 1])] : [];
}

function openRow(table: FaceTable): readonly Tree[] {
  return [strip(table, from(2, table.faces.length - 2), [1])];
}

function star({ faces }: FaceTable, bearer: number): Tree {
  const sides = from(2, faces.length - 2);
  return { joints: [...sides.map((side): Joint => [0, side]), [bearer, 1]], lids: [1] };
}
