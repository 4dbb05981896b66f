// The camera of one photograph: from millimetres on the table to pixels and back. Pinhole with one term of radial distortion
// (Zhang, A flexible new technique for camera calibration, 2000; Hartley and Zisserman, Multiple view geometry, 6.1 and 7.4).
// Frames: table mm, x right, y away, z up; camera x right, y down, z forward; picture px, x right, y down.

import type { Rotation, Vec2, Vec3 } from '@cairnmark/geometry';
import { rotate } from '@cairnmark/geometry';
import { distort, undistort } from './lens.ts';

export interface Camera {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focalPx: number;
  /** No unit: a point at r focal lengths from the middle is seen at r (1 + k1 r^2). */
  readonly k1: number;
  /** From the table's frame to the camera's: turned by `rotation`, then moved by `shiftMm`. */
  readonly rotation: Rotation;
  readonly shiftMm: Vec3;
}

/** A line of sight in the table's frame: from the lens in a direction of length 1. */
export interface Ray {
  readonly from: Vec3;
  readonly along: Vec3;
}

/** Where a point of space shows, px; null when it is behind the camera. */
export function imagePoint(camera: Camera, point: Vec3): Vec2 | null {
  const turned = rotate(camera.rotation, point);
  const depth = turned[2] + camera.shiftMm[2];
  if (!(depth > 0)) return null;
  const [x, y] = distort(camera.k1, [(turned[0] + camera.shiftMm[0]) / depth, (turned[1] + camera.shiftMm[1]) / depth]);
  return [camera.widthPx / 2 + camera.focalPx * x, camera.heightPx / 2 + camera.focalPx * y];
}

/** The line of sight of a pixel; null where the lens model bends back on itself, which no pixel of a fitted camera does. */
export function rayOf(camera: Camera, [u, v]: Vec2): Ray | null {
  const seen: Vec2 = [(u - camera.widthPx / 2) / camera.focalPx, (v - camera.heightPx / 2) / camera.focalPx];
  const flat = undistort(camera.k1, seen);
  if (flat === null) return null;
  const back = transposed(camera.rotation);
  const length = Math.hypot(flat[0], flat[1], 1);
  const along = rotate(back, [flat[0] / length, flat[1] / length, 1 / length]);
  return { from: positionOf(camera), along };
}

/** Where the line of sight of a pixel meets the level plane `zMm` above the table; null when it does not, ahead of the camera. */
export function planePoint(camera: Camera, pixel: Vec2, zMm: number): Vec2 | null {
  const ray = rayOf(camera, pixel);
  if (ray === null) return null;
  const way = (zMm - ray.from[2]) / ray.along[2];
  if (!(way > 0 && Number.isFinite(way))) return null;
  return [ray.from[0] + way * ray.along[0], ray.from[1] + way * ray.along[1]];
}

/** Where the lens is, in the table's frame, mm. */
export function positionOf({ rotation, shiftMm }: Camera): Vec3 {
  const [x, y, z] = rotate(transposed(rotation), shiftMm);
  return [-x, -y, -z];
}

/** How far the camera looks off straight down, rad. */
export const tiltOf = ({ rotation }: Camera): number => Math.acos(Math.min(1, Math.max(-1, -rotation[8])));

export const transposed = (r: Rotation): Rotation => [r[0], r[3], r[6], r[1], r[4], r[7], r[2], r[5], r[8]];
