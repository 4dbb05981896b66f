// Hulls of outlines against closed forms and, for many, against the hull of points on their rims.

import { describe, expect, it } from 'vitest';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import { box, disc, moved, ngon, polygon, turn } from '../../../../tests/reference/outline-shapes.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { convexHull } from '../kernel/hull.ts';
import type { Outline } from '../kernel/outline.ts';
import { ringLengthMm, signedAreaMm2 } from '../kernel/polygon.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { hullOf } from './hull.ts';

const ring = (...points: Vec2[]): Outline => polygon(points);
const DIGITS = { relative: 1e-12 };

describe('known figures', () => {
  // Belts round two circles by quadrature; polygons on whole numbers by hand.
  it.each<readonly [string, readonly Outline[], number, number]>([
    ['belt 1, 1, 1', [disc(0, 0, 1), disc(1, 0, 1)], Math.PI + 2, 2 * Math.PI + 2],
    ['belt 5, 5, 6', [disc(0, 0, 5), disc(6, 0, 5)], 138.539816339745, 43.4159265358979],
    ['belt 3, 4, 5', [disc(0, 0, 3), disc(5, 0, 4)], 74.9722700143692, 32.1918233878419],
    ['belt 1, 3, 10', [disc(0, 0, 1), disc(10, 0, 3)], 56.5106625188025, 32.9677202397859],
    ['a disc in a disc', [disc(0, 0, 5), disc(1, 1, 2)], 25 * Math.PI, 10 * Math.PI],
    ['a disc twice', [disc(3, 7, 5), disc(3, 7, 5)], 25 * Math.PI, 10 * Math.PI],
    ['triangle 3-4-5', [ring([0, 0], [4, 0], [0, 3])], 6, 12],
    ['L', [ring([0, 0], [6, 0], [6, 3], [3, 3], [3, 6], [0, 6])], 31.5, 22.2426406871193],
    ['dart', [ring([0, 0], [4, 0], [1, 1], [0, 4])], 8, 13.6568542494924],
    ['pentagon', [ring([3, 4], [5, 11], [12, 8], [9, 5], [5, 6])], 35, 25.2212862125619],
    ['U fort', [box(0, 0, 10, 3), box(0, 0, 3, 8), box(7, 3, 3, 5)], 80, 36],
    ['plus', [box(2, 0, 2, 6), box(0, 2, 6, 2)], 28, 19.3137084989848],
    ['two squares', [box(0, 0, 4, 4), box(2, 2, 4, 4)], 32, 21.6568542494924],
    [
      'hexagram',
      [ngon(0, 0, Math.sqrt(3), 3, 0), ngon(0, 0, Math.sqrt(3), 3, Math.PI)],
      7.79422863405995,
      10.3923048454133,
    ],
    [
      'a square with discs at its corners',
      [0, 1, 2, 3].map((k) => disc(5 * (k % 2), 5 * (k >> 1), 2)),
      25 + 40 + 4 * Math.PI,
      20 + 4 * Math.PI,
    ],
    [
      'a disc and a point',
      [disc(0, 0, 3), ring([5, 0])],
      12 + 9 * (Math.PI - Math.acos(0.6)),
      8 + 6 * (Math.PI - Math.acos(0.6)),
    ],
    ['points', [ring([0, 0]), ring([4, 0]), ring([0, 3]), ring([1, 1])], 6, 12],
    ['a line, there and back', [ring([0, 0], [3, 4])], 0, 10],
    ['points on a line', [ring([0, 0]), ring([6, 8]), ring([3, 4])], 0, 20],
  ])('%s', (_, outlines, area, perimeter) => {
    for (const turnRad of [0, 0.7, 3]) {
      const hull = hullOf(outlines.map((one) => moved(one, turn(turnRad))));
      expectNear(hull.areaMm2, area, area === 0 ? { absolute: 1e-12 } : DIGITS, 'area');
      expectNear(hull.perimeterMm, perimeter, DIGITS, 'perimeter');
    }
  });

  it('of nothing and of one point', () => {
    expect(hullOf([])).toEqual({ areaMm2: 0, perimeterMm: 0, boundary: [] });
    expect(hullOf([ring([3, 5])])).toEqual({ areaMm2: 0, perimeterMm: 0, boundary: [] });
  });
});

it('the boundary goes round by lines and arcs, in the frame of the table', () => {
  const { boundary } = hullOf([disc(103, 5, 3), box(90, -4, 2, 18)]);
  expect(boundary.map((part) => part.kind).sort()).toEqual(['arc', 'arc', 'line', 'line', 'line', 'line', 'line']);
  const arc = boundary.find((part) => part.kind === 'arc');
  expect(arc?.centre).toEqual([103, 5]);
});

const SEED = 20260405;
it(`100 builds against the hull of 4 000 points on each rim (seed ${SEED})`, () => {
  for (let k = 0; k < 100; k += 1) {
    const { between, whole, oneOf } = diceOf(SEED + k);
    const outlines = times(whole(1, k % 10 === 0 ? 80 : 8), () =>
      oneOf([disc, (x: number, y: number, r: number) => ngon(x, y, r, 5, between(0, 7))])(
        between(0, 90),
        between(0, 90),
        between(1, 30),
      ),
    );
    const points = outlines.flatMap((one) =>
      one.kind === 'disc' ? ngon(one.centre[0], one.centre[1], one.radiusMm, 4000, 0).points : one.points,
    );
    const [corners, hull] = [convexHull(points, 1e-12), hullOf(outlines)];
    // A polygon of 4 000 corners lies inside its circle by (2 pi / n)^2 / 6 of the area.
    expectNear(hull.areaMm2, signedAreaMm2(corners), { relative: 5e-7 }, `area, case ${k}`);
    expectNear(hull.perimeterMm, ringLengthMm(corners), { relative: 5e-7 }, `perimeter, case ${k}`);
  }
});
