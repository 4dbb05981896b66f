// A piece as the convex parts that the engine of the simulation collides. Own frame of the solid, mm.
//
// That engine looks at four corners of a face at most and keeps four points of a contact between two parts; a whole solid
// alone would often rest on less than it does. So the faces that lie level, on which pieces carry each other, get parts
// of their own besides, each a pyramid from a piece of the face to the middle of the solid.

import type { FlatFace, PlacedPiece, Solid, Vec3 } from '@cairnmark/geometry';
import { rotate } from '@cairnmark/geometry';
import { times } from '../dice.ts';

export interface Part {
  /**
   * What it meets. 'whole': every part of another piece. 'span': whole solids and other spans. 'wedge': whole solids only;
   * wedges lie side by side, and the inner sides of two sets of them would catch on each other.
   */
  readonly role: 'whole' | 'span' | 'wedge';
  readonly shape: Shape;
}

export type Shape =
  | { readonly kind: 'hull'; readonly points: readonly Vec3[] }
  /** Round about the upright axis of the own frame, standing on z = 0. */
  | { readonly kind: 'ball' | 'cylinder' | 'cone'; readonly radiusMm: number; readonly heightMm: number };

/** All parts of a piece; round ones lie over each other. */
export function partsOf({ solid, rotation }: PlacedPiece): readonly Part[] {
  const level = solid.flatFaces.filter(({ normal }) => Math.abs(rotate(rotation, normal)[2]) > LEVEL);
  return [
    { role: 'whole', shape: wholeOf(solid) },
    ...level.flatMap((face) => facePartsOf(face, solid.centroids.full)),
  ];
}

/** Cosine of 0.1 degrees: any face further from level than rounding is a slope. */
const LEVEL = 1 - 1.5e-6;

/** Corners that stand for a circle where no exact shape serves: they lie on it, and its sides reach 3.4 % less far. */
const RIM_CORNERS = 12;

function wholeOf({ id, sizes, body }: Solid): Shape {
  const { radius: radiusMm = 0, height: heightMm = 2 * radiusMm } = sizes;
  if (id === 'sphere') return { kind: 'ball', radiusMm, heightMm };
  if (id === 'cylinder' || id === 'cone') return { kind: id, radiusMm, heightMm };
  const points = body.flatMap((primitive): readonly Vec3[] => {
    if (primitive.kind === 'points') return primitive.points;
    if (primitive.kind === 'disc') return rimOf(primitive.centre, primitive.radiusMm);
    throw new RangeError(`no parts are known of a ${id}`);
  });
  return { kind: 'hull', points };
}

/**
 * A face of three or four corners as triangles about its middle. One of more corners as quadrangles right across it, two
 * opposite sides each, so that every side of the face is the side of one.
 */
function facePartsOf(face: FlatFace, middle: Vec3): readonly Part[] {
  const corners = face.kind === 'polygon' ? face.corners : rimOf(face.centre, face.radiusMm);
  const count = corners.length;
  const at = (k: number): Vec3 => corners[k % count]!;
  const part = (role: Part['role'], points: readonly Vec3[]): Part => ({
    role,
    shape: { kind: 'hull', points: [...points, middle] },
  });
  if (count <= 4) return corners.map((corner, k) => part('wedge', [meanOf(corners), corner, at(k + 1)]));
  const across = Math.floor(count / 2);
  return times(Math.ceil(count / 2), (k) => part('span', [at(k), at(k + 1), at(k + across), at(k + across + 1)]));
}

/** Corners on a level circle of the own frame. */
function rimOf([x, y, z]: Vec3, radiusMm: number): readonly Vec3[] {
  return times(RIM_CORNERS, (k): Vec3 => {
    const angle = (2 * Math.PI * k) / RIM_CORNERS;
    return [x + radiusMm * Math.cos(angle), y + radiusMm * Math.sin(angle), z];
  });
}

const meanOf = (points: readonly Vec3[]): Vec3 => {
  const along = (k: 0 | 1 | 2): number => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  return [along(0), along(1), along(2)];
};
