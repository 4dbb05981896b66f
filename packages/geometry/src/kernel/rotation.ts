// Rotations of space as 3 x 3 matrices, row by row, acting on column vectors: v' = R v. Angles in radians.

import type { Vec3 } from './vec.ts';
import { cross3, dot3, unit3 } from './vec.ts';

/** Nine numbers, row by row; a proper rotation (orthonormal rows, determinant 1). */
export type Rotation = readonly [number, number, number, number, number, number, number, number, number];

export const IDENTITY: Rotation = [1, 0, 0, 0, 1, 0, 0, 0, 1];

export const rotate = (r: Rotation, v: Vec3): Vec3 => [
  r[0] * v[0] + r[1] * v[1] + r[2] * v[2],
  r[3] * v[0] + r[4] * v[1] + r[5] * v[2],
  r[6] * v[0] + r[7] * v[1] + r[8] * v[2],
];

/** The rotation that does `first`, then `then`. */
export function after(then: Rotation, first: Rotation): Rotation {
  const column = (k: 0 | 1 | 2): Vec3 => rotate(then, [first[k], first[k + 3] ?? 0, first[k + 6] ?? 0]);
  const [a, b, c] = [column(0), column(1), column(2)];
  return [a[0], b[0], c[0], a[1], b[1], c[1], a[2], b[2], c[2]];
}

/** Turn about the upright axis, counter-clockwise seen from above. */
export function turnAboutZ(turnRad: number): Rotation {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [c, -s, 0, s, c, 0, 0, 0, 1];
}

/**
 * The rotation that brings the unit vector `down` to (0, 0, -1) and the part of `right` square to it to (1, 0, 0).
 * `right` must not be parallel to `down`.
 */
export function facingDown(down: Vec3, right: Vec3): Rotation {
  const along = dot3(right, down);
  const x = unit3([right[0] - along * down[0], right[1] - along * down[1], right[2] - along * down[2]]);
  const z: Vec3 = [-down[0], -down[1], -down[2]];
  const y = cross3(z, x);
  return [x[0], x[1], x[2], y[0], y[1], y[2], z[0], z[1], z[2]];
}
