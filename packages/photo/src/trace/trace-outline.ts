// Any outline, tapped corner by corner on its own level plane: its true shape and size, with their uncertainty. For what is not on the
// list of pieces; listed ones come out better by `fitSolid`.

import type { PolygonOutline, Result, Vec2 } from '@cairnmark/geometry';
import { failure, signedAreaMm2, success } from '@cairnmark/geometry';
import type { Camera } from '../camera/camera.ts';
import { planePoint } from '../camera/camera.ts';
import type { FittedCamera } from '../camera/fitted-camera.ts';
import { CAMERA_UNKNOWNS, nudged, nudgeOf } from '../camera/model.ts';
import type { Photo } from '../image/photo.ts';
import type { PhotoIssue } from '../issues.ts';
import { issue } from '../issues.ts';
import { propagate } from '../numbers/matrix.ts';
import { EDGE_CORNER_SIGMA_PX, SAME_CORNER_PX } from '../tolerance.ts';
import type { Taps } from './fit-solid.ts';
import { firstCrossing } from './self-crossing.ts';
import { snapSides } from './snap-sides.ts';

export interface TracingPlane {
  readonly zMm: number;
  readonly sigmaMm: number;
}

export interface TracedShape {
  /** Counter-clockwise seen from above, mm on the table. */
  readonly outline: PolygonOutline;
  readonly areaMm2: number;
  readonly areaSigmaMm2: number;
  readonly perimeterMm: number;
  readonly perimeterSigmaMm: number;
  /** For every side, in the order of the taps less those on one corner, whether it was set on an edge of the photo. */
  readonly onEdge: readonly boolean[];
}

/** `photo`: null takes the taps as they are. A corner tapped twice, or the first one again at the end, is one corner. */
export function traceOutline(
  photo: Photo | null,
  camera: FittedCamera,
  plane: TracingPlane,
  { pixels: tapped, sigmaPx }: Taps,
): Result<TracedShape, PhotoIssue> {
  const pixels = eachCornerOnce(tapped);
  if (pixels.length < 3) {
    return failure([issue('taps-too-few', 'tap-again', ['taps'], { given: pixels.length, least: 3 })]);
  }
  const { corners, onEdge } =
    photo === null ? { corners: pixels, onEdge: pixels.map(() => false) } : snapSides(photo, pixels, sigmaPx);
  const points = onPlane(camera, corners, plane.zMm);
  const lost = points.indexOf(null);
  if (lost >= 0) return failure([issue('tap-not-on-plane', 'tap-again', ['taps', lost])]);
  const ring = points.flatMap((point) => (point === null ? [] : [point]));
  const crossed = firstCrossing(ring);
  if (crossed !== null) {
    const [first, second] = crossed;
    return failure([issue('outline-crosses-itself', 'tap-again', ['taps'], { first, second })]);
  }
  const sure = corners.map((_, k) => onEdge[k] === true && onEdge.at(k - 1) === true);
  const [areaSigmaMm2, perimeterSigmaMm] = sigmas(camera, corners, plane, (k) =>
    sure[k] ? EDGE_CORNER_SIGMA_PX : sigmaPx,
  );
  return success({
    outline: { kind: 'polygon', points: signedAreaMm2(ring) < 0 ? [...ring].reverse() : ring },
    areaMm2: areaOf(ring),
    areaSigmaMm2,
    perimeterMm: perimeterOf(ring),
    perimeterSigmaMm,
    onEdge,
  });
}

/** Less every tap that is on the corner of the tap before it; the first follows the last. */
function eachCornerOnce(taps: readonly Vec2[]): readonly Vec2[] {
  const isOn = (a: Vec2, b: Vec2 | undefined): boolean =>
    b !== undefined && Math.hypot(a[0] - b[0], a[1] - b[1]) < SAME_CORNER_PX;
  const kept: Vec2[] = [];
  for (const tap of taps) if (!isOn(tap, kept.at(-1))) kept.push(tap);
  while (kept.length > 1 && isOn(kept.at(-1) ?? [0, 0], kept[0])) kept.pop();
  return kept;
}

const onPlane = (camera: Camera, corners: readonly Vec2[], zMm: number): readonly (Vec2 | null)[] =>
  corners.map((corner) => planePoint(camera, corner, zMm));

const areaOf = (ring: readonly Vec2[]): number => Math.abs(signedAreaMm2(ring));

const perimeterOf = (ring: readonly Vec2[]): number =>
  ring.reduce((sum, [x, y], k) => {
    const [nextX, nextY] = ring[(k + 1) % ring.length] ?? [x, y];
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);

/** Of area and perimeter: corners, camera and height of the plane, each moved by itself. */
function sigmas(
  camera: FittedCamera,
  corners: readonly Vec2[],
  { zMm, sigmaMm }: TracingPlane,
  cornerSigma: (corner: number) => number,
): readonly [number, number] {
  const both = (seenBy: Camera, pixels: readonly Vec2[], z: number): readonly [number, number] => {
    const ring = onPlane(seenBy, pixels, z).flatMap((point) => (point === null ? [] : [point]));
    return [areaOf(ring), perimeterOf(ring)];
  };
  const base = both(camera, corners, zMm);
  const change = (there: readonly [number, number], step: number): readonly [number, number] => [
    (there[0] - base[0]) / step,
    (there[1] - base[1]) / step,
  ];
  const byCamera = Array.from({ length: CAMERA_UNKNOWNS }, (_, k) =>
    change(both(nudged(camera, k, nudgeOf(k)), corners, zMm), nudgeOf(k)),
  );
  const byCorner = corners.flatMap((_, k) =>
    ([0, 1] as const).map((axis) => {
      const [dx, dy] = axis === 0 ? [NUDGE_PX, 0] : [0, NUDGE_PX];
      const there = corners.map(([u, v], j): Vec2 => (j === k ? [u + dx, v + dy] : [u, v]));
      const [area, perimeter] = change(both(camera, there, zMm), NUDGE_PX);
      return [area * cornerSigma(k), perimeter * cornerSigma(k)] as const;
    }),
  );
  const byHeight = change(both(camera, corners, zMm + NUDGE_PX), NUDGE_PX);
  const of = (which: 0 | 1): number => {
    const slopes = Float64Array.from(byCamera, (one) => one[which]);
    const fromCamera = propagate([slopes], camera.covariance)[0] ?? 0;
    const fromCorners = byCorner.reduce((sum, one) => sum + one[which] ** 2, 0);
    return Math.sqrt(fromCamera + fromCorners + (byHeight[which] * sigmaMm) ** 2);
  };
  return [of(0), of(1)];
}

/** px, and mm for the height. */
const NUDGE_PX = 1e-2;
