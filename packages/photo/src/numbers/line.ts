// The straight line through points some of which lie elsewhere: total least squares (Pearson 1901) with Huber's weights.

import type { Vec2 } from '@cairnmark/geometry';

export interface Line {
  /** A point on it, and its direction of length 1. */
  readonly through: Vec2;
  readonly along: Vec2;
  /** Weighted root mean square of the distances of the points, in their unit. */
  readonly rms: number;
}

/** Null with fewer than two points. Distances up to `usual` count fully, further ones with less and less weight. */
export function lineThrough(points: readonly Vec2[], usual: number): Line | null {
  if (points.length < 2) return null;
  let line = weightedLine(points, () => 1);
  for (let round = 0; round < ROUNDS; round += 1) {
    const { through, along } = line;
    line = weightedLine(points, ([x, y]) => {
      const across = Math.abs(along[0] * (y - through[1]) - along[1] * (x - through[0]));
      return across <= usual ? 1 : usual / across;
    });
  }
  return line;
}

/** Where two lines cross; null when they run alike. */
export function crossing(a: Line, b: Line): Vec2 | null {
  const sine = a.along[0] * b.along[1] - a.along[1] * b.along[0];
  if (Math.abs(sine) < LEAST_SINE) return null;
  const [dx, dy] = [b.through[0] - a.through[0], b.through[1] - a.through[1]];
  const way = (dx * b.along[1] - dy * b.along[0]) / sine;
  return [a.through[0] + way * a.along[0], a.through[1] + way * a.along[1]];
}

const ROUNDS = 4;
/** Lines nearer to parallel than a twentieth of a radian cross too far off to be a corner. */
const LEAST_SINE = 0.05;

function weightedLine(points: readonly Vec2[], weightOf: (point: Vec2) => number): Line {
  let [sum, x, y] = [0, 0, 0];
  const weights = points.map(weightOf);
  points.forEach((point, k) => {
    const weight = weights[k] ?? 0;
    sum += weight;
    x += weight * point[0];
    y += weight * point[1];
  });
  [x, y] = [x / sum, y / sum];
  let [xx, xy, yy] = [0, 0, 0];
  points.forEach((point, k) => {
    const weight = weights[k] ?? 0;
    const [dx, dy] = [point[0] - x, point[1] - y];
    xx += weight * dx * dx;
    xy += weight * dx * dy;
    yy += weight * dy * dy;
  });
  const turnRad = Math.atan2(2 * xy, xx - yy) / 2;
  const along: Vec2 = [Math.cos(turnRad), Math.sin(turnRad)];
  const acrossSq = along[1] ** 2 * xx - 2 * along[0] * along[1] * xy + along[0] ** 2 * yy;
  return { through: [x, y], along, rms: Math.sqrt(Math.max(0, acrossSq) / sum) };
}
