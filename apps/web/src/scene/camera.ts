// The camera of the scene as plain numbers: a parallel view, a scale, and what lies in the middle of the canvas. Places on
// the canvas are in px from its upper left corner, places in the scene in mm in the frame of the table.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import { add3, dot3, scale3 } from '@cairnmark/geometry';
import type { View } from '../drawing/view.ts';
import { basisOf, flatIn } from '../drawing/view.ts';

export interface Size {
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface Camera extends Size {
  readonly view: View;
  readonly pxPerMm: number;
  /** The point of the view plane that lies in the middle of the canvas, mm to the right and up. */
  readonly centre: Vec2;
}

export interface Ray {
  readonly origin: Vec3;
  /** Unit vector away from the viewer. */
  readonly direction: Vec3;
}

export function toCanvas({ view, pxPerMm, centre, widthPx, heightPx }: Camera, point: Vec3): Vec2 {
  const [x, y] = flatIn(basisOf(view), point);
  return [widthPx / 2 + (x - centre[0]) * pxPerMm, heightPx / 2 - (y - centre[1]) * pxPerMm];
}

/** The line of sight through a place on the canvas; its origin lies in front of anything that can be built. */
export function rayThrough({ view, pxPerMm, centre, widthPx, heightPx }: Camera, [xPx, yPx]: Vec2): Ray {
  const { right, up, away } = basisOf(view);
  const x = centre[0] + (xPx - widthPx / 2) / pxPerMm;
  const y = centre[1] - (yPx - heightPx / 2) / pxPerMm;
  const origin = add3(add3(scale3(right, x), scale3(up, y)), scale3(away, -CLEAR_MM));
  return { origin, direction: away };
}

/** mm. How far the camera stands off: more than the largest layout and the tallest build. */
export const CLEAR_MM = 20_000;

/** The plane in which a point is moved by dragging: level, or upright across the view where one looks level. */
export function dragPoint(camera: Camera, place: Vec2, through: Vec3): Vec3 {
  const { away, right } = basisOf(camera.view);
  const ray = rayThrough(camera, place);
  const normal: Vec3 = away[2] < -LEAST_SLANT ? [0, 0, 1] : [-right[1], right[0], 0];
  const far = dot3(normal, [through[0] - ray.origin[0], through[1] - ray.origin[1], through[2] - ray.origin[2]]);
  return add3(ray.origin, scale3(ray.direction, far / dot3(normal, ray.direction)));
}

/** No unit: sine of the slant from which on a level plane is seen well enough to drag on it (3 degrees). */
const LEAST_SLANT = 0.05;

/** The camera a share of the way from one to another; the canvas is that of the second. */
export function between(from: Camera, to: Camera, share: number): Camera {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  return {
    ...to,
    view: {
      azimuthRad: mix(from.view.azimuthRad, to.view.azimuthRad),
      elevationRad: mix(from.view.elevationRad, to.view.elevationRad),
    },
    pxPerMm: mix(from.pxPerMm, to.pxPerMm),
    centre: [mix(from.centre[0], to.centre[0]), mix(from.centre[1], to.centre[1])],
  };
}

export const isSameCamera = (a: Camera, b: Camera): boolean =>
  a.view.azimuthRad === b.view.azimuthRad &&
  a.view.elevationRad === b.view.elevationRad &&
  a.pxPerMm === b.pxPerMm &&
  a.centre[0] === b.centre[0] &&
  a.centre[1] === b.centre[1] &&
  a.widthPx === b.widthPx &&
  a.heightPx === b.heightPx;

/** True where one looks straight down, but for 10 degrees. */
export const isAbove = ({ elevationRad }: View): boolean => elevationRad > (80 / 180) * Math.PI;

/** True where one looks level, but for 2 degrees. */
export const isLevel = ({ elevationRad }: View): boolean => elevationRad < (2 / 180) * Math.PI;
