// The unknowns of a photograph as a row of numbers, and the camera that they stand for: a small turn of the first pose (3, rad), the
// move (3, mm), the logarithm of the focal length, k1, the shift of edges (px); then middle (2, mm) and turn (rad) of every
// page whose place is looked for.

import type { Vec3 } from '@cairnmark/geometry';
import { after } from '@cairnmark/geometry';
import type { Camera } from './camera.ts';
import { rotationBy } from './rotation-vector.ts';
import type { PagePlace } from './sheet.ts';

/** Unknowns of the camera itself: pose, focal length, k1. They come first. */
export const CAMERA_UNKNOWNS = 8;
/** The shift of edges comes next, then the pages. */
export const BLOOM = 8;
export const FIRST_PAGE = 9;
export const PAGE_UNKNOWNS = 3;

/** How far each is moved to see what it does: rad, mm, no unit, px. */
const CAMERA_STEPS: readonly number[] = [1e-5, 1e-5, 1e-5, 1e-2, 1e-2, 1e-2, 1e-5, 1e-5, 1e-3];
const PAGE_STEPS: readonly number[] = [1e-3, 1e-3, 1e-5];

export const stepsOf = (pages: number): number[] => [
  ...CAMERA_STEPS,
  ...Array.from({ length: pages }, () => PAGE_STEPS).flat(),
];

export function unknownsOf(start: Camera, bloomPx: number, pages: readonly PagePlace[]): number[] {
  return [
    ...[0, 0, 0],
    ...start.shiftMm,
    Math.log(start.focalPx),
    start.k1,
    bloomPx,
    ...pages.flatMap(({ middleMm, turnRad }) => [...middleMm, turnRad]),
  ];
}

/** The camera with these unknowns, turned from the pose of `start`. */
export function cameraWith(start: Camera, unknowns: ArrayLike<number>): Camera {
  const at = (k: number): number => unknowns[k] ?? 0;
  const turn: Vec3 = [at(0), at(1), at(2)];
  return {
    widthPx: start.widthPx,
    heightPx: start.heightPx,
    rotation: after(rotationBy(turn), start.rotation),
    shiftMm: [at(3), at(4), at(5)],
    focalPx: Math.exp(at(6)),
    k1: at(7),
  };
}

/** The place of the page number `index` among those looked for. */
export function placeWith(page: number, index: number, unknowns: ArrayLike<number>): PagePlace {
  const at = FIRST_PAGE + PAGE_UNKNOWNS * index;
  return { page, middleMm: [unknowns[at] ?? 0, unknowns[at + 1] ?? 0], turnRad: unknowns[at + 2] ?? 0 };
}

/** A fitted camera with one of its unknowns moved: what an uncertainty of the camera does to a result. */
export function nudged(camera: Camera, unknown: number, by: number): Camera {
  const unknowns = unknownsOf(camera, 0, []);
  unknowns[unknown] = (unknowns[unknown] ?? 0) + by;
  return cameraWith(camera, unknowns);
}

export const nudgeOf = (unknown: number): number => CAMERA_STEPS[unknown] ?? 0;
