// A piece in each way up, as the search for the best build takes it: heights, its centre of mass, and how far that lies
// inside the faces on which it stands and carries. mm.

import type {
  BaseDefinition,
  FlatFace,
  Outline,
  OwnMass,
  PlacedPiece,
  Resting,
  Solid,
  Vec3,
} from '@cairnmark/geometry';
import {
  add3,
  flatten,
  hullOf,
  LEVEL_NORMAL,
  leastWidthMm,
  nearestEdgeOf,
  outlineAreaMm2,
  placePiece,
  RIM_CORNERS,
  rotate,
} from '@cairnmark/geometry';
import type { BestKind, WayUp } from '@cairnmark/scoring';

/** Every way in which it rests on a face. `base`: what counts as the ground that it takes. */
export function waysUp(solid: Solid, mass: OwnMass, base: BaseDefinition): readonly WayUp[] {
  return solid.restings.flatMap((resting): WayUp[] => {
    const placed = putDown(solid, resting);
    const under = underOf(placed);
    if (under === undefined) return [];
    const centre = centreOf(placed, mass);
    const top = placed.flatFaces.find(({ normal }) => normal[2] >= LEVEL_NORMAL);
    const [topMm, underMm] = [top === undefined ? 0 : Math.max(0, insideMm(top, centre)), insideMm(under, centre)];
    const ground = base === 'outline-of-pieces-on-table' ? placed.outline : outlineOf(under);
    return [
      {
        id: resting.id,
        heightMm: placed.topMm,
        centreHeightMm: centre[2],
        topInsideMm: topMm,
        bottomInsideMm: underMm,
        topClippedMm: clippedMm(top, topMm),
        bottomClippedMm: clippedMm(under, underMm),
        baseMm2: outlineAreaMm2(ground),
        baseWidthMm: leastWidthMm(hullOf([ground])),
      },
    ];
  });
}

/**
 * Of all ways in which it can lie at all: the greatest height, that of those with a face that no piece of the given friction
 * slides off, and whether it lies on no face in one of them.
 */
export function lyingOf(solid: Solid, friction: number): Pick<BestKind, 'mostHeightMm' | 'aloneHeightMm' | 'rolls'> {
  const all = solid.restings.map((resting) => putDown(solid, resting));
  const gentle = 1 / Math.hypot(1, friction);
  const carrying = all.filter(({ flatFaces }) => flatFaces.some(({ normal }) => normal[2] >= gentle * LEVEL_NORMAL));
  return {
    mostHeightMm: Math.max(...all.map(({ topMm }) => topMm)),
    aloneHeightMm: Math.max(0, ...carrying.map(({ topMm }) => topMm)),
    rolls: all.some((placed) => underOf(placed) === undefined),
  };
}

const underOf = ({ flatFaces }: PlacedPiece): FlatFace | undefined =>
  flatFaces.find(({ normal }) => normal[2] <= -LEVEL_NORMAL);

/** Where its centre of mass stands beside the spot at which a layout puts it: nowhere for a full solid. */
export function offCentre(solid: Solid, mass: OwnMass, resting: Resting): Vec3 {
  return centreOf(putDown(solid, resting), mass);
}

/** On the table, over the middle of the layout. */
const putDown = (solid: Solid, resting: Resting): PlacedPiece =>
  placePiece({ laid: { kind: '', resting: resting.id, xMm: 0, yMm: 0, turnRad: 0 }, solid, resting }, 0, 0);

const centreOf = ({ rotation, shift }: PlacedPiece, { centre }: OwnMass): Vec3 => add3(rotate(rotation, centre), shift);

/** From the point straight over or under it to the nearest edge of a level face; negative outside. */
function insideMm(face: FlatFace, at: Vec3): number {
  const points = face.kind === 'disc' ? [face.centre] : facingUp(face);
  const disc = face.kind === 'disc' ? { centre: face.centre, radiusMm: face.radiusMm } : null;
  return nearestEdgeOf({ points, disc }, flatten(at)).insideMm;
}

/** Where a disc lies partly over an edge, a contact has the corners that stand for its rim. */
const clippedMm = (face: FlatFace | undefined, inside: number): number =>
  face?.kind === 'disc' ? inside * Math.cos(Math.PI / RIM_CORNERS) : inside;

/** Corners of a face run counter-clockwise seen from outside: of an underside, from below. */
const facingUp = ({ corners, normal }: FlatFace & { readonly kind: 'polygon' }): readonly Vec3[] =>
  normal[2] < 0 ? [...corners].reverse() : corners;

const outlineOf = (face: FlatFace): Outline =>
  face.kind === 'disc'
    ? { kind: 'disc', centre: flatten(face.centre), radiusMm: face.radiusMm }
    : { kind: 'polygon', points: facingUp(face).map(flatten) };
