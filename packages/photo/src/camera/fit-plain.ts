// The camera of a photo of a plain sheet, from its four edges. What cannot be seen of a plain sheet: how far ink spreads, whether it
// was cut to size, and which of its two long sides is the upper one.

import type { Result, Vec2 } from '@cairnmark/geometry';
import { failure } from '@cairnmark/geometry';
import type { FoundSheet } from '../find/find-sheet.ts';
import type { Quad } from '../find/quadrilateral.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { leastSquares } from '../numbers/least-squares.ts';
import { BLOOM_SIGMA_PX, K1_SIGMA, LEAST_LONG_SIDE_PX, PAPER_EDGE_SIGMA_PX } from '../tolerance.ts';
import type { Camera } from './camera.ts';
import { imagePoint } from './camera.ts';
import type { FitOptions } from './fit-camera.ts';
import { fitted, judged } from './fit-camera.ts';
import type { FittedCamera, RawFit } from './fitted-camera.ts';
import { focalPrior } from './focal-prior.ts';
import { cameraWith, stepsOf, unknownsOf } from './model.ts';
import type { Sheet } from './sheet.ts';
import { paperSizeMm } from './sheet.ts';
import { startPose } from './start-pose.ts';

export type PlainSheet = Extract<Sheet, { kind: 'plain' }>;

/** The frame's y axis points up in the photo, or down if the sheet is taken half turned. */
export function fitPlainSheet(
  found: FoundSheet,
  sheet: PlainSheet,
  { focal35Mm }: FitOptions,
): Result<FittedCamera, PhotoIssue> {
  const { widthPx, heightPx } = found;
  const longPx = Math.max(widthPx, heightPx);
  if (longPx < LEAST_LONG_SIDE_PX) {
    return failure([
      issue('photo-too-small', 'take-larger-photo', [], { widthPx, heightPx, leastPx: LEAST_LONG_SIDE_PX }),
    ]);
  }
  const fits = [0, 1, 2, 3].flatMap((quarter) => {
    const fit = fitTurned(found, sheet, focal35Mm, quarter);
    return fit === null || upright(fit.camera) === sheet.halfTurned ? [] : [fit];
  });
  const best = fits.sort((a, b) => restOf(a) - restOf(b))[0];
  if (best === undefined) return failure([issue('sheet-not-flat', 'lay-sheet-flat')]);
  return judged({ ...fitted(best), markers: [], strays: [] }, best, focal35Mm, longPx);
}

const restOf = ({ offPx }: RawFit): number => offPx.reduce((sum, off) => sum + off * off, 0);

/** Whether y points up in the photo, at the middle of the sheet. */
function upright(camera: Camera): boolean {
  const [origin, ahead] = [imagePoint(camera, [0, 0, 0]), imagePoint(camera, [0, 1, 0])];
  return origin !== null && ahead !== null && ahead[1] < origin[1];
}

/** With the found corner number `quarter` as the upper left one. */
function fitTurned(
  { widthPx, heightPx, corners, edges }: FoundSheet,
  { paper }: PlainSheet,
  focal35Mm: number | null,
  quarter: number,
): RawFit | null {
  const [x, y] = paperSizeMm(paper).map((size) => size / 2) as [number, number];
  const onTable: Quad = [
    [-x, y],
    [x, y],
    [x, -y],
    [-x, -y],
  ];
  const focal = focalPrior(widthPx, heightPx, focal35Mm);
  const flat = (p: Vec2): Vec2 => [(p[0] - widthPx / 2) / focal.focalPx, (p[1] - heightPx / 2) / focal.focalPx];
  const seen = onTable.map((_, k) => corners[(k + quarter) % 4] ?? corners[0]);
  const pose = startPose(onTable, seen.map(flat));
  if (pose === null) return null;
  const start: Camera = { widthPx, heightPx, focalPx: focal.focalPx, k1: 0, ...pose };
  const sides = onTable.map((from, k) => ({
    from,
    to: onTable[(k + 1) % 4] ?? from,
    fromPx: seen[k] ?? from,
    toPx: seen[(k + 1) % 4] ?? from,
    points: edges[(k + quarter) % 4] ?? [],
  }));
  const measured = sides.reduce((sum, { points }) => sum + points.length, 0);
  const solution = leastSquares({
    start: unknownsOf(start, 0, []),
    measured,
    steps: stepsOf(0),
    residuals: (unknowns) => {
      const camera = cameraWith(start, unknowns);
      const off = sides.flatMap((side) =>
        side.points.map((point) => edgeOff(camera, side, point) / PAPER_EDGE_SIGMA_PX),
      );
      const at = (k: number): number => unknowns[k] ?? 0;
      const priors = [(at(6) - Math.log(focal.focalPx)) / focal.sigmaShare, at(7) / K1_SIGMA, at(8) / BLOOM_SIGMA_PX];
      return Float64Array.from([...off, ...priors]);
    },
  });
  if (solution === null) return null;
  return {
    camera: cameraWith(start, solution.parameters),
    bloomPx: 0,
    places: [{ page: 0, middleMm: [0, 0], turnRad: 0 }],
    covariance: solution.covariance,
    size: solution.parameters.length,
    offPx: solution.residuals.slice(0, measured).map((residual) => residual * PAPER_EDGE_SIGMA_PX),
    sigmaPx: PAPER_EDGE_SIGMA_PX,
    focalPriorShare: focal.sigmaShare,
    strays: [],
  };
}

interface Side {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly fromPx: Vec2;
  readonly toPx: Vec2;
}

/** px across the edge. Which place of the side a point shows is told by how far along it lies; to slide along it changes little. */
function edgeOff(camera: Camera, { from, to, fromPx, toPx }: Side, point: Vec2): number {
  const [dx, dy] = [toPx[0] - fromPx[0], toPx[1] - fromPx[1]];
  const share = ((point[0] - fromPx[0]) * dx + (point[1] - fromPx[1]) * dy) / (dx * dx + dy * dy);
  const on = (part: number): Vec2 | null =>
    imagePoint(camera, [from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1]), 0]);
  const [a, b] = [on(share - NEARBY), on(share + NEARBY)];
  if (a === null || b === null) return Number.NaN;
  const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
  return (ex * (point[1] - a[1]) - ey * (point[0] - a[0])) / Math.hypot(ex, ey);
}

/** Share of a side: a chord this short lies on a bent side to a thousandth of a pixel. */
const NEARBY = 0.02;
