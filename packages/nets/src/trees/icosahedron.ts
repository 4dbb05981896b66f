// Icosahedron: a belt of ten triangles, five more on either side of it. The belt runs round the axis through two opposite
// corners; it is found by walking from face to face.

import type { FaceTable } from '../unfold/faces.ts';
import { across } from '../unfold/faces.ts';
import type { Joint } from '../unfold/unfold.ts';
import { strip } from './strips.ts';
import type { NetRecipe } from './types.ts';

export const icosahedron: NetRecipe = {
  kind: 'faces',
  usual(table) {
    const cap = aroundCorner(table, 0);
    const belt = cap.flatMap((face): readonly number[] => {
      const near = across(table, face, oppositeSide(table, face, 0));
      return [near, nextInBelt(table, near, face)];
    });
    const hung = belt.map((face, k): Joint => [face, k % 2 === 0 ? (cap[k / 2] ?? 0) : beyond(table, belt, k)]);
    const level = hung[4];
    return [{ joints: [...strip(table, belt, []).joints, ...hung], ...(level === undefined ? {} : { level }) }];
  },
};

/** The five faces at a corner, counter-clockwise on the sheet. */
function aroundCorner(table: FaceTable, corner: number): readonly number[] {
  const found: number[] = [];
  let face = table.faces.findIndex(({ corners }) => corners.includes(corner));
  while (!found.includes(face)) {
    found.push(face);
    face = across(table, face, sideInto(table, face, corner));
  }
  return found;
}

/** The side of a face that ends at `corner`. */
function sideInto({ faces }: FaceTable, face: number, corner: number): number {
  const corners = faces[face]?.corners ?? [];
  return (corners.indexOf(corner) + corners.length - 1) % corners.length;
}

/** The side of a triangle that does not touch `corner`. */
const oppositeSide = (table: FaceTable, face: number, corner: number): number =>
  ((table.faces[face]?.corners ?? []).indexOf(corner) + 1) % 3;

/** The neighbour of `near` in the belt, on the side before the one it has in common with the cap. */
function nextInBelt(table: FaceTable, near: number, cap: number): number {
  const side = [0, 1, 2].find((at) => across(table, near, at) === cap) ?? 0;
  return across(table, near, (side + 2) % 3);
}

/** The neighbour of a face of the belt that is not in the belt. */
function beyond(table: FaceTable, belt: readonly number[], k: number): number {
  const face = belt[k] ?? 0;
  return [0, 1, 2].map((at) => across(table, face, at)).find((other) => !belt.includes(other)) ?? 0;
}
