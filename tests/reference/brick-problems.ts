// Builds of boxes straight as problems of statics, without any drop: left ends and levels along one line, depth 1.
// Any unit of length. All contacts are level rectangles.

import type { Patch, StaticProblem } from '@cairnmark/geometry';

export interface Brick {
  readonly left: number;
  readonly width: number;
  readonly bottom: number;
  readonly height: number;
  readonly depth: number;
  readonly massG: number;
}

export function brick(left: number, bottom: number, more: Partial<Brick> = {}): Brick {
  const { width = 1, height = 0.25, depth = 1 } = more;
  return { left, bottom, width, height, depth, massG: width * height * depth, ...more };
}

/** Every brick rests on the table, which reaches to `tableEnd`, and on all bricks whose top is at its bottom. */
export function wall(bricks: readonly Brick[], friction: number, tableEnd = 1e6): StaticProblem {
  const patches: Patch[] = [];
  const rest = (upper: number, lower: number | 'table', from: number, to: number, z: number, depth: number): void => {
    if (to <= from) return;
    const points = [
      [from, -depth / 2, z],
      [to, -depth / 2, z],
      [to, depth / 2, z],
      [from, depth / 2, z],
    ] as const;
    patches.push({ upper, lower, points, normal: [0, 0, 1], friction, disc: null, rolling: [] });
  };
  bricks.forEach((above, upper) => {
    const right = above.left + above.width;
    if (above.bottom === 0) rest(upper, 'table', above.left, Math.min(right, tableEnd), 0, above.depth);
    bricks.forEach((below, lower) => {
      if (Math.abs(below.bottom + below.height - above.bottom) > 1e-9) return;
      const [from, to] = [Math.max(below.left, above.left), Math.min(below.left + below.width, right)];
      rest(upper, lower, from, to, above.bottom, Math.min(above.depth, below.depth));
    });
  });
  const ends = bricks.flatMap(({ left, width }) => [left, left + width]);
  return {
    bodies: bricks.map(({ left, width, bottom, height, depth, massG }) => ({
      massG,
      centre: [left + width / 2, 0, bottom + height / 2],
      gyrationMm: Math.hypot(width, height, depth) / Math.sqrt(18),
    })),
    patches,
    sizeMm: Math.hypot(Math.max(...ends) - Math.min(...ends), Math.max(...bricks.map((b) => b.bottom + b.height)), 1),
  };
}
