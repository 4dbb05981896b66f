// Any placed piece as a flat drawing: its outline, its flat faces that are in sight, and a blend where it is curved. It works
// from faces and the outline of the body alone, so a new solid needs no art. mm, x right, y down as on a page.

import type { Basis, Body, FlatFace, PlacedPiece, Vec2, Vec3 } from '@cairnmark/geometry';
import { add3, cross3, dot3, length3, rimOf, rotate, scale3, silhouetteOf, unit3 } from '@cairnmark/geometry';
import type { Tone } from './tone.ts';
import { toneOf } from './tone.ts';
import type { View } from './view.ts';
import { basisOf, flatIn } from './view.ts';

export interface DrawnFace {
  readonly ring: readonly Vec2[];
  readonly tone: Tone;
}

export interface BlendStop {
  /** From 0 to 1 along the blend. */
  readonly at: number;
  readonly tone: Tone;
}

/** How a curved surface goes from light to dark: across the drawing from one side to the other, or round about a light spot. */
export type Blend =
  | { readonly kind: 'sideways'; readonly from: Vec2; readonly to: Vec2; readonly stops: readonly BlendStop[] }
  | { readonly kind: 'round'; readonly centre: Vec2; readonly radiusMm: number; readonly stops: readonly BlendStop[] };

export interface SolidDrawing {
  readonly outline: readonly Vec2[];
  readonly faces: readonly DrawnFace[];
  /** null: flat faces cover the outline. */
  readonly blend: Blend | null;
}

/** What is drawn of a piece; a placed piece of a stack has it all. */
export type Drawable = Pick<PlacedPiece, 'body' | 'flatFaces' | 'rotation' | 'solid'>;

export function drawingOf(piece: Drawable, view: View): SolidDrawing {
  const basis = basisOf(view);
  const outline = silhouetteOf(piece.body, basis).map((point) => onPage(basis, point));
  const faces = piece.flatFaces
    .filter(({ normal }) => dot3(normal, basis.away) < -EDGE_ON)
    .map((face): DrawnFace => ({ ring: drawnRim(face, basis), tone: toneOf(face.normal, view) }));
  return { outline, faces, blend: blendOf(piece, view, basis, outline) };
}

/** No unit: the cosine up to which a face is seen edge on. */
const EDGE_ON = 1e-6;

const onPage = (basis: Basis, point: Vec3): Vec2 => {
  const [x, y] = flatIn(basis, point);
  return [x, -y];
};

const drawnRim = (face: FlatFace, basis: Basis): readonly Vec2[] => rimOf(face).map((point) => onPage(basis, point));

function blendOf(
  { body, rotation, solid }: Drawable,
  view: View,
  basis: Basis,
  outline: readonly Vec2[],
): Blend | null {
  const [curved] = solid.curvedSurfaces;
  if (curved === undefined) return null;
  // What no flat paper covers is a ball or a part of one.
  if (curved.net === 'none') return roundBlend(body, basis);
  const axis = rotate(rotation, [0, 0, 1]);
  const square = cross3(basis.away, axis);
  // Looked at along its axis it shows a disc, or a cone from its tip: then the blend runs from left to right.
  const aside = length3(square) > EDGE_ON ? unit3(square) : basis.right;
  return sidewaysBlend(dot3(aside, basis.right) < 0 ? scale3(aside, -1) : aside, view, basis, outline);
}

/** From one limb over the side that faces the viewer to the other; `aside` is a unit vector square to the view. */
function sidewaysBlend(aside: Vec3, view: View, basis: Basis, outline: readonly Vec2[]): Blend {
  const across = onPage(basis, aside);
  const places = outline.map(([x, y]) => x * across[0] + y * across[1]);
  const [least, most] = [Math.min(...places), Math.max(...places)];
  const facing = scale3(basis.away, -1);
  const stops = [0, 0.15, 0.35, 0.6, 0.85, 1].map((at): BlendStop => {
    const sine = 2 * at - 1;
    const normal = add3(scale3(aside, sine), scale3(facing, Math.sqrt(1 - sine * sine)));
    return { at, tone: toneOf(normal, view) };
  });
  const spot = (along: number): Vec2 => [across[0] * along, across[1] * along];
  return { kind: 'sideways', from: spot(least), to: spot(most), stops };
}

/** Of a ball or a half: about a spot at the upper left, the light of it in the paper's white. */
function roundBlend(body: Body, basis: Basis): Blend | null {
  for (const primitive of body) {
    if (primitive.kind !== 'ball' && primitive.kind !== 'half-ball') continue;
    const [x, y] = onPage(basis, primitive.centre);
    const r = primitive.radiusMm;
    return { kind: 'round', centre: [x - 0.28 * r, y - 0.4 * r], radiusMm: 1.6 * r, stops: ROUND_STOPS };
  }
  return null;
}

const ROUND_STOPS: readonly BlendStop[] = [
  { at: 0, tone: 0.3 },
  { at: 0.5, tone: 0 },
  { at: 1, tone: -0.3 },
];
