// Sheets in rendered photos: every marker of all four pages, a print at 97 %, a plain sheet, and a table without any sheet.

import type { Vec2 } from '@cairnmark/geometry';
import type { PagePlace } from '@cairnmark/photo';
import {
  findMarkers,
  findSheet,
  MARKER_SIDE_MM,
  markersOf,
  measurePrintScale,
  pagesOf,
  planePoint,
  readPlainSheet,
  readSheet,
} from '@cairnmark/photo';
import { describe, expect, it } from 'vitest';
import { expectNear, expectPointNear } from '../../tools/within.ts';
import { quantile } from './accuracy.ts';
import type { TrueCamera } from './camera-of-truth.ts';
import { project } from './camera-of-truth.ts';
import { render } from './render.ts';
import type { Scene, Shot } from './scene.ts';
import { lookingAt } from './scene.ts';
import { readPhoto } from './truth.ts';

const SEED = 4711;
const BARE: Scene = { paper: 'a4', pages: [], printScale: 1, pieces: [], table: [0.2, 0.13, 0.07] };

const shotFrom = (tiltRad: number, distanceMm: number, k1: number): Shot & { readonly camera: TrueCamera } => {
  const size = { width: 1632, height: 1224 };
  const view = { tiltRad, headingRad: 0.2, rollRad: -0.08, distanceMm, focalPx: 1225, k1, zMm: 0 };
  return { ...size, camera: lookingAt(size, view), blurPx: 0.9, noise: 2 };
};

describe('all 32 markers', () => {
  const shot = shotFrom(0.3, 800, 0.06);
  const pages = pagesOf('a4', 4);
  const photo = render({ ...BARE, pages }, shot, SEED);
  const half = MARKER_SIDE_MM / 2;

  it('are found, each with its corners in order from the upper left, to a tenth of a pixel', () => {
    const { markers } = findMarkers(photo);
    expect(markers.map(({ id }) => id)).toEqual(Array.from({ length: 32 }, (_, k) => k));
    const off = markers.flatMap(({ id, corners }) => {
      const place = pages[Math.floor(id / 8)]!;
      const [x, y] = markersOf(place.page)[id % 8]!.centreMm;
      return corners.map((corner, k) => {
        const at = [x + (k === 0 || k === 3 ? -half : half), y + (k < 2 ? half : -half)] as const;
        const [u, v] = project(shot.camera, [place.middleMm[0] + at[0], place.middleMm[1] + at[1], 0]);
        return Math.hypot(corner[0] - u, corner[1] - v);
      });
    });
    expect(quantile(off, 0.5)).toBeLessThan(0.1);
    expect(Math.max(...off)).toBeLessThan(0.4);
  });

  it('of the same photo read as one page, those of page 0 are taken and the rest is told', () => {
    const read = readSheet(photo, { kind: 'ground', paper: 'a4', pages: 1, printScale: 1 }, { focal35Mm: 26 });
    expect(read.ok && read.value.markers).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(read.ok && read.value.strays).toHaveLength(24);
  });
});

describe('a sheet printed at 97 %', () => {
  const shot = shotFrom(0.35, 540, -0.05);
  const photo = render({ ...BARE, pages: pagesOf('a4', 1), printScale: 0.97 }, shot, SEED);
  const sheet = { kind: 'ground', paper: 'a4', pages: 1, printScale: 1 } as const;
  const read = (printScale: number) => {
    const fit = readSheet(photo, { ...sheet, printScale }, { focal35Mm: 26 });
    if (!fit.ok) throw new Error(JSON.stringify(fit.issues));
    return fit.value;
  };

  it('is told from its own edges, and set right', () => {
    const measured = measurePrintScale(photo, read(1), sheet);
    if (!measured.ok) throw new Error(JSON.stringify(measured.issues));
    const { scale, warning } = measured.value;
    expectNear(scale, 0.97, { absolute: 0.002 });
    expect([warning?.code, warning?.mend]).toEqual(['print-scale-off', 'print-at-full-size']);
    const pixel = project(shot.camera, [80, -50, 0]);
    // Uncorrected, 80 mm come out as 82.5: 6 % of an area.
    expectPointNear(planePoint(read(1), pixel, 0)!, [80 / 0.97, -50 / 0.97], 0.3);
    expectPointNear(planePoint(read(scale), pixel, 0)!, [80, -50], 0.3);
  });

  it('measured again with the right scale there is nothing to tell', () => {
    const again = measurePrintScale(photo, read(0.97), { ...sheet, printScale: 0.97 });
    expectNear(again.ok ? again.value.scale : Number.NaN, 0.97, { absolute: 0.002 });
  });
});

describe('a plain sheet', () => {
  const shot = shotFrom(0.4, 560, 0.04);
  // A page that no marker is on.
  const plain: PagePlace = { page: 4, middleMm: [0, 0], turnRad: 0 };
  const photo = render({ ...BARE, pages: [plain] }, shot, SEED);

  it.each([
    [false, 1],
    [true, -1],
  ])('is measured by its four edges (half turned: %s)', (halfTurned, sign) => {
    const read = readSheet(photo, { kind: 'plain', paper: 'a4', halfTurned }, { focal35Mm: 26 });
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expectNear(read.value.focalPx, 1225, { relative: 0.02 });
    for (const [x, y] of [
      [90, 60],
      [-70, 30],
      [20, -80],
    ] as const) {
      const seen = planePoint(read.value, project(shot.camera, [x, y, 0]), 0)!;
      expectPointNear(seen, [sign * x, sign * y] satisfies Vec2, 0.5);
    }
  });

  it('has no markers, and is no sheet of Letter', () => {
    expect(findMarkers(photo).markers).toEqual([]);
    const letter = readSheet(photo, { kind: 'plain', paper: 'letter', halfTurned: false }, { focal35Mm: 26 });
    expect(letter.ok ? 'ok' : letter.issues[0]!.code).not.toBe('ok');
  });
});

it('where the edges of a sheet pass for the other paper too, it is told which they fit better', () => {
  // Letter, from above at 32 degrees: taken for A4, with no focal length in the file, the camera seems a quarter further off.
  const photo = readPhoto('20261-05', 'top');
  const read = (paper: 'a4' | 'letter') => {
    return readPlainSheet(photo, { kind: 'plain', paper, halfTurned: false }, { focal35Mm: null });
  };
  const [right, wrong] = [read('letter'), read('a4')];
  expect([right.camera.ok, right.warning]).toEqual([true, null]);
  expect([wrong.camera.ok, wrong.warning?.code]).toEqual([true, 'not-this-sheet']);
  expect(right.halfTurned).not.toBeNull();
});

it('on a bare table there is no sheet', () => {
  const photo = render(BARE, shotFrom(0.4, 560, 0.04), SEED);
  expect(findMarkers(photo).markers).toEqual([]);
  expect(findSheet(photo)).toBeNull();
});
