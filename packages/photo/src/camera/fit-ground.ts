// Fits the camera to the markers of a ground sheet: pose, focal length, lens, shift of edges, and the places of the pages. Method:
// Zhang 2000, 3.2, with priors (Gaussian) and Huber's weights.

import type { Vec2 } from '@cairnmark/geometry';
import { leastSquares } from '../numbers/least-squares.ts';
import {
  BLOOM_SIGMA_PX,
  FIRST_CORNER_SIGMA_PX,
  K1_SIGMA,
  LEAST_CORNER_SIGMA_PX,
  PAGE_SIGMA_MM,
  PAGE_SIGMA_RAD,
  STRAY_SIGMAS,
} from '../tolerance.ts';
import type { Seen } from './agreeing.ts';
import type { Camera } from './camera.ts';
import { imagePoint } from './camera.ts';
import type { RawFit } from './fitted-camera.ts';
import type { FocalPrior } from './focal-prior.ts';
import { BLOOM, cameraWith, placeWith, stepsOf, unknownsOf } from './model.ts';
import type { PagePlace } from './sheet.ts';
import { onTable } from './sheet.ts';
import { shiftedQuad } from './shifted-quad.ts';
import { startPose } from './start-pose.ts';

export interface GroundProblem {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly focal: FocalPrior;
  readonly seen: readonly Seen[];
  /** Pages whose place is known; the others are looked for, beginning at their place in `free`. */
  readonly fixed: readonly PagePlace[];
  readonly free: readonly PagePlace[];
}

/** Null when the markers do not determine a camera. Markers far off the common fit are left out and told in `strays`. */
export function fitGround(problem: GroundProblem): RawFit | null {
  const start = firstCamera(problem);
  if (start === null) return null;
  const rough = solve(problem, start, problem.seen, FIRST_CORNER_SIGMA_PX);
  if (rough === null) return null;
  const sigmaPx = cornerSigma(rough);
  const kept = problem.seen.filter(
    (_, k) => furthest(rough, k) <= STRAY_SIGMAS * Math.max(sigmaPx, FIRST_CORNER_SIGMA_PX),
  );
  const fit = solve(problem, start, kept, sigmaPx);
  if (fit === null) return null;
  const finalSigma = cornerSigma(fit);
  const final = solve(problem, start, kept, finalSigma);
  return final && { ...final, strays: problem.seen.filter((one) => !kept.includes(one)).map(({ id }) => id) };
}

function firstCamera({ widthPx, heightPx, focal, seen }: GroundProblem): Camera | null {
  const flat = (p: Vec2): Vec2 => [(p[0] - widthPx / 2) / focal.focalPx, (p[1] - heightPx / 2) / focal.focalPx];
  const pose = startPose(
    seen.flatMap(({ onTableMm }) => [...onTableMm]),
    seen.flatMap(({ cornersPx }) => cornersPx.map(flat)),
  );
  return pose && { widthPx, heightPx, focalPx: focal.focalPx, k1: 0, ...pose };
}

function solve(problem: GroundProblem, start: Camera, seen: readonly Seen[], sigmaPx: number): RawFit | null {
  const { focal, fixed, free } = problem;
  const residuals = (unknowns: Float64Array): Float64Array => {
    const camera = cameraWith(start, unknowns);
    const places = [...fixed, ...free.map(({ page }, k) => placeWith(page, k, unknowns))];
    const corners = seen.flatMap((one) => cornerResiduals(camera, places, unknowns[BLOOM] ?? 0, one, sigmaPx));
    return Float64Array.from([...corners, ...priors(problem, unknowns)]);
  };
  const solution = leastSquares({
    start: unknownsOf(start, 0, free),
    residuals,
    measured: 8 * seen.length,
    steps: stepsOf(free.length),
  });
  if (solution === null) return null;
  return {
    camera: cameraWith(start, solution.parameters),
    bloomPx: solution.parameters[BLOOM] ?? 0,
    places: [...fixed, ...free.map(({ page }, k) => placeWith(page, k, solution.parameters))],
    covariance: solution.covariance,
    size: solution.parameters.length,
    offPx: solution.residuals.slice(0, 8 * seen.length).map((residual) => residual * sigmaPx),
    sigmaPx,
    focalPriorShare: focal.sigmaShare,
    strays: [],
  };
}

/** px over the sigma: both coordinates of the four corners. Not a number where the sheet would lie behind the camera. */
function cornerResiduals(
  camera: Camera,
  places: readonly PagePlace[],
  bloomPx: number,
  { page, onPageMm, cornersPx }: Seen,
  sigmaPx: number,
): number[] {
  const place = places.find((one) => one.page === page);
  const [a, b, c, d] = onPageMm.map((point) => {
    const [x, y] = place === undefined ? point : onTable(place, point);
    return imagePoint(camera, [x, y, 0]) ?? ([Number.NaN, Number.NaN] as const);
  });
  if (!(a && b && c && d)) return [];
  return shiftedQuad([a, b, c, d], bloomPx).flatMap(([u, v], k) => [
    (u - (cornersPx[k]?.[0] ?? 0)) / sigmaPx,
    (v - (cornersPx[k]?.[1] ?? 0)) / sigmaPx,
  ]);
}

function priors({ focal, free }: GroundProblem, unknowns: Float64Array): number[] {
  const at = (k: number): number => unknowns[k] ?? 0;
  return [
    (at(6) - Math.log(focal.focalPx)) / focal.sigmaShare,
    at(7) / K1_SIGMA,
    at(BLOOM) / BLOOM_SIGMA_PX,
    ...free.flatMap((nominal, k) => {
      const { middleMm, turnRad } = placeWith(nominal.page, k, unknowns);
      return [
        (middleMm[0] - nominal.middleMm[0]) / PAGE_SIGMA_MM,
        (middleMm[1] - nominal.middleMm[1]) / PAGE_SIGMA_MM,
        (turnRad - nominal.turnRad) / PAGE_SIGMA_RAD,
      ];
    }),
  ];
}

/** px. From the median of what is left, which outliers do not sway, for the freedom that is left. */
function cornerSigma({ offPx, size }: RawFit): number {
  const sizes = Array.from(offPx, Math.abs).sort((a, b) => a - b);
  const freedom = Math.max(1, sizes.length - size);
  const spread = MEDIAN_TO_SIGMA * (sizes[Math.floor(sizes.length / 2)] ?? 0) * Math.sqrt(sizes.length / freedom);
  return Math.max(LEAST_CORNER_SIGMA_PX, spread);
}

/** Of a normal distribution: standard deviation over the median of sizes. */
const MEDIAN_TO_SIGMA = 1.4826;

function furthest({ offPx }: RawFit, marker: number): number {
  return Math.max(...Array.from(offPx.slice(8 * marker, 8 * marker + 8), Math.abs));
}
