// Maps between planes as pictures show them. Sources: Heckbert, Fundamentals of texture mapping and image warping, 1989 (square
// to quadrilateral); Hartley and Zisserman, Multiple view geometry, 2nd ed., 4.1 and 4.4 (direct linear transformation with
// normalised points).

import type { Vec2 } from '@cairnmark/geometry';
import { cholesky, solveCholesky } from './matrix.ts';

/** Nine numbers row by row; (x, y, 1) goes to (u w, v w, w). */
export type Homography = readonly number[];

export function mapBy(h: Homography, [x, y]: Vec2): Vec2 {
  const w = (h[6] ?? 0) * x + (h[7] ?? 0) * y + (h[8] ?? 0);
  return [((h[0] ?? 0) * x + (h[1] ?? 0) * y + (h[2] ?? 0)) / w, ((h[3] ?? 0) * x + (h[4] ?? 0) * y + (h[5] ?? 0)) / w];
}

/** The map of the unit square (0, 0), (1, 0), (1, 1), (0, 1) onto the corners. */
export function fromUnitSquare([a, b, c, d]: readonly [Vec2, Vec2, Vec2, Vec2]): Homography {
  const [sx, sy] = [a[0] - b[0] + c[0] - d[0], a[1] - b[1] + c[1] - d[1]];
  const [bx, by, dx, dy] = [b[0] - c[0], b[1] - c[1], d[0] - c[0], d[1] - c[1]];
  const whole = bx * dy - dx * by;
  const [g, h] = [(sx * dy - dx * sy) / whole, (bx * sy - sx * by) / whole];
  return [
    b[0] - a[0] + g * b[0],
    d[0] - a[0] + h * d[0],
    a[0],
    b[1] - a[1] + g * b[1],
    d[1] - a[1] + h * d[1],
    a[1],
    g,
    h,
    1,
  ];
}

/** The map that brings `from` to `to` best, four pairs or more; null where they do not determine one. */
export function homographyOf(from: readonly Vec2[], to: readonly Vec2[]): Homography | null {
  const [source, target] = [normaliserOf(from), normaliserOf(to)];
  const normal = new Float64Array(64);
  const right = new Float64Array(8);
  from.forEach((point, k) => {
    const [x, y] = source.apply(point);
    const [u, v] = target.apply(to[k] ?? [0, 0]);
    for (const [row, value] of [
      [[x, y, 1, 0, 0, 0, -u * x, -u * y], u],
      [[0, 0, 0, x, y, 1, -v * x, -v * y], v],
    ] as const) {
      row.forEach((a, i) => {
        row.forEach((b, j) => {
          normal[8 * i + j] = (normal[8 * i + j] ?? 0) + a * b;
        });
        right[i] = (right[i] ?? 0) + a * value;
      });
    }
  });
  const lower = cholesky(normal, 8);
  if (lower === null) return null;
  const between = [...solveCholesky(lower, 8, right), 1];
  return product(target.undo, product(between, source.matrix));
}

/** Moves the middle of the points to the origin and their mean distance from it to the square root of two. */
function normaliserOf(points: readonly Vec2[]): {
  apply: (point: Vec2) => Vec2;
  matrix: Homography;
  undo: Homography;
} {
  const count = points.length;
  const x = points.reduce((sum, point) => sum + point[0], 0) / count;
  const y = points.reduce((sum, point) => sum + point[1], 0) / count;
  const away = points.reduce((sum, point) => sum + Math.hypot(point[0] - x, point[1] - y), 0) / count;
  const scale = Math.SQRT2 / away;
  return {
    apply: (point) => [(point[0] - x) * scale, (point[1] - y) * scale],
    matrix: [scale, 0, -x * scale, 0, scale, -y * scale, 0, 0, 1],
    undo: [1 / scale, 0, x, 0, 1 / scale, y, 0, 0, 1],
  };
}

function product(a: Homography, b: Homography): Homography {
  return [0, 1, 2].flatMap((row) =>
    [0, 1, 2].map((column) => [0, 1, 2].reduce((sum, k) => sum + (a[3 * row + k] ?? 0) * (b[3 * k + column] ?? 0), 0)),
  );
}
