// Points of a figure where a camera sees its rim, on the table, mm. Of a ball and of a cylinder that lies, where the line of sight
// touches: that depends on the camera.

import type { Vec3 } from '@cairnmark/geometry';
import { add3, cross3, dot3, length3, scale3, sub3, unit3 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { positionOf } from '../camera/camera.ts';
import type { Figure } from './figure.ts';
import type { PlanPose } from './pose.ts';
import { placed } from './pose.ts';

/** The corners that can be tapped, counter-clockwise seen from above; none of what is round. */
export function cornersSeen(camera: Camera, figure: Figure, pose: PlanPose, bottomMm: number): readonly Vec3[] {
  if (figure.kind === 'corners') return figure.corners.map((corner) => placed(pose, bottomMm, corner));
  return figure.kind === 'log' ? logCorners(camera, figure, pose, bottomMm) : [];
}

/** `count` points round the rim of what is round, evenly; none of what has corners. */
export function rimSeen(
  camera: Camera,
  figure: Figure,
  pose: PlanPose,
  bottomMm: number,
  count: number,
): readonly Vec3[] {
  if (figure.kind !== 'disc' && figure.kind !== 'ball') return [];
  const centre = placed(pose, bottomMm, figure.centre);
  if (figure.kind === 'disc') return circle(centre, [1, 0, 0], [0, 1, 0], figure.radiusMm, count);
  // The cone of sight that touches a ball meets it in a circle, a little nearer to the lens than its middle.
  const towards = sub3(positionOf(camera), centre);
  const distance = length3(towards);
  const axis = unit3(towards);
  const u = unit3(cross3(axis, Math.abs(axis[0]) < 0.5 ? [1, 0, 0] : [0, 1, 0]));
  const share = figure.radiusMm / distance;
  const middle = add3(centre, scale3(axis, figure.radiusMm * share));
  return circle(middle, u, cross3(axis, u), figure.radiusMm * Math.sqrt(1 - share * share), count);
}

const circle = (centre: Vec3, u: Vec3, v: Vec3, radiusMm: number, count: number): readonly Vec3[] =>
  Array.from({ length: count }, (_, k) => {
    const turn = (2 * Math.PI * k) / count;
    return add3(centre, add3(scale3(u, radiusMm * Math.cos(turn)), scale3(v, radiusMm * Math.sin(turn))));
  });

/** Where the lines of sight touch a lying cylinder along its two sides, at both ends. */
function logCorners(
  camera: Camera,
  { centre, radiusMm, halfLengthMm }: Extract<Figure, { kind: 'log' }>,
  pose: PlanPose,
  bottomMm: number,
): readonly Vec3[] {
  const across: Vec3 = [Math.cos(pose.turnRad), Math.sin(pose.turnRad), 0];
  const along: Vec3 = [-across[1], across[0], 0];
  const middle = placed(pose, bottomMm, centre);
  const towards = sub3(positionOf(camera), middle);
  const [right, up] = [dot3(towards, across), towards[2]];
  // From the middle, the touching points lie to both sides of the way to the lens.
  const [seenAt, half] = [Math.atan2(up, right), Math.acos(radiusMm / Math.hypot(right, up))];
  const at = (side: number, end: number): Vec3 => {
    const turn = seenAt + side * half;
    const out = add3(scale3(across, radiusMm * Math.cos(turn)), [0, 0, radiusMm * Math.sin(turn)]);
    return add3(add3(middle, out), scale3(along, end * halfLengthMm));
  };
  return [at(1, -1), at(-1, -1), at(-1, 1), at(1, 1)];
}
