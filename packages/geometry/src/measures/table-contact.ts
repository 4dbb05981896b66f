// Where a piece in its final place touches the table: flat faces that lie on it, and the points and line ends that
// touch it without a face. Frame of the table (z = 0), mm.

import type { Outline } from '../kernel/outline.ts';
import { CONTACT_MM, PARALLEL_RAD } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { flatten } from '../kernel/vec.ts';
import type { Primitive } from '../solids/body.ts';
import { supportPoint } from '../solids/body.ts';
import type { FlatFace } from '../solids/types.ts';
import type { PlacedPiece } from '../stack/types.ts';

/** The flat faces that lie on the table, as outlines. None for a ball, or for a cylinder on its side. */
export function patchesOnTable(piece: PlacedPiece): readonly Outline[] {
  return piece.flatFaces.filter(liesOnTable).map(outlineOfFace);
}

/**
 * The points by which the piece touches the table, as outlines of no size: corners, ends of lines, the lowest point of
 * what is round. A hull over them is the hull of the contact.
 */
export function pointsOnTable(piece: PlacedPiece): readonly Outline[] {
  return piece.body
    .flatMap(lowestPoints)
    .filter((point) => point[2] <= CONTACT_MM)
    .map((point) => ({ kind: 'polygon', points: [flatten(point)] }));
}

function liesOnTable(face: FlatFace): boolean {
  return face.normal[2] <= -Math.cos(PARALLEL_RAD) && lowestOf(face) <= CONTACT_MM;
}

function lowestOf(face: FlatFace): number {
  return face.kind === 'disc' ? face.centre[2] : Math.min(...face.corners.map((corner) => corner[2]));
}

/** Corners run counter-clockwise seen from outside, here from below; seen from above they are turned round. */
function outlineOfFace(face: FlatFace): Outline {
  if (face.kind === 'disc') return { kind: 'disc', centre: flatten(face.centre), radiusMm: face.radiusMm };
  const points: readonly Vec2[] = face.corners.map(flatten).reverse();
  return { kind: 'polygon', points };
}

function lowestPoints(primitive: Primitive): readonly Vec3[] {
  return primitive.kind === 'points' ? primitive.points : [supportPoint([primitive], [0, 0, -1])];
}
