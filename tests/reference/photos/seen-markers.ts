// Markers as a detector without any error would find them, by the formula of the truth files; and with stated errors.

import type { FittedCamera, FoundMarkers, PagePlace } from '@cairnmark/photo';
import { fitCamera, MARKER_SIDE_MM, markersOf } from '@cairnmark/photo';
import type { Point2, TrueCamera } from './camera-of-truth.ts';
import { project } from './camera-of-truth.ts';
import { lookingAt } from './scene.ts';

const SIZE = { width: 1632, height: 1224 };

/** A camera some half a metre off, 26 mm or so. */
export const cameraAt = (tiltDegrees: number, k1 = 0, distanceMm = 550): TrueCamera =>
  lookingAt(SIZE, {
    tiltRad: (tiltDegrees * Math.PI) / 180,
    headingRad: 0.3,
    rollRad: 0.07,
    distanceMm,
    focalPx: 1231,
    k1,
    zMm: 0,
  });

/** In 35 mm terms: what a file would say of it. */
export const FOCAL_35_MM = (1231 / (1.25 * SIZE.width)) * 43.27;

const ONE_PAGE: readonly PagePlace[] = [{ page: 0, middleMm: [0, 0], turnRad: 0 }];

/** `off`: px by which each coordinate is seen elsewhere. */
export function seenMarkers(
  camera: TrueCamera,
  off: () => number = () => 0,
  pages: readonly PagePlace[] = ONE_PAGE,
): FoundMarkers {
  const half = MARKER_SIDE_MM / 2;
  const markers = pages.flatMap(({ page, middleMm, turnRad }) =>
    markersOf(page).map(({ id, centreMm }) => {
      const corner = (dx: number, dy: number): Point2 => {
        const [x, y] = [centreMm[0] + dx * half, centreMm[1] + dy * half];
        const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
        const [u, v] = project(camera, [middleMm[0] + c * x - s * y, middleMm[1] + s * x + c * y, 0]);
        return [u + off(), v + off()];
      };
      const corners = [corner(-1, 1), corner(1, 1), corner(1, -1), corner(-1, -1)] as const;
      return { id, corners, wrongBits: 0, contrast: 200 };
    }),
  );
  return { widthPx: SIZE.width, heightPx: SIZE.height, markers };
}

/** The camera that the package makes of exact markers. */
export function fittedAt(tiltDegrees: number, k1 = 0): { readonly truth: TrueCamera; readonly camera: FittedCamera } {
  const truth = cameraAt(tiltDegrees, k1);
  const sheet = { kind: 'ground', paper: 'a4', pages: 1, printScale: 1 } as const;
  const fit = fitCamera(seenMarkers(truth), sheet, { focal35Mm: FOCAL_35_MM });
  if (!fit.ok) throw new Error(JSON.stringify(fit.issues));
  return { truth, camera: fit.value };
}
