// Heights from exact and from noisy taps on the tops of known pieces.

import type { SolidSpec, Vec2 } from '@cairnmark/geometry';
import { makeSolid, sub2 } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../../tests/reference/dice.ts';
import { project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { fittedAt } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { TopPiece } from './height-from-side.ts';
import { heightFromSide } from './height-from-side.ts';
import { topEnds, topPairs, topPoints, topSeen, topShapeOf } from './top-shape.ts';

const POSE = { xMm: 13, yMm: -17, turnRad: 0.4 };
const SURE = [0.01, 0, 0, 0.01] as const;

const topOf = (spec: SolidSpec, resting = 0, stackedMm = 140): TopPiece => {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return { shape: topShapeOf(made.value, made.value.restings[resting]!), pose: POSE, spotCovariance: SURE, stackedMm };
};

const cone: SolidSpec = { solid: 'cone', sizes: { radius: 21, height: 50 } };

describe('exact taps give the height, wherever the search begins', () => {
  it.each<readonly [string, SolidSpec, number]>([
    ['apex of a cone', cone, 0],
    ['apex of a pyramid', { solid: 'regular-pyramid', sizes: { sides: 4, edge: 29, height: 40 } }, 0],
    ['flat top of a box', { solid: 'rectangular-prism', sizes: { length: 61, width: 43, height: 50 } }, 0],
    ['flat top of a cylinder', { solid: 'cylinder', sizes: { radius: 22, height: 50 } }, 0],
    ['cylinder that lies', { solid: 'cylinder', sizes: { radius: 22, height: 50 } }, 1],
    ['ridge of a triangular prism', { solid: 'triangular-prism', sizes: { a: 40, b: 40, c: 40, height: 70 } }, 2],
  ])('%s', (_, spec, resting) => {
    const { truth, camera } = fittedAt(72, -0.03);
    const piece = topOf(spec, resting);
    const pixels = topSeen(camera, piece.shape, POSE, 133).map((point): Vec2 => project(truth, point));
    const found = heightFromSide(camera, piece, { pixels, sigmaPx: 2 });
    expectNear(found.ok ? found.value.heightMm : Number.NaN, 133, { absolute: 0.2 });
  });

  it('upper rim of a ball, which shows higher than its highest point', () => {
    const { truth, camera } = fittedAt(66, 0.05);
    const piece = topOf({ solid: 'sphere', sizes: { radius: 19 } });
    // By brute force: of 40 000 points of the ball the one that shows highest.
    const points = Array.from({ length: 200 }, (_, i) =>
      Array.from({ length: 200 }, (__, j) => {
        const [lat, long] = [Math.asin((i + 0.5) / 100 - 1), (Math.PI * j) / 100];
        const flat = 19 * Math.cos(lat);
        return project(truth, [13 + flat * Math.cos(long), -17 + flat * Math.sin(long), 114 + 19 * Math.sin(lat)]);
      }),
    ).flat();
    const highest = points.reduce((a, b) => (b[1] < a[1] ? b : a));
    const found = heightFromSide(camera, piece, { pixels: [highest], sigmaPx: 2 });
    expectNear(found.ok ? found.value.heightMm : Number.NaN, 133, { absolute: 0.2 });
    expect(highest[1]).toBeLessThan(project(truth, [13, -17, 133])[1] - 0.5);
  });
});

it('tells which corners were tapped, also where one stands behind the other', () => {
  const { truth, camera } = fittedAt(72, -0.03);
  const box = topOf({ solid: 'rectangular-prism', sizes: { length: 61, width: 43, height: 50 } }, 0, 133);
  let [told, ambiguous] = [0, 0];
  for (let turnRad = 0; turnRad < 3; turnRad += 0.17) {
    const piece = { ...box, pose: { ...POSE, turnRad } };
    const pairs = topPairs(camera, topPoints(camera, piece.shape, piece.pose, 133));
    if (pairs.length > 1) ambiguous += 1;
    for (const pair of pairs) {
      const shown = topEnds(camera, piece.shape, piece.pose, 133, pair).map((point): Vec2 => project(truth, point));
      const found = heightFromSide(camera, piece, { pixels: shown, sigmaPx: 2 });
      if (!found.ok) throw new Error(JSON.stringify(found.issues));
      const ends = topEnds(camera, piece.shape, piece.pose, found.value.heightMm, found.value.ends);
      const off = ends.map((end, k) => Math.hypot(...sub2(project(truth, end), shown[k]!)));
      if (Math.max(...off) < 2) told += 1;
    }
    told -= pairs.length;
  }
  expect(ambiguous).toBeGreaterThan(2);
  expect(told).toBe(0);
});

it('states its uncertainty: over 100 seeds errors are as large as stated', () => {
  const { truth, camera } = fittedAt(72);
  const piece: TopPiece = { ...topOf(cone), spotCovariance: [1, 0, 0, 1] };
  let sum = 0;
  for (let seed = 1; seed <= 100; seed += 1) {
    const { between } = diceOf(1000 * seed + 11);
    const normal = (): number => 2 * (between(0, 1) + between(0, 1) + between(0, 1) - 1.5);
    const [u, v] = project(truth, [POSE.xMm + normal(), POSE.yMm + normal(), 133]);
    const found = heightFromSide(camera, piece, { pixels: [[u + 2 * normal(), v + 2 * normal()]], sigmaPx: 2 });
    if (!found.ok) throw new Error(JSON.stringify(found.issues));
    sum += ((found.value.heightMm - 133) / found.value.sigmaMm) ** 2;
  }
  // A chi square of 100 over 100 scatters by a seventh.
  expect(sum / 100).toBeGreaterThan(0.6);
  expect(sum / 100).toBeLessThan(1.5);
});

describe('refused', () => {
  const { camera } = fittedAt(72);
  const codeOf = (found: ReturnType<typeof heightFromSide>): string => (found.ok ? 'ok' : found.issues[0]!.code);

  it('a photo from above', () => {
    expect(codeOf(heightFromSide(fittedAt(20).camera, topOf(cone), { pixels: [[800, 600]], sigmaPx: 2 }))).toBe(
      'view-too-steep',
    );
  });
  it('a flat top with one tap, a tap far beside the tower', () => {
    const box = topOf({ solid: 'cube', sizes: { edge: 50 } });
    expect(codeOf(heightFromSide(camera, box, { pixels: [[800, 600]], sigmaPx: 2 }))).toBe('taps-too-few');
    expect(codeOf(heightFromSide(camera, topOf(cone), { pixels: [[300, 500]], sigmaPx: 2 }))).toBe('taps-do-not-fit');
  });
});
