// Second method for the overlap depth of two shadows: the least reach of their Minkowski difference over the normals of
// every line through two points of either set. The normals of the hulls' edges are among them, and no other direction
// gives less, so no hull and no order of the corners is needed.

type Point = readonly number[];

/** Depth by which the hulls of two point sets overlap seen from above; at most 0 when they do not. */
export function bruteForcePlanDepth(upper: readonly Point[], lower: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [ux, uy] of [...normalsOf(upper), ...normalsOf(lower)]) {
    const along = (p: Point): number => (p[0] ?? 0) * ux + (p[1] ?? 0) * uy;
    const [highest, lowest] = [Math.max(...lower.map(along)), Math.min(...upper.map(along))];
    least = Math.min(least, highest - lowest);
  }
  return least;
}

function normalsOf(points: readonly Point[]): (readonly [number, number])[] {
  return points.flatMap(([ax = 0, ay = 0]) =>
    points.flatMap(([bx = 0, by = 0]) => {
      const length = Math.hypot(bx - ax, by - ay);
      return length > 0 ? [[(by - ay) / length, (ax - bx) / length] as const] : [];
    }),
  );
}
