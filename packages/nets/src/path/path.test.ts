// Paths: circles from cubics, areas in closed form, points near enough. mm.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { arcSteps, circlePath } from './arc.ts';
import { flattenPath, pathAreaMm2 } from './measure.ts';
import { endOf, straightPath, turnPath } from './path.ts';

test('a circle is eight cubics, none off it by more than 4.3 millionths of its radius', () => {
  const circle = circlePath([30, 50], 700);
  expect(circle.steps).toHaveLength(8);
  const off = flattenPath(circle, 1e-6).map(([x, y]) => Math.abs(Math.hypot(x - 30, y - 50) - 700));
  expect(Math.max(...off)).toBeLessThan(4.3e-6 * 700);
  expect(Math.max(...off)).toBeGreaterThan(3e-6 * 700);
  expectNear(pathAreaMm2(circle), Math.PI * 700 ** 2, { relative: 1e-5 });
});

test('an arc goes where it is told, either way round, in pieces of at most 45 degrees', () => {
  const degree = Math.PI / 180;
  for (const [from, to, pieces] of [
    [0, 45, 1],
    [0, 46, 2],
    [30, 330, 7],
    [330, 30, 7],
    [90, -180, 6],
  ] as const) {
    const steps = arcSteps([3, 5], 7, from * degree, to * degree);
    expect(steps).toHaveLength(pieces);
    expectPointNear(steps.at(-1)!.to, [3 + 7 * Math.cos(to * degree), 5 + 7 * Math.sin(to * degree)], 1e-12);
  }
});

test('the area of a path is exact: a parabola written as a cubic, two thirds of its box (Archimedes)', () => {
  const path = {
    start: [-3, 0] as const,
    // The quadratic with the control point (0, -10), raised to a cubic: height 5.
    steps: [{ kind: 'curve', c1: [-1, -20 / 3], c2: [1, -20 / 3], to: [3, 0] } as const],
    closed: true,
  };
  expectNear(pathAreaMm2(path), (2 / 3) * 6 * 5, { relative: 1e-14 });
});

const SEED = 30507;

test(`points of a path are as near to it as asked (seed ${SEED})`, () => {
  const coordinate = fc.double({ min: -200, max: 200, noNaN: true });
  const point = fc.tuple(coordinate, coordinate);
  fc.assert(
    fc.property(point, point, point, point, (start, c1, c2, to) => {
      const path = { start, steps: [{ kind: 'curve', c1, c2, to } as const], closed: false };
      const fine = flattenPath(path, 1e-4);
      const coarse = flattenPath(path, 1);
      for (const p of fine)
        expect(Math.min(...coarse.slice(1).map((b, k) => distance(p, coarse[k]!, b)))).toBeLessThan(1.001);
    }),
    { seed: SEED, numRuns: share(100, 10) },
  );
});

test('a turn goes counter-clockwise, then comes the shift; the form stays', () => {
  const path = straightPath(
    [
      [0, 0],
      [70, 0],
      [70, 30],
    ],
    true,
  );
  const turned = turnPath(path, Math.PI / 2, [5, 3]);
  expectPointNear(turned.start, [5, 3], 1e-12);
  expectPointNear(endOf(turned), [-25, 73], 1e-12);
  expectNear(pathAreaMm2(turned), 1050, { relative: 1e-12 });
  expect(() => straightPath([], true)).toThrow(RangeError);
});

function distance(
  [x, y]: readonly [number, number] | readonly number[],
  a: readonly number[],
  b: readonly number[],
): number {
  const [dx, dy] = [b[0]! - a[0]!, b[1]! - a[1]!];
  const along = Math.min(1, Math.max(0, ((x! - a[0]!) * dx + (y! - a[1]!) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x! - a[0]! - along * dx, y! - a[1]! - along * dy);
}
