// Two flat faces, or a face and the table: do they touch, and over what area? Both are drawn in the plane of the first
// as outlines (polygon or disc), where the area common to both is exact. mm, mm2.
// Faces touch where they look at each other and are nearer than a contact's width all over their common area.

import type { Box3 } from '../kernel/box.ts';
import { boxAround } from '../kernel/box.ts';
import type { Outline } from '../kernel/outline.ts';
import { CONTACT_MM, PARALLEL_RAD } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add3, cross3, dot3, length3, scale3, sub3, unit3 } from '../kernel/vec.ts';
import { outlineAreaMm2 } from '../outline/area.ts';
import { overlapAreaMm2 } from '../outline/overlap.ts';
import type { FlatFace } from '../solids/types.ts';
import { bodyBox } from './body-box.ts';

/** The area over which two faces touch; 0 when they do not look at each other or are too far apart. */
export function touchingAreaMm2(a: FlatFace, b: FlatFace): number {
  if (length3(add3(a.normal, b.normal)) > PARALLEL_RAD) return 0;
  const plane = planeOf(a);
  const [drawnA, drawnB] = [drawFace(a, plane), drawFace(b, plane)];
  return farthestGapMm(plane, b, commonCorners(drawnA, drawnB)) < CONTACT_MM ? overlapAreaMm2(drawnA, drawnB) : 0;
}

/** The area with which a face lies on the table. */
export function areaOnTableMm2(face: FlatFace): number {
  if (length3(add3(face.normal, TABLE_NORMAL)) > PARALLEL_RAD) return 0;
  const highestMm = faceBox(face).max[2];
  return highestMm < CONTACT_MM ? outlineAreaMm2(drawFace(face, planeOf(face))) : 0;
}

/** The smallest upright box around a face. */
export function faceBox(face: FlatFace): Box3 {
  return face.kind === 'polygon'
    ? boxAround(face.corners)
    : bodyBox([{ kind: 'disc', centre: face.centre, axis: face.normal, radiusMm: face.radiusMm }]);
}

const TABLE_NORMAL: Vec3 = [0, 0, 1];

/** A frame in the plane of a face: `across` and `up` are unit vectors square to each other and to `normal`. */
interface Plane {
  readonly origin: Vec3;
  readonly normal: Vec3;
  readonly across: Vec3;
  readonly up: Vec3;
}

function planeOf(face: FlatFace): Plane {
  const { normal } = face;
  const steepest: Vec3 = Math.abs(normal[2]) < 0.5 ? [0, 0, 1] : [1, 0, 0];
  const across = unit3(cross3(steepest, normal));
  return { origin: pointOn(face), normal, across, up: cross3(normal, across) };
}

function pointOn(face: FlatFace): Vec3 {
  if (face.kind === 'disc') return face.centre;
  const [corner] = face.corners;
  if (corner === undefined) throw new RangeError('a face without corners lies nowhere');
  return corner;
}

/** The face as an outline in the frame of the plane, counter-clockwise there whichever way the face looks. */
function drawFace(face: FlatFace, plane: Plane): Outline {
  const draw = (point: Vec3): Vec2 => {
    const from = sub3(point, plane.origin);
    return [dot3(from, plane.across), dot3(from, plane.up)];
  };
  if (face.kind === 'disc') return { kind: 'disc', centre: draw(face.centre), radiusMm: face.radiusMm };
  const points = face.corners.map(draw);
  return { kind: 'polygon', points: dot3(face.normal, plane.normal) > 0 ? points : points.reverse() };
}

/** The corners of the rectangle (in the plane's frame) common to the boxes of both outlines; none when they are apart. */
function commonCorners(a: Outline, b: Outline): readonly Vec2[] {
  const [boxA, boxB] = [outlineBox(a), outlineBox(b)];
  const [left, right] = [Math.max(boxA.min[0], boxB.min[0]), Math.min(boxA.max[0], boxB.max[0])];
  const [low, high] = [Math.max(boxA.min[1], boxB.min[1]), Math.min(boxA.max[1], boxB.max[1])];
  if (left > right || low > high) return [];
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

function outlineBox(outline: Outline): Box3 {
  if (outline.kind === 'polygon') return boxAround(outline.points.map(([x, y]): Vec3 => [x, y, 0]));
  const { centre, radiusMm } = outline;
  return bodyBox([{ kind: 'disc', centre: [centre[0], centre[1], 0], axis: [0, 0, 1], radiusMm }]);
}

/** How far face `b` is off the plane, at the farthest of the given places; infinite when there is no place. */
function farthestGapMm(plane: Plane, b: FlatFace, places: readonly Vec2[]): number {
  const onB = pointOn(b);
  const gapAt = ([x, y]: Vec2): number => {
    const place = add3(plane.origin, add3(scale3(plane.across, x), scale3(plane.up, y)));
    return Math.abs(dot3(b.normal, sub3(onB, place)) / dot3(b.normal, plane.normal));
  };
  return places.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...places.map(gapAt));
}
