// Parallel views of the table: where right, up and away point in the frame of the table, and points laid flat by them.
// Angles in rad, lengths in mm. A drawing has x to the right and y up, seen by someone who stands before it.

import type { Basis, Vec2, Vec3 } from '@cairnmark/geometry';
import { dot3 } from '@cairnmark/geometry';

export interface View {
  /** How far the one who looks has walked round the table to the right: 0 in front of it. */
  readonly azimuthRad: number;
  /** How far down they look: 0 level, a quarter turn straight from above. */
  readonly elevationRad: number;
}

export type ViewName = 'corner' | 'front' | 'side' | 'above';

const DEGREE = Math.PI / 180;

export const VIEWS: Readonly<Record<ViewName, View>> = {
  corner: { azimuthRad: 30 * DEGREE, elevationRad: 22 * DEGREE },
  front: { azimuthRad: 0, elevationRad: 0 },
  side: { azimuthRad: 90 * DEGREE, elevationRad: 0 },
  above: { azimuthRad: 0, elevationRad: 90 * DEGREE },
};

export function basisOf({ azimuthRad, elevationRad }: View): Basis {
  const [c, s] = [Math.cos(azimuthRad), Math.sin(azimuthRad)];
  const [level, down] = [Math.cos(elevationRad), Math.sin(elevationRad)];
  return { right: [c, s, 0], up: [-s * down, c * down, level], away: [-s * level, c * level, -down] };
}

/** A point of space as it is drawn. */
export const flatIn = ({ right, up }: Basis, point: Vec3): Vec2 => [dot3(point, right), dot3(point, up)];
