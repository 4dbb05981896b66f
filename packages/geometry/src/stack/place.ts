// A known piece turned onto its resting face and moved over its spot: body, flat faces and outline in the frame of the
// table. Its lowest point comes to lie at a given height; nothing is rounded on the way.

import type { Outline } from '../kernel/outline.ts';
import type { Rotation } from '../kernel/rotation.ts';
import { after, rotate, turnAboutZ } from '../kernel/rotation.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add2, add3, flatten } from '../kernel/vec.ts';
import { moveBody } from '../solids/body.ts';
import type { FlatFace } from '../solids/types.ts';
import { bodyBox } from './body-box.ts';
import type { KnownPiece } from './check-layout.ts';
import type { PlacedPiece } from './types.ts';

/** The piece over its spot with its lowest point at `bottomMm` above the table. */
export function placePiece({ laid, solid, resting }: KnownPiece, index: number, bottomMm: number): PlacedPiece {
  const turn = turnAboutZ(laid.turnRad);
  const rotation = after(turn, resting.rotation);
  const centroid = rotate(rotation, solid.centroids.full);
  const own = bodyBox(moveBody(solid.body, rotation, [0, 0, 0]));
  const shift: Vec3 = [laid.xMm - centroid[0], laid.yMm - centroid[1], bottomMm - own.min[2]];
  return {
    index,
    kind: laid.kind,
    solid,
    resting,
    rotation,
    shift,
    bottomMm,
    topMm: bottomMm + (own.max[2] - own.min[2]),
    body: moveBody(solid.body, rotation, shift),
    flatFaces: solid.flatFaces.map((face) => moveFace(face, rotation, shift)),
    outline: moveOutline(resting.outline, turn, [laid.xMm, laid.yMm]),
  };
}

function moveFace(face: FlatFace, rotation: Rotation, shift: Vec3): FlatFace {
  const move = (p: Vec3): Vec3 => add3(rotate(rotation, p), shift);
  const normal = rotate(rotation, face.normal);
  return face.kind === 'polygon'
    ? { kind: 'polygon', normal, corners: face.corners.map(move) }
    : { kind: 'disc', normal, centre: move(face.centre), radiusMm: face.radiusMm };
}

/** Resting outlines are about the upright line through the centre of mass: that line goes to the piece's spot. */
function moveOutline(outline: Outline, turn: Rotation, spot: Vec2): Outline {
  const move = (p: Vec2): Vec2 => add2(flatten(rotate(turn, [p[0], p[1], 0])), spot);
  return outline.kind === 'polygon'
    ? { kind: 'polygon', points: outline.points.map(move) }
    : { kind: 'disc', centre: move(outline.centre), radiusMm: outline.radiusMm };
}
