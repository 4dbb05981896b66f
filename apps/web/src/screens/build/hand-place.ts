// Where the hand is, in the scene: the surface that it points at, or where one looks level at the build, a place across the
// view at the depth that the piece had. mm, frame of the table.

import type { PlacedPiece, Vec3 } from '@cairnmark/geometry';
import { bodyBox } from '@cairnmark/geometry';

export interface HandPlace {
  /** Of the axis of the piece in hand. */
  readonly xMm: number;
  readonly yMm: number;
  /** Height of the surface that it would come down on. */
  readonly surfaceMm: number;
  /** False where no piece is put: beside the drawing, or far out. */
  readonly isOnTable: boolean;
}

/** What the drawing tells of a place on the page; see `SceneView`. */
export interface Sight {
  readonly isLevel: boolean;
  nearest(clientX: number, clientY: number): { readonly place: readonly [number, number]; readonly isInside: boolean };
  pick(clientX: number, clientY: number): { readonly point: Vec3; readonly surfaceMm: number } | null;
  dragPlanePoint(clientX: number, clientY: number, through: Vec3): Vec3;
}

export interface Grip {
  /** From the axis and the lowest point of the piece to where it was taken hold of. */
  readonly by: Vec3;
  /** A point that the piece had before it was taken: it keeps its depth where one looks level. */
  readonly through: Vec3;
}

export function handPlace(
  sight: Sight,
  at: readonly [clientX: number, clientY: number],
  grip: Grip,
  others: readonly PlacedPiece[],
): HandPlace {
  const { place, isInside } = sight.nearest(...at);
  const hit = sight.isLevel ? null : sight.pick(...place);
  const point = hit?.point ?? sight.dragPlanePoint(...place, grip.through);
  const [xMm, yMm] = [point[0] - grip.by[0], point[1] - grip.by[1]];
  const isNear = Math.abs(xMm) <= TABLE_MM && Math.abs(yMm) <= TABLE_MM;
  return {
    xMm: within(xMm),
    yMm: within(yMm),
    surfaceMm: hit?.surfaceMm ?? surfaceUnder(others, xMm, yMm, Math.max(0, point[2] - grip.by[2])),
    isOnTable: isInside && isNear,
  };
}

/** mm from the middle. Further out nobody means the table. */
const TABLE_MM = 1500;

const within = (mm: number): number => Math.min(TABLE_MM, Math.max(-TABLE_MM, mm));

/** The highest top at or under a point; the table where there is none. */
function surfaceUnder(others: readonly PlacedPiece[], xMm: number, yMm: number, zMm: number): number {
  const under = others.filter(({ body, topMm }) => {
    const { min, max } = bodyBox(body);
    return topMm <= zMm && min[0] <= xMm && xMm <= max[0] && min[1] <= yMm && yMm <= max[1];
  });
  return Math.max(0, ...under.map(({ topMm }) => topMm));
}
