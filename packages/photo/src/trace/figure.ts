// What of a listed solid is tapped in a photo from above: the top face of a prism or a cylinder, the base of a pyramid or a cone,
// the two long sides of a cylinder that lies, the rim of a ball. Frame: mm, about the upright line through its centre of mass,
// before any turn, the lowest point at z = 0.

import type { FlatFace, PlacedPiece, Primitive, Resting, Solid, Vec3 } from '@cairnmark/geometry';
import { placePiece } from '@cairnmark/geometry';
import { LEVEL_NORMAL, MOST_CORNERS, SAME_CORNER_MM } from '../tolerance.ts';

export type Figure =
  /** Corners in order, counter-clockwise seen from above; not all need be at one height. */
  | { readonly kind: 'corners'; readonly corners: readonly Vec3[] }
  | { readonly kind: 'disc'; readonly centre: Vec3; readonly radiusMm: number }
  | { readonly kind: 'ball'; readonly centre: Vec3; readonly radiusMm: number }
  /** A cylinder that lies, its axis along y. */
  | { readonly kind: 'log'; readonly centre: Vec3; readonly radiusMm: number; readonly halfLengthMm: number };

/**
 * Null where nothing about the piece, lying this way, can be tapped: a cone on its side. `by` 'base' asks for the face that it stands
 * on, for a piece whose top is hidden by what lies on it.
 */
export function figureOf(solid: Solid, resting: Resting, by?: 'base'): Figure | null {
  const laid = { kind: solid.id, resting: resting.id, xMm: 0, yMm: 0, turnRad: 0 };
  const piece = placePiece({ laid, solid, resting }, 0, 0);
  if (by === 'base') return bottomFace(piece);
  return topFace(piece) ?? ball(piece) ?? log(piece) ?? base(piece) ?? corners(piece);
}

function topFace({ flatFaces }: PlacedPiece): Figure | null {
  const top = flatFaces.find(({ normal }) => normal[2] > LEVEL_NORMAL);
  return top === undefined ? null : rimOf(top);
}

/** The face it stands on, where nothing of the piece reaches beyond it. */
function base(piece: PlacedPiece): Figure | null {
  const { outline } = piece;
  const rim = bottomFace(piece);
  if (rim?.kind === 'disc') return outline.kind === 'disc' && outline.radiusMm <= rim.radiusMm ? rim : null;
  const asWide = rim?.kind === 'corners' && outline.kind === 'polygon' && outline.points.length === rim.corners.length;
  return asWide ? rim : null;
}

function bottomFace({ flatFaces }: PlacedPiece): Figure | null {
  const down = flatFaces.find(({ normal }) => normal[2] < -LEVEL_NORMAL);
  if (down === undefined) return null;
  // Seen from above, the corners of a face that looks down run the other way.
  return rimOf(down.kind === 'disc' ? down : { ...down, corners: [...down.corners].reverse() });
}

const rimOf = (face: FlatFace): Figure =>
  face.kind === 'disc'
    ? { kind: 'disc', centre: face.centre, radiusMm: face.radiusMm }
    : { kind: 'corners', corners: face.corners };

function ball({ body }: PlacedPiece): Figure | null {
  const [only] = body;
  return body.length === 1 && only?.kind === 'ball'
    ? { kind: 'ball', centre: only.centre, radiusMm: only.radiusMm }
    : null;
}

function log({ body }: PlacedPiece): Figure | null {
  const [first, second] = body;
  if (body.length !== 2 || !isDisc(first) || !isDisc(second)) return null;
  if (Math.abs(first.axis[2]) > 1 - LEVEL_NORMAL || first.radiusMm !== second.radiusMm) return null;
  const [dx, dy] = [second.centre[0] - first.centre[0], second.centre[1] - first.centre[1]];
  const centre: Vec3 = [0, 0, first.centre[2]];
  // Conventions of the catalogue: on its side, the own axis points away from the viewer.
  return Math.abs(dx) > SAME_CORNER_MM
    ? null
    : { kind: 'log', centre, radiusMm: first.radiusMm, halfLengthMm: Math.abs(dy) / 2 };
}

const isDisc = (primitive: Primitive | undefined): primitive is Extract<Primitive, { kind: 'disc' }> =>
  primitive?.kind === 'disc';

/** Corners of the outline, each at the height of the corner of the body that casts it. */
function corners({ body, outline }: PlacedPiece): Figure | null {
  if (outline.kind !== 'polygon' || outline.points.length > MOST_CORNERS) return null;
  const points = body.flatMap((primitive) => (primitive.kind === 'points' ? primitive.points : []));
  const found = outline.points.flatMap(([x, y]) => {
    const over = points.filter((point) => Math.hypot(point[0] - x, point[1] - y) <= SAME_CORNER_MM);
    return over.sort((a, b) => b[2] - a[2]).slice(0, 1);
  });
  return found.length === outline.points.length ? { kind: 'corners', corners: found } : null;
}
