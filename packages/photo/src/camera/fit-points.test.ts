// Known cameras from the places of known points.

import { expect, it } from 'vitest';
import type { Point2 } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { cameraAt } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { planePoint } from './camera.ts';
import { fitPoints } from './fit-points.ts';

const GRID: readonly Point2[] = [-90, -30, 30, 90].flatMap((x) => [-60, 0, 60].map((y): Point2 => [x, y]));
const SIZE = { widthPx: 1632, heightPx: 1224 };

it.each([
  [15, 0.05],
  [35, -0.08],
  [60, 0],
])('tilted by %d degrees, k1 %d: the camera comes out, and points between', (tilt, k1) => {
  const truth = cameraAt(tilt, k1);
  const pixels = GRID.map(([x, y]) => project(truth, [x, y, 0]));
  const camera = fitPoints({ ...SIZE, onTableMm: GRID, pixels }, { focal35Mm: null })!;
  // Twelve points, each trusted to 0.3 px, against what is known before (k1 0 +- 0.1): that pulls a little, also at exact places.
  expectNear(camera.focalPx, truth.f, { relative: 0.005 });
  expectNear(camera.k1, k1, { absolute: 0.02 });
  expectPointNear(planePoint(camera, project(truth, [47, -23, 0]), 0)!, [47, -23], 0.05);
});

it('one wrong point of twelve does not lead it astray', () => {
  const truth = cameraAt(25, 0.03);
  const pixels = GRID.map(([x, y], k): Point2 => {
    const [u, v] = project(truth, [x, y, 0]);
    return k === 5 ? [u + 40, v - 30] : [u, v];
  });
  const camera = fitPoints({ ...SIZE, onTableMm: GRID, pixels }, { focal35Mm: null })!;
  expectPointNear(planePoint(camera, project(truth, [47, -23, 0]), 0)!, [47, -23], 0.5);
});

it('points on one line tell no camera', () => {
  const line: readonly Point2[] = [0, 10, 25, 60, 80].map((x) => [x, 0]);
  const pixels = line.map(([x]): Point2 => [400 + 3 * x, 500]);
  expect(fitPoints({ ...SIZE, onTableMm: line, pixels }, { focal35Mm: null })).toBeNull();
});
