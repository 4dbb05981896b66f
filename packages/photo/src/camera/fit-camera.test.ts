// The fit of the camera against cameras that are known: exact markers, marred ones, and refusals.

import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../../tests/reference/dice.ts';
import { project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { cameraAt, FOCAL_35_MM, fittedAt, seenMarkers } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import type { FoundMarkers } from '../find/find-markers.ts';
import { imagePoint, planePoint } from './camera.ts';
import { fitCamera } from './fit-camera.ts';
import type { FittedCamera } from './fitted-camera.ts';
import { pagesOf } from './sheet.ts';
import { shiftedQuad } from './shifted-quad.ts';

const SHEET = { kind: 'ground', paper: 'a4', pages: 1, printScale: 1 } as const;
const FORT = { ...SHEET, pages: 4 } as const;

const fitted = (
  found: FoundMarkers,
  focal35Mm: number | null = null,
  sheet: typeof SHEET | typeof FORT = SHEET,
): FittedCamera => {
  const fit = fitCamera(found, sheet, { focal35Mm });
  if (!fit.ok) throw new Error(JSON.stringify(fit.issues));
  return fit.value;
};

const refusal = (found: FoundMarkers, focal35Mm: number | null = null) => {
  const fit = fitCamera(found, SHEET, { focal35Mm });
  return fit.ok ? null : fit.issues[0]!;
};

describe('exact markers give the camera that saw them', () => {
  it.each([
    [15, 0.09],
    [23, -0.07],
    [31, 0.03],
    [47, -0.1],
    [71, 0.05],
  ])('tilt %d degrees, k1 %d, no focal length in the file', (tilt, k1) => {
    const camera = fitted(seenMarkers(cameraAt(tilt, k1)));
    // Priors draw by their strength against corners taken to be good to 0.03 px.
    expectNear(camera.focalPx, 1231, { relative: 0.003 }, 'focal length');
    expectNear(camera.k1, k1, { absolute: 0.003 }, 'k1');
    for (const [x, y, z] of [
      [-90, 57, 0],
      [43, -31, 0],
      [17, 29, 110],
    ] as const) {
      expectPointNear(planePoint(camera, project(cameraAt(tilt, k1), [x, y, z]), z)!, [x, y], 0.1);
    }
  });
});

describe('straight from above', () => {
  it.each([-0.1, 0.1])('tilt 0 with k1 %d and a focal length in the file: the fit holds', (k1) => {
    const truth = cameraAt(0, k1);
    const camera = fitted(seenMarkers(truth), FOCAL_35_MM);
    expectNear(camera.k1, k1, { absolute: 0.005 });
    // The focal length is that of the file; a plane at the height of the sheet does not care.
    expectPointNear(planePoint(camera, project(truth, [61, -43, 0]), 0)!, [61, -43], 0.05);
    expectPointNear(planePoint(camera, project(truth, [61, -43, 90]), 90)!, [61, -43], 0.7);
  });

  it('without a focal length in the file the photo is refused: tilt it', () => {
    const { between } = diceOf(31);
    const issue = refusal(seenMarkers(cameraAt(1), () => between(-0.3, 0.3)))!;
    expect([issue.code, issue.mend]).toEqual(['focal-not-known', 'photograph-tilted']);
    expect(issue.details['sigmaShare']).toBeGreaterThan(0.05);
    expectNear(Number(issue.details['tiltRad']), 0, { absolute: 0.2 });
  });

  it('the same photo with a focal length in the file is taken', () => {
    const { between } = diceOf(31);
    const camera = fitted(
      seenMarkers(cameraAt(1), () => between(-0.3, 0.3)),
      FOCAL_35_MM,
    );
    expect(camera.focalSigmaShare).toBeLessThan(0.036);
  });
});

it('bloom: edges seen further inwards are told apart from a sheet further off', () => {
  const truth = cameraAt(21, 0.04);
  const seen = seenMarkers(truth);
  const bloomed = {
    ...seen,
    markers: seen.markers.map((one) => ({ ...one, corners: shiftedQuad(one.corners, 0.6) })),
  };
  const camera = fitted(bloomed);
  expectNear(camera.bloomPx, 0.6, { absolute: 0.01 });
  expectNear(camera.focalPx, 1231, { relative: 0.003 });
  expectPointNear(planePoint(camera, project(truth, [80, 50, 0]), 0)!, [80, 50], 0.03);
});

describe('a marker that is none of ours', () => {
  it('is left out and told, and moves nothing', () => {
    const truth = cameraAt(24, 0.03);
    const seen = seenMarkers(truth);
    const spoiled = {
      ...seen,
      markers: seen.markers.map((one) =>
        one.id === 5 ? { ...one, corners: one.corners.map(([u, v]) => [u + 11, v - 7] as const) as never } : one,
      ),
    };
    const camera = fitted(spoiled);
    expect(camera.strays).toEqual([5]);
    expect(camera.markers).toEqual([0, 1, 2, 3, 4, 6, 7]);
    expectPointNear(planePoint(camera, project(truth, [37, -20, 0]), 0)!, [37, -20], 0.05);
  });

  it('far away from its place it is left out too, and so is one of another page', () => {
    const seen = seenMarkers(cameraAt(24));
    const [first, ...others] = seen.markers;
    const far = { ...first!, corners: others[3]!.corners };
    const foreign = { ...others[0]!, id: 19 };
    const camera = fitted({ ...seen, markers: [far, ...others, foreign] });
    expect(camera.strays).toEqual([0, 19]);
  });
});

it('the four pages of a fort sheet are found where they really lie', () => {
  const dice = diceOf(77);
  const pages = pagesOf('a4', 4).map((place) =>
    place.page === 0
      ? place
      : {
          ...place,
          middleMm: [place.middleMm[0] + dice.between(-5, 5), place.middleMm[1] + dice.between(-5, 5)] as const,
          turnRad: dice.between(-0.02, 0.02),
        },
  );
  const camera = fitted(
    seenMarkers(cameraAt(22, -0.05, 900), () => 0, pages),
    null,
    FORT,
  );
  for (const { page, middleMm, turnRad } of pages) {
    const found = camera.places.find((place) => place.page === page)!;
    expectPointNear(found.middleMm, middleMm, 0.03, `page ${page}`);
    expectNear(found.turnRad, turnRad, { absolute: 1e-4 }, `page ${page}`);
  }
});

describe('refused, with what to do', () => {
  const seen = seenMarkers(cameraAt(25));
  it.each([
    ['no marker', { ...seen, markers: [] }, 'sheet-not-found', 'show-whole-sheet'],
    ['two markers', { ...seen, markers: seen.markers.slice(0, 2) }, 'too-few-markers', 'show-whole-sheet'],
    ['a small photo', { ...seen, widthPx: 1200, heightPx: 900 }, 'photo-too-small', 'take-larger-photo'],
  ] as const)('%s', (_, found, code, mend) => {
    expect([refusal(found)!.code, refusal(found)!.mend]).toEqual([code, mend]);
  });

  it('a sheet that is not flat', () => {
    const dice = diceOf(5);
    const issue = refusal(
      seenMarkers(cameraAt(25), () => dice.between(-7, 7)),
      FOCAL_35_MM,
    )!;
    expect([issue.code, issue.mend]).toEqual(['sheet-not-flat', 'lay-sheet-flat']);
  });

  it('a lens that cannot be: the sheet is another', () => {
    const issue = refusal(seenMarkers(cameraAt(25)), 2 * FOCAL_35_MM)!;
    expect([issue.code, issue.mend]).toEqual(['not-this-sheet', 'choose-other-sheet']);
  });
});

it('says how well it is known: over 60 noisy photos, errors are as large as stated', () => {
  const truth = cameraAt(24, 0.04);
  const [sigmas, corners]: [number[], number[]] = [[], []];
  for (let seed = 1; seed <= 60; seed += 1) {
    const { between } = diceOf(1000 * seed);
    // Even draws of this width have a deviation of 0.17 px.
    const camera = fitted(
      seenMarkers(truth, () => between(-0.3, 0.3)),
      FOCAL_35_MM,
    );
    sigmas.push(Math.log(camera.focalPx / 1231) / camera.focalSigmaShare);
    corners.push(camera.rmsPx);
  }
  const meanSquare = sigmas.reduce((sum, value) => sum + value * value, 0) / sigmas.length;
  // A chi square of 60 degrees of freedom over 60 lies within 0.6 and 1.5 all but once in a hundred times; the Huber weights add some.
  expect(meanSquare).toBeGreaterThan(0.5);
  expect(meanSquare).toBeLessThan(1.9);
  expectNear(corners.reduce((sum, value) => sum + value, 0) / corners.length, 0.17, { relative: 0.15 });
});

it('a plane point of the fitted camera shows where it came from', () => {
  const { camera } = fittedAt(33, -0.06);
  expectPointNear(imagePoint(camera, [...planePoint(camera, [311, 887], 47)!, 47])!, [311, 887], 1e-8);
});
