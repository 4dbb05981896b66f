// A first pose from a plane: Zhang 2000, 3.1, with both columns brought to length 1 by themselves before they are set square
// to each other. (One common length for both diverged at tilt 0 with distortion.)

import type { Rotation, Vec2, Vec3 } from '@cairnmark/geometry';
import { cross3, length3, scale3, unit3 } from '@cairnmark/geometry';
import type { Homography } from '../numbers/homography.ts';
import { homographyOf } from '../numbers/homography.ts';

export interface Pose {
  readonly rotation: Rotation;
  readonly shiftMm: Vec3;
}

/** The pose of a plane with points `onPlaneMm`, seen without distortion at `flat`, in focal lengths from the middle of the picture. */
export function startPose(onPlaneMm: readonly Vec2[], flat: readonly Vec2[]): Pose | null {
  const h = homographyOf(onPlaneMm, flat);
  return h && poseOf(h);
}

function poseOf(h: Homography): Pose | null {
  const column = (k: number): Vec3 => [h[k] ?? 0, h[k + 3] ?? 0, h[k + 6] ?? 0];
  // The plane lies in front of the camera.
  const sign = (h[8] ?? 0) < 0 ? -1 : 1;
  const [first, second, third] = [column(0), column(1), column(2)];
  const scale = (length3(first) + length3(second)) / 2;
  if (!(scale > 0)) return null;
  const a = scale3(unit3(first), sign);
  const b = scale3(unit3(second), sign);
  // The square pair nearest to both lies symmetrically about their middle.
  const middle = unit3([a[0] + b[0], a[1] + b[1], a[2] + b[2]]);
  const across = unit3([a[0] - b[0], a[1] - b[1], a[2] - b[2]]);
  const x = scale3([middle[0] + across[0], middle[1] + across[1], middle[2] + across[2]], Math.SQRT1_2);
  const y = scale3([middle[0] - across[0], middle[1] - across[1], middle[2] - across[2]], Math.SQRT1_2);
  const z = cross3(x, y);
  if (![...x, ...y, ...z].every(Number.isFinite)) return null;
  return {
    rotation: [x[0], y[0], z[0], x[1], y[1], z[1], x[2], y[2], z[2]],
    shiftMm: scale3(third, sign / scale),
  };
}
