// From taps to places where the piece may stand. Two taps on corners leave open which corners they are: every pair whose distance
// fits is a choice.

import type { Vec2 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint, planePoint, positionOf } from '../camera/camera.ts';
import type { Figure } from './figure.ts';
import type { PlanPose } from './pose.ts';
import { cornersSeen } from './rim.ts';

export interface FirstPose {
  readonly pose: PlanPose;
  /** For every tap the number of its corner. */
  readonly corners: readonly number[];
  /** How far the taps are off their corners at most, px. */
  readonly offPx: number;
}

/** For figures with corners; the best first, each place once. None where a tap looks past the plane. */
export function firstPoses(
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  taps: readonly Vec2[],
  samePx: number,
): readonly FirstPose[] {
  const [first, second] = taps;
  if (first === undefined || second === undefined) return [];
  const about = spotUnder(camera, figure, bottomMm, taps);
  const own = cornersSeen(camera, figure, about, bottomMm);
  const found: FirstPose[] = [];
  own.forEach((one, i) => {
    own.forEach((other, j) => {
      if (i === j) return;
      const [p, q] = [planePoint(camera, first, one[2]), planePoint(camera, second, other[2])];
      if (p === null || q === null) return;
      const turnRad = Math.atan2(q[1] - p[1], q[0] - p[0]) - Math.atan2(other[1] - one[1], other[0] - one[0]);
      const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
      const middle: Vec2 = [(one[0] + other[0]) / 2 - about.xMm, (one[1] + other[1]) / 2 - about.yMm];
      const pose = {
        xMm: (p[0] + q[0]) / 2 - (c * middle[0] - s * middle[1]),
        yMm: (p[1] + q[1]) / 2 - (s * middle[0] + c * middle[1]),
        turnRad,
      };
      found.push(withCorners(camera, figure, pose, bottomMm, taps));
    });
  });
  return eachOnce(
    camera,
    figure,
    bottomMm,
    found.sort((a, b) => a.offPx - b.offPx),
    samePx,
  );
}

/** Straight under the middle of the taps, unturned: where the corners are looked at to learn their distances. */
function spotUnder(camera: Camera, figure: Figure, bottomMm: number, taps: readonly Vec2[]): PlanPose {
  const zMm = bottomMm + (figure.kind === 'corners' ? (figure.corners[0]?.[2] ?? 0) : figure.centre[2]);
  const points = taps.map((tap) => planePoint(camera, tap, zMm) ?? positionOf(camera));
  const mean = (k: 0 | 1): number => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  return { xMm: mean(0), yMm: mean(1), turnRad: 0 };
}

/** Every tap goes to the corner that shows nearest to it. */
function withCorners(
  camera: Camera,
  figure: Figure,
  pose: PlanPose,
  bottomMm: number,
  taps: readonly Vec2[],
): FirstPose {
  const shown = cornersSeen(camera, figure, pose, bottomMm).map((corner) => imagePoint(camera, corner));
  const nearest = taps.map((tap) => {
    let [best, offPx] = [0, Number.POSITIVE_INFINITY];
    shown.forEach((point, k) => {
      const off = point === null ? Number.POSITIVE_INFINITY : Math.hypot(point[0] - tap[0], point[1] - tap[1]);
      if (off < offPx) [best, offPx] = [k, off];
    });
    return { best, offPx };
  });
  return { pose, corners: nearest.map(({ best }) => best), offPx: Math.max(...nearest.map(({ offPx }) => offPx)) };
}

/**
 * Poses whose corners and spots show in the same places are one: a square turned by a quarter. A prism on its side, over a lopsided
 * triangle, covers the same rectangle turned half round, but balances elsewhere: these are two.
 */
function eachOnce(
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  sorted: readonly FirstPose[],
  samePx: number,
): readonly FirstPose[] {
  const kept: { one: FirstPose; shown: readonly (Vec2 | null)[]; spot: Vec2 | null }[] = [];
  for (const one of sorted) {
    const shown = cornersSeen(camera, figure, one.pose, bottomMm).map((corner) => imagePoint(camera, corner));
    const spot = imagePoint(camera, [one.pose.xMm, one.pose.yMm, bottomMm]);
    const same = (other: (typeof kept)[number]): boolean =>
      isNear(spot, [other.spot], samePx) && shown.every((point) => isNear(point, other.shown, samePx));
    if (!kept.some(same)) kept.push({ one, shown, spot });
  }
  return kept.map(({ one }) => one);
}

const isNear = (point: Vec2 | null, others: readonly (Vec2 | null)[], samePx: number): boolean =>
  others.some((other) => point && other && Math.hypot(point[0] - other[0], point[1] - other[1]) <= samePx);
