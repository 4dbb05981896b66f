// Where a piece stands in plan: its spot under the centre of mass, and its turn, counter-clockwise seen from above.

import type { Vec3 } from '@cairnmark/geometry';

export interface PlanPose {
  readonly xMm: number;
  readonly yMm: number;
  readonly turnRad: number;
}

/** A point of the piece, about its spot and before any turn, on the table; its lowest point at `bottomMm`. */
export function placed({ xMm, yMm, turnRad }: PlanPose, bottomMm: number, [x, y, z]: Vec3): Vec3 {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [xMm + c * x - s * y, yMm + s * x + c * y, bottomMm + z];
}
