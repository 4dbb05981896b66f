// Sets a piece that taps have placed roughly on the edges that the photo shows. What is found counts beside the taps, and is left
// alone where too little of the outline has an edge, or where it would pull the piece away from the taps.

import type { Vec2 } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { imagePoint } from '../camera/camera.ts';
import type { Photo } from '../image/photo.ts';
import { EDGE_SIGMA_PX, LEAST_SUPPORT, MOST_PULL_SIGMAS, ON_EDGE_PX } from '../tolerance.ts';
import type { EdgeSample } from './edge-samples.ts';
import { edgeSamples } from './edge-samples.ts';
import type { Figure } from './figure.ts';
import type { PlanPose } from './pose.ts';
import type { PoseFit, Sighting } from './pose-fit.ts';
import { fitPose } from './pose-fit.ts';
import { cornersSeen } from './rim.ts';
import type { Vote } from './vote.ts';
import { bestMove, movedPx } from './vote.ts';

export interface Snapped {
  readonly fit: PoseFit;
  readonly sightings: readonly Sighting[];
  /** Share of the outline along which the photo shows an edge, 0 to 1. */
  readonly support: number;
  /** False: the pose is that of the taps. */
  readonly snapped: boolean;
}

/** `taps` are the sightings that `rough` was fitted to. */
export function snap(
  photo: Photo,
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  rough: PoseFit,
  taps: readonly Sighting[],
): Snapped {
  const unsnapped = (support: number): Snapped => ({ fit: rough, sightings: taps, support, snapped: false });
  const samples = edgeSamples(photo, camera, figure, rough.pose, bottomMm);
  const turns = figure.kind === 'corners' || figure.kind === 'log';
  const deviation = (k: number): number => Math.sqrt(rough.covariance[4 * k] ?? 0);
  const vote = bestMove(samples, { sigma: [deviation(0), deviation(1), turns ? deviation(2) : 0], turns });
  if (vote.support < LEAST_SUPPORT) return unsnapped(vote.support);
  const edges = onEdge(samples, vote);
  if (!determines(edges)) return unsnapped(vote.support);
  const sightings = [...taps, ...edges.map(({ sighting }) => sighting)];
  const fit = fitPose(camera, figure, bottomMm, rough.pose, sightings);
  if (fit === null || pulledSigmas(camera, figure, bottomMm, rough, fit, taps) > MOST_PULL_SIGMAS) {
    return unsnapped(vote.support);
  }
  return { fit, sightings, support: vote.support, snapped: true };
}

interface OnEdge {
  readonly sighting: Sighting;
  readonly across: Vec2;
}

/** The steps that the chosen move brings the outline to. */
function onEdge(samples: readonly EdgeSample[], { move }: Vote): readonly OnEdge[] {
  return samples.flatMap((sample) => {
    const moved = movedPx(sample, move);
    const near = sample.steps
      .filter(({ offsetPx }) => Math.abs(offsetPx - moved) <= ON_EDGE_PX)
      .sort((a, b) => Math.abs(a.offsetPx - moved) - Math.abs(b.offsetPx - moved))[0];
    if (near === undefined) return [];
    const { at, across, side } = sample;
    const pixel: Vec2 = [at[0] + near.offsetPx * across[0], at[1] + near.offsetPx * across[1]];
    const on = side === null ? ({ kind: 'rim' } as const) : ({ kind: 'side', corner: side } as const);
    return [{ sighting: { pixel, on, sigmaPx: EDGE_SIGMA_PX }, across }];
  });
}

/** Edges that all run one way hold a piece only across it: they must face two ways, by the smaller eigenvalue of their normals. */
function determines(edges: readonly OnEdge[]): boolean {
  let [xx, xy, yy] = [0, 0, 0];
  for (const { across } of edges) {
    xx += across[0] * across[0];
    xy += across[0] * across[1];
    yy += across[1] * across[1];
  }
  const smaller = (xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy);
  return edges.length > 0 && smaller >= LEAST_CROSSWISE * edges.length;
}

/** A circle has 0.5, a square too; a strip four times as long as wide has 0.2. */
const LEAST_CROSSWISE = 0.1;

/** How far the furthest tap is from the piece now, in its own deviations, beyond what it was. */
function pulledSigmas(
  camera: Camera,
  figure: Figure,
  bottomMm: number,
  before: PoseFit,
  after: PoseFit,
  taps: readonly Sighting[],
): number {
  const shown = (pose: PlanPose): readonly (Vec2 | null)[] =>
    cornersSeen(camera, figure, pose, bottomMm).map((corner) => imagePoint(camera, corner));
  const [was, is] = [shown(before.pose), shown(after.pose)];
  const pulls = taps.map(({ on, sigmaPx }) => {
    if (on.kind === 'rim') {
      const distanceMm = Math.hypot(after.pose.xMm - before.pose.xMm, after.pose.yMm - before.pose.yMm);
      return distanceMm / Math.sqrt(Math.max(before.covariance[0] ?? 0, before.covariance[4] ?? 0));
    }
    const [p, q] = [was[on.corner], is[on.corner]];
    return p && q ? Math.hypot(q[0] - p[0], q[1] - p[1]) / sigmaPx : Number.POSITIVE_INFINITY;
  });
  return Math.max(0, ...pulls);
}
