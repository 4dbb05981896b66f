// The flat faces of a solid as they lie on the sheet, each for itself, with their common edges. mm.
// The drawing shows the inside of the solid: a face is seen against its outward normal, so its corners, counter-clockwise
// from outside, run clockwise on the sheet, and are taken here in the opposite order.

import type { FlatFace, Solid, Vec2, Vec3 } from '@cairnmark/geometry';
import { add3, cross3, dot3, scale3, sub3, unit3 } from '@cairnmark/geometry';

/** Where a flat figure is in space: the point (x, y) of the figure lies at origin + x times `x` + y times `y`. */
export interface Placed {
  readonly origin: Vec3;
  readonly x: Vec3;
  readonly y: Vec3;
}

export interface SheetFace {
  /** Numbers of its corners, counter-clockwise on the sheet; side k runs from corner k to the next. */
  readonly corners: readonly number[];
  /** The same corners as points of the face's own figure, whose y points up where the face stands. */
  readonly ring: readonly Vec2[];
  readonly placed: Placed;
}

/** Every flat face by its number in the solid. A disc has no corners. */
export interface FaceTable {
  readonly faces: readonly SheetFace[];
}

export function faceTable(solid: Solid): FaceTable {
  const numbers = new Map<string, number>();
  const numberOf = (corner: Vec3): number => {
    const key = corner.join(' ');
    const number = numbers.get(key) ?? numbers.size;
    numbers.set(key, number);
    return number;
  };
  return { faces: solid.flatFaces.map((face) => sheetFace(face, numberOf)) };
}

/** The side of `face` that is also a side of `other`, by its number in `face`; undefined when they have none in common. */
export function commonSide({ faces }: FaceTable, face: number, other: number): number | undefined {
  const theirs = faces[other]?.corners ?? [];
  const own = faces[face]?.corners ?? [];
  const at = own.findIndex((corner, k) => sideFrom(theirs, own[(k + 1) % own.length] ?? -1, corner) >= 0);
  return at < 0 ? undefined : at;
}

/** The number of the side that runs from corner `from` to corner `to`, or -1. */
export const sideFrom = (corners: readonly number[], from: number, to: number): number =>
  corners.findIndex((corner, k) => corner === from && corners[(k + 1) % corners.length] === to);

/** The face on the other side of side `at`. */
export function across({ faces }: FaceTable, face: number, at: number): number {
  const own = faces[face]?.corners ?? [];
  const [from, to] = [own[at] ?? -1, own[(at + 1) % own.length] ?? -1];
  return faces.findIndex(({ corners }) => sideFrom(corners, to, from) >= 0);
}

export const inSpace = ({ origin, x, y }: Placed, point: Vec2): Vec3 =>
  add3(origin, add3(scale3(x, point[0]), scale3(y, point[1])));

function sheetFace(face: FlatFace, numberOf: (corner: Vec3) => number): SheetFace {
  if (face.kind === 'disc') return { corners: [], ring: [], placed: seenFromInside(face.normal, face.centre) };
  const corners = [...face.corners].reverse();
  const placed = seenFromInside(face.normal, corners[0] ?? [0, 0, 0]);
  return { corners: corners.map(numberOf), ring: corners.map((corner) => onFigure(placed, corner)), placed };
}

/** Up on the sheet is up in space, and on a level face away from the viewer. */
function seenFromInside(normal: Vec3, origin: Vec3): Placed {
  const up: Vec3 = Math.abs(normal[2]) > NEARLY_LEVEL ? [0, 1, 0] : [0, 0, 1];
  const x = unit3(cross3(normal, up));
  return { origin, x, y: cross3(x, normal) };
}

/** Cosine of the angle to the upright: one degree. It only chooses how a face is turned on the sheet. */
const NEARLY_LEVEL = 0.9998;

function onFigure({ origin, x, y }: Placed, corner: Vec3): Vec2 {
  const from = sub3(corner, origin);
  return [dot3(from, x), dot3(from, y)];
}
