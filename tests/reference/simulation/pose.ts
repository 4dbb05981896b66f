// Where a body is and how it is turned, and how far two poses are apart. Frame of the table; mm, rad.

import type { Rotation, Vec3 } from '@cairnmark/geometry';
import { cross3, dot3, length3, scale3, sub3 } from '@cairnmark/geometry';

/** A rotation as a unit quaternion; `w` is the cosine of half the angle. */
export interface Turn {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly w: number;
}

export interface Pose {
  /** Of the origin of its own frame. */
  readonly place: Vec3;
  readonly turn: Turn;
}

/** How far something went from one pose to another. */
export interface Motion {
  readonly movedMm: number;
  readonly turnedRad: number;
}

/** The frame of the table itself. */
export const AT_REST: Pose = { place: [0, 0, 0], turn: { x: 0, y: 0, z: 0, w: 1 } };

/** The pose of a body as seen from another one. */
export function seenFrom(other: Pose, { place, turn }: Pose): Pose {
  return { place: turnedBack(other.turn, sub3(place, other.place)), turn: between(other.turn, turn) };
}

export function motion(before: Pose, after: Pose): Motion {
  const { x, y, z, w } = between(before.turn, after.turn);
  return {
    movedMm: length3(sub3(after.place, before.place)),
    turnedRad: 2 * Math.atan2(Math.hypot(x, y, z), Math.abs(w)),
  };
}

/** Source: Shoemake 1985 (from memory); the largest of the four is taken from the diagonal, the others by its side. */
export function turnOf([xx, xy, xz, yx, yy, yz, zx, zy, zz]: Rotation): Turn {
  const squares = [1 + xx + yy + zz, 1 + xx - yy - zz, 1 - xx + yy - zz, 1 - xx - yy + zz];
  const largest = Math.max(...squares);
  const by = 1 / (2 * Math.sqrt(largest));
  const [wx, wy, wz] = [zy - yz, xz - zx, yx - xy];
  const [x, y, z, w] = [
    [wx, wy, wz, largest],
    [largest, xy + yx, xz + zx, wx],
    [xy + yx, largest, yz + zy, wy],
    [xz + zx, yz + zy, largest, wz],
  ][squares.indexOf(largest)]!;
  return { x: x! * by, y: y! * by, z: z! * by, w: w! * by };
}

/** The turn that leads from `first` to `second`, as `first` sees it. */
function between(first: Turn, second: Turn): Turn {
  const [a, b]: readonly [Vec3, Vec3] = [vectorOf(first), vectorOf(second)];
  const [x, y, z] = sub3(sub3(scale3(b, first.w), scale3(a, second.w)), cross3(a, b));
  return { x, y, z, w: first.w * second.w + dot3(a, b) };
}

function turnedBack(turn: Turn, v: Vec3): Vec3 {
  const axis = scale3(vectorOf(turn), -1);
  const twice = scale3(cross3(axis, v), 2);
  const [along, across] = [scale3(twice, turn.w), cross3(axis, twice)];
  return [v[0] + along[0] + across[0], v[1] + along[1] + across[1], v[2] + along[2] + across[2]];
}

const vectorOf = ({ x, y, z }: Turn): Vec3 => [x, y, z];
