// Second method for the drop of polyhedra, the slow and obvious way: no directions, no search, only features of the hulls
// of two point sets. The greatest height is met by a corner over a triangle, a triangle over a corner, or an edge over an
// edge; every triangle and every edge that the corners span is tried, so no hull is needed (a simplex inside a body only
// adds lower heights). Written without the code under test.

type Point = readonly [number, number, number];

/** The greatest b_z - a_z over points a, b of the two hulls with the same x and y; -Infinity when no such points exist. */
export function bruteForceDrop(upper: readonly Point[], lower: readonly Point[]): number {
  return Math.max(
    cornersOverTriangles(upper, lower, -1),
    cornersOverTriangles(lower, upper, 1),
    edgesOverEdges(upper, lower),
  );
}

/** `sign` is 1 where the corners belong to the lower body, -1 where they belong to the upper one. */
function cornersOverTriangles(corners: readonly Point[], body: readonly Point[], sign: number): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (const [i, a] of body.entries()) {
    for (const [j, b] of body.slice(0, i).entries()) {
      for (const c of body.slice(0, j)) {
        const area = turn(a, b, c);
        if (Math.abs(area) <= FLAT * span(a, b, c)) continue;
        for (const p of corners) {
          const weights = [turn(p, b, c) / area, turn(a, p, c) / area, turn(a, b, p) / area] as const;
          if (Math.min(...weights) < -EDGE) continue;
          const height = weights[0] * a[2] + weights[1] * b[2] + weights[2] * c[2];
          highest = Math.max(highest, sign * (p[2] - height));
        }
      }
    }
  }
  return highest;
}

function edgesOverEdges(upper: readonly Point[], lower: readonly Point[]): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (const [a, b] of pairs(upper)) {
    for (const [c, d] of pairs(lower)) {
      const [across, along] = [turn(a, b, d) - turn(a, b, c), turn(c, d, b) - turn(c, d, a)];
      if (Math.abs(across) <= FLAT * span(a, b, c, d)) continue;
      const onUpper = -turn(c, d, a) / along;
      const onLower = -turn(a, b, c) / across;
      if (Math.min(onUpper, 1 - onUpper, onLower, 1 - onLower) < -EDGE) continue;
      highest = Math.max(highest, c[2] + onLower * (d[2] - c[2]) - (a[2] + onUpper * (b[2] - a[2])));
    }
  }
  return highest;
}

/** Weights this far below 0 are rounding: the corner lies on the edge. */
const EDGE = 1e-12;

/** Triangles and crossings flatter than this (relative to their span squared) are upright seen from above: skipped. */
const FLAT = 1e-12;

/** Twice the signed area of the triangle seen from above. */
const turn = (a: Point, b: Point, c: Point): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** The square of the width of some points, seen from above. */
function span(...points: readonly Point[]): number {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return (Math.max(...xs) - Math.min(...xs)) ** 2 + (Math.max(...ys) - Math.min(...ys)) ** 2;
}

function pairs(points: readonly Point[]): (readonly [Point, Point])[] {
  return points.flatMap((a, i) => points.slice(0, i).map((b) => [a, b] as const));
}
