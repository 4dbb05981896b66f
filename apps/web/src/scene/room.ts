// The room that a build takes up, in coarse steps, so that the picture does not creep while pieces are moved. mm.

import type { Body, Vec3 } from '@cairnmark/geometry';
import { supportPoint } from '@cairnmark/geometry';
import type { Rectangle } from '../drawing/sheet.ts';

/** What has to be in sight, in coarse steps. */
export interface Room {
  readonly ground: Rectangle;
  readonly heightMm: number;
}

/** The room that some bodies take up, with the middle of an empty table at the least. */
export function roomOf(bodies: readonly Body[]): Room {
  const reach = (direction: Vec3, least: number): number =>
    bodies.reduce((most, body) => {
      const point = supportPoint(body, direction);
      return Math.max(most, point[0] * direction[0] + point[1] * direction[1] + point[2] * direction[2]);
    }, least);
  const side = (direction: Vec3): number => stepUp(reach(direction, LEAST_HALF_MM), GROUND_STEP_MM);
  return {
    ground: { minX: -side([-1, 0, 0]), minY: -side([0, -1, 0]), maxX: side([1, 0, 0]), maxY: side([0, 1, 0]) },
    heightMm: stepUp(reach([0, 0, 1], LEAST_HEIGHT_MM), HEIGHT_STEP_MM),
  };
}

/** The next whole number of steps; what rounding adds does not count. */
const stepUp = (valueMm: number, stepMm: number): number => Math.ceil(valueMm / stepMm - 1e-6) * stepMm;

const GROUND_STEP_MM = 50;
const HEIGHT_STEP_MM = 50;
/** Half the ground of an empty table. */
const LEAST_HALF_MM = 40;
const LEAST_HEIGHT_MM = 200;
