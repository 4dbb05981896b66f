// The arithmetic under the fits, against closed forms.

import { describe, expect, it } from 'vitest';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { fromUnitSquare, homographyOf, mapBy } from './homography.ts';
import { leastSquares } from './least-squares.ts';
import { crossing, lineThrough } from './line.ts';
import { cholesky, inverseCholesky, propagate, solveCholesky } from './matrix.ts';
import { votedLine } from './voted-line.ts';

describe('Cholesky', () => {
  // [[4, 2], [2, 3]]: L = [[2, 0], [1, sqrt 2]], inverse [[3, -2], [-2, 4]] / 8.
  const lower = cholesky(Float64Array.of(4, 2, 2, 3), 2)!;
  it('decomposes, solves and inverts', () => {
    expectPointNear([...lower], [2, 0, 1, Math.SQRT2], 1e-15);
    expectPointNear([...solveCholesky(lower, 2, [8, 7])], [1.25, 1.5], 1e-14);
    expectPointNear([...inverseCholesky(lower, 2)], [0.375, -0.25, -0.25, 0.5], 1e-15);
  });
  it('refuses what is not positive definite', () => {
    expect(cholesky(Float64Array.of(1, 2, 2, 1), 2)).toBeNull();
  });
});

it('uncertainty goes through a product by the law of propagation', () => {
  // y = 3 a - 5 b, variances 2 and 7, covariance 1: 9 * 2 + 25 * 7 - 2 * 15 = 163.
  expectNear(propagate([Float64Array.of(3, -5)], [2, 1, 1, 7])[0]!, 163, { absolute: 1e-12 });
});

describe('least squares', () => {
  // A straight line through (k, 2 k + 1) for k = 0 to 9.
  const line = (spoil: number) =>
    leastSquares({
      start: [0, 0],
      residuals: ([slope = 0, rise = 0]) =>
        Float64Array.from({ length: 10 }, (_, k) => slope * k + rise - (2 * k + 1 + (k === 7 ? spoil : 0))),
      measured: 10,
      steps: [1e-4, 1e-4],
    })!;
  it('finds a line, and its covariance as the textbook has it', () => {
    const { parameters, covariance, converged } = line(0);
    expectPointNear([...parameters], [2, 1], 1e-6);
    expect(converged).toBe(true);
    // Variance of the slope: 1 over the sum of (k - 4.5)^2 = 82.5.
    expectNear(covariance[0]!, 1 / 82.5, { relative: 1e-6 });
  });
  it('is led astray by an outlier of 100 no further than one of two deviations would', () => {
    expectPointNear([...line(100).parameters], [2, 1], 0.5);
    expect(line(100).weights[7]).toBeLessThan(0.02);
  });
  it('Rosenbrock: the narrow valley from (-1.2, 1) to (1, 1) (Rosenbrock 1960)', () => {
    const found = leastSquares({
      start: [-1.2, 1],
      residuals: ([x = 0, y = 0]) => Float64Array.of(10 * (y - x * x), 1 - x),
      measured: 0,
      steps: [1e-7, 1e-7],
    })!;
    expectPointNear([...found.parameters], [1, 1], 1e-6);
  });
  it('says so where nothing is determined, and where the start is no number', () => {
    const flat = { start: [0, 0], measured: 1, steps: [1e-3, 1e-3] };
    expect(leastSquares({ ...flat, residuals: ([x = 0]) => Float64Array.of(x) })).toBeNull();
    expect(leastSquares({ ...flat, residuals: () => Float64Array.of(Number.NaN) })).toBeNull();
  });
});

describe('lines', () => {
  it('the line of most points, not of the one that lies off', () => {
    const points = [0, 1, 2, 3, 4, 5, 6].map((k) => [k, k === 3 ? 9 : 2 + k / 2] as const);
    const { through, along } = lineThrough(points, 0.1)!;
    expectNear(along[1] / along[0], 0.5, { absolute: 0.02 });
    expectNear(through[1] - through[0] / 2, 2, { absolute: 0.1 });
  });
  it('cross where they cross, and not at all when they run alike', () => {
    const at = (x: number, y: number, turn: number) => ({
      through: [x, y] as const,
      along: [Math.cos(turn), Math.sin(turn)] as const,
      rms: 0,
    });
    expectPointNear(crossing(at(0, 0, 0), at(3, 5, Math.PI / 2))!, [3, 0], 1e-12);
    expect(crossing(at(0, 0, 0.3), at(3, 5, 0.31))).toBeNull();
  });
  it('a voted line is that of most places, nearer ones before further ones', () => {
    const places = Array.from({ length: 9 }, (_, along) => ({ along, values: [2 + along / 8, 5, along % 3] }));
    const search = { leastApart: 3, mostSlope: 0.3, nearness: 0.1 };
    const near = votedLine(places, { ...search, cost: (middle) => 0.05 * Math.abs(middle) })!;
    expectPointNear([near.middle, near.slope, near.support], [2, 0.125, 1], 1e-9);
    const level = votedLine(places, { ...search, mostSlope: 0.1, cost: () => 0 })!;
    expectPointNear([level.middle, level.slope], [5, 0], 1e-9);
    expect(votedLine([], { ...search, cost: () => 0 })).toBeNull();
  });
});

describe('maps between planes', () => {
  const corners = [
    [1, 2],
    [9, 3],
    [8, 11],
    [2, 7],
  ] as const;
  it('the unit square to a quadrilateral, corner by corner', () => {
    const map = fromUnitSquare([...corners]);
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ].forEach(([x, y], k) => {
      expectPointNear(mapBy(map, [x!, y!]), corners[k]!, 1e-12);
    });
  });
  it('by least squares it is the same map, and there is none of points on a line', () => {
    const from = [
      [-30, -20],
      [30, -20],
      [30, 20],
      [-30, 20],
    ] as const;
    const map = homographyOf([...from], [...corners])!;
    const other = fromUnitSquare([...corners]);
    expectPointNear(mapBy(map, [6, -4]), mapBy(other, [0.6, 0.4]), 1e-9);
    const line = [0, 1, 2, 3].map((k) => [k, k] as const);
    expect(homographyOf(line, line)).toBeNull();
  });
});
