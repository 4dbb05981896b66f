// Vectors of the plane and of space, as read-only tuples of millimetres (or of unit length where said).
// Frame: x right, y away from the viewer, z up; right-handed. Seen from above, angles grow counter-clockwise.

export type Vec2 = readonly [x: number, y: number];
export type Vec3 = readonly [x: number, y: number, z: number];

export const add2 = (a: Vec2, b: Vec2): Vec2 => [a[0] + b[0], a[1] + b[1]];
export const sub2 = (a: Vec2, b: Vec2): Vec2 => [a[0] - b[0], a[1] - b[1]];
export const scale2 = (a: Vec2, k: number): Vec2 => [a[0] * k, a[1] * k];
/** Without a minus in front of a zero: files have none. */
export const unsigned2 = (a: Vec2): Vec2 => [a[0] + 0, a[1] + 0];
export const dot2 = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];
/** The z component of the cross product: positive when b lies to the left of a. */
export const cross2 = (a: Vec2, b: Vec2): number => a[0] * b[1] - a[1] * b[0];
export const length2 = (a: Vec2): number => Math.hypot(a[0], a[1]);

export const add3 = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub3 = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const scale3 = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
/** The same in space. */
export const unsigned3 = (a: Vec3): Vec3 => [a[0] + 0, a[1] + 0, a[2] + 0];
export const dot3 = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross3 = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length3 = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
/** The vector of length 1 along `a`; the caller makes sure that `a` is not the null vector. */
export const unit3 = (a: Vec3): Vec3 => scale3(a, 1 / length3(a));
/** The shadow of a point of space on the table. */
export const flatten = (a: Vec3): Vec2 => [a[0], a[1]];
