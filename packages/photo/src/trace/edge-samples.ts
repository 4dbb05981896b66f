// Places along the outline of a figure as the photo shows it, each with the steps of colour across it and with what a small move of
// the piece does to it.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint } from '../camera/camera.ts';
import type { ColourStep } from '../image/colour-step.ts';
import { colourSteps } from '../image/colour-step.ts';
import type { Photo } from '../image/photo.ts';
import { EDGE_REACH_PX, LEAST_COLOUR_STEP, MOST_STEPS, ROUND_SAMPLES, SIDE_SAMPLES } from '../tolerance.ts';
import type { Figure } from './figure.ts';
import type { PlanPose } from './pose.ts';
import { cornersSeen, rimSeen } from './rim.ts';

export interface EdgeSample {
  readonly at: Vec2;
  /** Across the outline, of length 1, px. */
  readonly across: Vec2;
  /** The side that begins at this corner; null on a round rim. */
  readonly side: number | null;
  /** px across that the outline moves by with 1 mm along x, 1 mm along y, 1 rad of turn. */
  readonly moves: Vec3;
  readonly steps: readonly ColourStep[];
}

export function edgeSamples(
  photo: Photo,
  camera: Camera,
  figure: Figure,
  pose: PlanPose,
  bottomMm: number,
): readonly EdgeSample[] {
  const places = (where: PlanPose): readonly Place[] => placesAlong(camera, figure, where, bottomMm);
  const here = places(pose);
  const x = places({ ...pose, xMm: pose.xMm + 1 });
  const y = places({ ...pose, yMm: pose.yMm + 1 });
  const turned = places({ ...pose, turnRad: pose.turnRad + SMALL_TURN_RAD });
  return here.flatMap(({ at, along, side }, k) => {
    const length = Math.hypot(along[0], along[1]);
    if (!(length > 0)) return [];
    const across: Vec2 = [along[1] / length, -along[0] / length];
    const moved = (other: Place | undefined): number =>
      other === undefined ? 0 : (other.at[0] - at[0]) * across[0] + (other.at[1] - at[1]) * across[1];
    const moves: Vec3 = [moved(x[k]), moved(y[k]), moved(turned[k]) / SMALL_TURN_RAD];
    const steps = colourSteps(photo, at, across, EDGE_REACH_PX, LEAST_COLOUR_STEP, MOST_STEPS);
    return [{ at, across, side, moves, steps }];
  });
}

const SMALL_TURN_RAD = 1e-3;

interface Place {
  readonly at: Vec2;
  readonly along: Vec2;
  readonly side: number | null;
}

function placesAlong(camera: Camera, figure: Figure, pose: PlanPose, bottomMm: number): readonly Place[] {
  const corners = shownIn(camera, cornersSeen(camera, figure, pose, bottomMm));
  const sides = corners.flatMap((from, side): Place[] => {
    const to = corners[(side + 1) % corners.length] ?? from;
    const along: Vec2 = [to[0] - from[0], to[1] - from[1]];
    return Array.from({ length: SIDE_SAMPLES }, (_, k) => {
      const share = INSET + ((1 - 2 * INSET) * (k + 0.5)) / SIDE_SAMPLES;
      return { at: [from[0] + share * along[0], from[1] + share * along[1]], along, side };
    });
  });
  const rim = shownIn(camera, rimSeen(camera, figure, pose, bottomMm, ROUND_SAMPLES));
  const round = rim.map((at, k): Place => {
    const [before, next] = [rim.at(k - 1) ?? at, rim[(k + 1) % rim.length] ?? at];
    return { at, along: [next[0] - before[0], next[1] - before[1]], side: null };
  });
  return [...sides, ...round];
}

/** Share of a side left out at each end. */
const INSET = 0.08;

const shownIn = (camera: Camera, points: readonly Vec3[]): Vec2[] =>
  points.flatMap((point) => {
    const at = imagePoint(camera, point);
    return at === null ? [] : [at];
  });
