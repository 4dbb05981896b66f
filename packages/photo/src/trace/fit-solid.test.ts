// Listed pieces from taps alone, against places that are known; what edges of a photo add is tested on photos (tests/reference/photos).

import type { Solid, SolidSpec, Vec2, Vec3 } from '@cairnmark/geometry';
import { CATALOGUE, makeSolid } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../../tests/reference/dice.ts';
import { lensOf, project } from '../../../../tests/reference/photos/camera-of-truth.ts';
import { fittedAt } from '../../../../tests/reference/photos/seen-markers.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { figureOf } from './figure.ts';
import type { ListedPiece, Taps } from './fit-solid.ts';
import { fitSolid } from './fit-solid.ts';
import type { PlanPose } from './pose.ts';
import { placed } from './pose.ts';
import { cornersSeen, rimSeen } from './rim.ts';

const { truth, camera } = fittedAt(24, 0.04);

const solidOf = (spec: SolidSpec): Solid => {
  const made = makeSolid(spec);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value;
};

const listed = (spec: SolidSpec, resting: string, bottomMm = 0): ListedPiece => {
  const solid = solidOf(spec);
  return { solid, resting: solid.restings.find(({ id }) => id === resting)!, bottomMm, bottomSigmaMm: 0.5 };
};

const WHERE: PlanPose = { xMm: 23, yMm: -31, turnRad: 0.7 };

/** Exact taps: corners by their numbers, or every third part of a rim. */
const tapsOn = (piece: ListedPiece, corners: readonly number[]): Taps => {
  const figure = figureOf(piece.solid, piece.resting)!;
  const points = cornersSeen(camera, figure, WHERE, piece.bottomMm);
  const rim = rimSeen(camera, figure, WHERE, piece.bottomMm, 3);
  const chosen = points.length > 0 ? corners.map((k) => points[k]!) : rim;
  return { pixels: chosen.map((point): Vec2 => project(truth, point)), sigmaPx: 2 };
};

const setBy = (piece: ListedPiece, taps: Taps) => {
  const found = fitSolid(null, camera, piece, taps);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
};

const box: SolidSpec = { solid: 'rectangular-prism', sizes: { length: 61, width: 43, height: 50 } };

describe('exact taps give the place back', () => {
  it.each<readonly [string, SolidSpec, string, number, readonly number[], number]>([
    // Turned by this much it is the same again: 0 for what is round.
    ['box, opposite corners', box, 'base', 0, [0, 2, 1], Math.PI],
    ['box on another, one side', box, 'base', 47, [1, 2, 3], Math.PI],
    [
      'hexagonal prism',
      { solid: 'regular-prism', sizes: { sides: 6, edge: 21, height: 55 } },
      'base',
      0,
      [0, 3],
      Math.PI / 3,
    ],
    [
      'even triangular prism on a side',
      { solid: 'triangular-prism', sizes: { a: 40, b: 40, c: 50, height: 70 } },
      'side-c',
      0,
      [0, 1, 2, 3],
      Math.PI,
    ],
    [
      'pyramid, by its base',
      { solid: 'regular-pyramid', sizes: { sides: 4, edge: 29, height: 40 } },
      'base',
      108,
      [0, 2],
      Math.PI / 2,
    ],
    [
      'frustum, by its top',
      { solid: 'regular-frustum', sizes: { sides: 5, edge: 50, topEdge: 30, height: 70 } },
      'base',
      0,
      [0, 1, 2],
      (2 * Math.PI) / 5,
    ],
    [
      'frustum upside down',
      { solid: 'regular-frustum', sizes: { sides: 5, edge: 50, topEdge: 30, height: 70 } },
      'top',
      0,
      [0, 1, 2],
      (2 * Math.PI) / 5,
    ],
    ['cylinder', { solid: 'cylinder', sizes: { radius: 22, height: 50 } }, 'base', 50, [], 0],
    ['cylinder that lies', { solid: 'cylinder', sizes: { radius: 22, height: 50 } }, 'side', 0, [0, 2, 1], Math.PI],
    ['cone', { solid: 'cone', sizes: { radius: 21, height: 50 } }, 'base', 96, [], 0],
    ['ball', { solid: 'sphere', sizes: { radius: 17 } }, 'round', 98, [], 0],
    ['half ball, flat side down', { solid: 'hemisphere', sizes: { radius: 17 } }, 'flat', 0, [], 0],
  ])('%s', (_, spec, restingId, bottomMm, corners, turnsBy) => {
    const piece = listed(spec, restingId, bottomMm);
    const found = setBy(piece, tapsOn(piece, corners));
    // The fitted camera is itself known to some hundredths of a millimetre.
    expectPointNear([found.pose.xMm, found.pose.yMm], [WHERE.xMm, WHERE.yMm], 0.1);
    if (turnsBy > 0) {
      const turn = (found.pose.turnRad - WHERE.turnRad) / turnsBy;
      expectNear((turn - Math.round(turn)) * turnsBy, 0, { absolute: 2e-3 }, 'turn');
    }
    expect(found.snapped).toBe(false);
  });
});

it('two taps on a square are told what else they may mean; a third decides', () => {
  const cube = listed({ solid: 'cube', sizes: { edge: 50 } }, 'base');
  const two = setBy(cube, tapsOn(cube, [0, 1]));
  // One side of a square: it may lie on either hand.
  expect(two.otherWays).toHaveLength(1);
  const three = setBy(cube, tapsOn(cube, [0, 1, 2]));
  expectPointNear([three.pose.xMm, three.pose.yMm], [WHERE.xMm, WHERE.yMm], 0.1);
});

it('a lopsided prism on its side covers the same rectangle either way round: both ways are told', () => {
  const prism = listed({ solid: 'triangular-prism', sizes: { a: 30, b: 40, c: 50, height: 70 } }, 'side-c');
  const found = setBy(prism, tapsOn(prism, [0, 1, 2]));
  const ways = [found.pose, ...found.otherWays].map(({ xMm, yMm }) => Math.hypot(xMm - WHERE.xMm, yMm - WHERE.yMm));
  expect(ways).toHaveLength(2);
  expectNear(Math.min(...ways), 0, { absolute: 0.1 });
});

it('the ball is held by the lines of sight that touch it, not by its shadow', () => {
  const ball = listed({ solid: 'sphere', sizes: { radius: 40 } }, 'round');
  const resting = ball.solid.restings[0]!;
  const centre: Vec3 = placed(WHERE, 0, [0, 0, 40]);
  const lens = lensOf(truth);
  // Touching points by another way: rays about the way to the centre, at the angle whose sine is r over the distance.
  const away = centre.map((value, k) => value - lens[k]!);
  const distance = Math.hypot(...away);
  const across = [away[1]! / Math.hypot(away[0]!, away[1]!), -away[0]! / Math.hypot(away[0]!, away[1]!), 0];
  const reach = Math.tan(Math.asin(40 / distance)) * distance;
  const other = [0, 1, 2].map(
    (k) => (away[(k + 1) % 3]! * across[(k + 2) % 3]! - away[(k + 2) % 3]! * across[(k + 1) % 3]!) / distance,
  );
  const pixels = [0.2, 2.3, 4.1].map((turn) => {
    const at = centre.map((value, k) => value + reach * (Math.cos(turn) * across[k]! + Math.sin(turn) * other[k]!));
    return project(truth, [at[0]!, at[1]!, at[2]!]);
  });
  const found = setBy({ ...ball, resting }, { pixels, sigmaPx: 2 });
  expectPointNear([found.pose.xMm, found.pose.yMm], [WHERE.xMm, WHERE.yMm], 0.1);
});

it('states its uncertainty: over 80 seeds errors are as large as stated', () => {
  const piece = listed(box, 'base');
  const exact = tapsOn(piece, [0, 2, 3]);
  let sum = 0;
  for (let seed = 1; seed <= 80; seed += 1) {
    const { between } = diceOf(1000 * seed + 3);
    const off = (): number => 2 * 2 * (between(0, 1) + between(0, 1) + between(0, 1) - 1.5);
    const found = setBy(piece, { sigmaPx: 2, pixels: exact.pixels.map(([u, v]) => [u + off(), v + off()] as const) });
    const c = found.covariance;
    sum += (found.pose.xMm - WHERE.xMm) ** 2 / c[0]! + (found.pose.yMm - WHERE.yMm) ** 2 / c[4]!;
  }
  // Two squares a seed, each 1 on the average; 160 of them scatter by a tenth.
  expect(sum / 160).toBeGreaterThan(0.6);
  expect(sum / 160).toBeLessThan(1.5);
});

it('a piece whose top is hidden is tapped on the face that it stands on', () => {
  const frustum: SolidSpec = { solid: 'regular-frustum', sizes: { sides: 4, edge: 50, topEdge: 30, height: 70 } };
  const piece = { ...listed(frustum, 'base', 40), by: 'base' as const };
  const corners = [0, 1, 2].map((k) => (k * Math.PI) / 2 + Math.PI / 4);
  const pixels = corners.map((turn): Vec2 => {
    const reach = 25 * Math.SQRT2;
    return project(truth, placed(WHERE, 40, [reach * Math.cos(turn), reach * Math.sin(turn), 0]));
  });
  const found = setBy(piece, { pixels, sigmaPx: 2 });
  expectPointNear([found.pose.xMm, found.pose.yMm], [WHERE.xMm, WHERE.yMm], 0.1);
});

describe('refused', () => {
  const piece = listed(box, 'base');
  const { pixels } = tapsOn(piece, [0, 2]);
  const codeOf = (of: ListedPiece, given: readonly Vec2[]) => {
    const found = fitSolid(null, camera, of, { pixels: given, sigmaPx: 2 });
    return found.ok ? 'ok' : `${found.issues[0]!.code} ${found.issues[0]!.path.join('.')}`;
  };
  it.each<readonly [string, readonly Vec2[], string]>([
    ['one tap', pixels.slice(0, 1), 'taps-too-few taps'],
    ['two taps in one place', [pixels[0]!, [pixels[0]![0] + 3, pixels[0]![1]]], 'taps-too-near taps.1'],
    ['a piece that is not so large', [pixels[0]!, [pixels[0]![0] + 300, pixels[0]![1]]], 'taps-do-not-fit taps'],
  ])('%s', (_, given, expected) => {
    expect(codeOf(piece, given)).toBe(expected);
  });

  it('a tap past the horizon', () => {
    const side = fittedAt(80);
    const found = fitSolid(null, side.camera, piece, {
      pixels: [
        [800, 900],
        [700, 2],
      ],
      sigmaPx: 2,
    });
    expect(found.ok ? '' : found.issues[0]!.code).toBe('tap-not-on-plane');
  });

  it('a cone on its side', () => {
    const cone = listed({ solid: 'cone', sizes: { radius: 21, height: 50 } }, 'side');
    expect(codeOf(cone, pixels)).toBe('nothing-to-tap ');
  });
});

it('every solid of the catalogue can be tapped the usual way up', () => {
  for (const { id, example } of Object.values(CATALOGUE)) {
    const solid = solidOf({ solid: id, sizes: example });
    expect(figureOf(solid, solid.restings[0]!), id).not.toBeNull();
  }
});
