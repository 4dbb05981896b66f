// From space to pixels and back, against the formula of the truth files, written apart from this package.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lensOf, project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { cameraAt, fittedAt } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import type { Camera } from './camera.ts';
import { imagePoint, planePoint, positionOf, rayOf, tiltOf } from './camera.ts';
import { undistort } from './lens.ts';

const SEED = 20261131;

const asCamera = (tiltDegrees: number, k1: number): Camera => {
  const { f, R, t } = cameraAt(tiltDegrees, k1);
  return {
    widthPx: 1632,
    heightPx: 1224,
    focalPx: f,
    k1,
    rotation: R as unknown as Camera['rotation'],
    shiftMm: t as unknown as Camera['shiftMm'],
  };
};

it(`a point shows where the formula says, and its pixel leads back to it on its plane (seed ${SEED})`, () => {
  const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const given = fc.tuple(range(0, 75), range(-0.1, 0.1), range(-100, 100), range(-70, 70), range(0, 170));
  fc.assert(
    fc.property(given, ([tilt, k1, x, y, z]) => {
      const pixel = imagePoint(asCamera(tilt, k1), [x, y, z])!;
      // Rounding of some thousand pixels, and of Newton's method.
      expectPointNear(pixel, project(cameraAt(tilt, k1), [x, y, z]), 1e-9);
      expectPointNear(planePoint(asCamera(tilt, k1), pixel, z)!, [x, y], 1e-7);
    }),
    { seed: SEED, numRuns: 300 },
  );
});

it('the lens is where the truth has it, and the tilt is the one asked for', () => {
  const camera = asCamera(23, 0.05);
  expectPointNear(positionOf(camera), lensOf(cameraAt(23, 0.05)), 1e-9);
  expectNear(tiltOf(camera), (23 * Math.PI) / 180, { absolute: 1e-12 });
});

it('uncorrected for parallax, an area on a plane at z comes out (D / (D - z))^2 times as large', () => {
  // Straight above and without distortion this is exact; D = 550 mm, z = 100 mm: 1.4938, 49 % too much.
  const camera = asCamera(0, 0);
  const corners = [
    [0, 0],
    [30, 0],
    [30, 20],
    [0, 20],
  ].map(([x, y]) => imagePoint(camera, [x!, y!, 100])!);
  const area = (zMm: number): number => {
    const [a, b, , d] = corners.map((corner) => planePoint(camera, corner, zMm)!);
    return Math.abs((b![0] - a![0]) * (d![1] - a![1]) - (b![1] - a![1]) * (d![0] - a![0]));
  };
  expectNear(area(100), 600, { relative: 1e-9 });
  expectNear(area(0) / area(100), (550 / 450) ** 2, { relative: 1e-9 });
});

it('1 mm of error in the height of the plane costs 2 / (D - z) of the area', () => {
  const { camera } = fittedAt(20);
  const corners = [
    imagePoint(camera, [0, 0, 100])!,
    imagePoint(camera, [30, 0, 100])!,
    imagePoint(camera, [0, 30, 100])!,
  ];
  const area = (zMm: number): number => {
    const [a, b, c] = corners.map((corner) => planePoint(camera, corner, zMm)!);
    return Math.abs((b![0] - a![0]) * (c![1] - a![1]) - (b![1] - a![1]) * (c![0] - a![0])) / 2;
  };
  const heightOfLens = positionOf(camera)[2];
  // First order in 1 mm of some 420: the next term is a thousandth of it.
  expectNear(1 - area(101) / area(100), 2 / (heightOfLens - 100), { relative: 0.01 });
});

it('behind the camera, past the horizon and past the fold of the lens there is nothing', () => {
  const side = asCamera(80, 0);
  expect(imagePoint(side, [0, -5000, 0])).toBeNull();
  expect(planePoint(side, [816, 3], 0)).toBeNull();
  expect(undistort(-0.5, [1.7, 0])).toBeNull();
  expect(rayOf({ ...side, k1: -5 }, [1631, 3])).toBeNull();
});
