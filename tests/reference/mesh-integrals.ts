// Second method for volume, surface and centres of mass: sums over the triangles of a mesh (divergence theorem).
// mm. Nothing here knows a formula of any solid.

import type { Mesh, Vec3 } from '@cairnmark/geometry';

export type Triangle = readonly [Vec3, Vec3, Vec3];

export interface Integrals {
  readonly volume: number;
  readonly centroid: Vec3;
  readonly surface: number;
  readonly shellCentroid: Vec3;
  /** The shell without the triangles that lie on z = 0. */
  readonly openShellCentroid: Vec3;
}

export function trianglesOf({ positions, triangles }: Mesh): readonly Triangle[] {
  const corners = pointsOf(positions);
  return Array.from({ length: triangles.length / 3 }, (_, k): Triangle => {
    const [a, b, c] = [0, 1, 2].map((i) => corners[triangles[3 * k + i]!]!);
    return [a!, b!, c!];
  });
}

export function pointsOf(positions: readonly number[]): readonly Vec3[] {
  return Array.from({ length: positions.length / 3 }, (_, k): Vec3 => {
    return [positions[3 * k]!, positions[3 * k + 1]!, positions[3 * k + 2]!];
  });
}

/** Each triangle makes a signed tetrahedron with the origin, and a sheet of its own. */
export function integrate(triangles: readonly Triangle[]): Integrals {
  const solid = new Balance();
  const shell = new Balance();
  const open = new Balance();
  for (const [a, b, c] of triangles) {
    const middle = mean(a, b, c);
    const area = Math.hypot(...cross(minus(b, a), minus(c, a))) / 2;
    solid.put(dot(a, cross(b, c)) / 6, scaled(middle, 3 / 4));
    shell.put(area, middle);
    if (a[2] !== 0 || b[2] !== 0 || c[2] !== 0) open.put(area, middle);
  }
  return {
    volume: solid.weight,
    centroid: solid.point(),
    surface: shell.weight,
    shellCentroid: shell.point(),
    openShellCentroid: open.point(),
  };
}

/**
 * The value that the facets tend to, from a mesh and one with twice as many: the error of inscribed facets is even in
 * 1/n, so a third of the last step takes its first term away (Richardson).
 */
export function refined(coarse: Integrals, fine: Integrals): Integrals {
  const towards = (a: number, b: number): number => b + (b - a) / 3;
  const points = (a: Vec3, b: Vec3): Vec3 => [towards(a[0], b[0]), towards(a[1], b[1]), towards(a[2], b[2])];
  return {
    volume: towards(coarse.volume, fine.volume),
    centroid: points(coarse.centroid, fine.centroid),
    surface: towards(coarse.surface, fine.surface),
    shellCentroid: points(coarse.shellCentroid, fine.shellCentroid),
    openShellCentroid: points(coarse.openShellCentroid, fine.openShellCentroid),
  };
}

class Balance {
  weight = 0;
  private moment: Vec3 = [0, 0, 0];

  put(weight: number, [x, y, z]: Vec3): void {
    this.weight += weight;
    this.moment = [this.moment[0] + weight * x, this.moment[1] + weight * y, this.moment[2] + weight * z];
  }

  point(): Vec3 {
    return scaled(this.moment, 1 / this.weight);
  }
}

const scaled = ([x, y, z]: Vec3, k: number): Vec3 => [x * k, y * k, z * k];
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const mean = (a: Vec3, b: Vec3, c: Vec3): Vec3 => [
  (a[0] + b[0] + c[0]) / 3,
  (a[1] + b[1] + c[1]) / 3,
  (a[2] + b[2] + c[2]) / 3,
];
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
