// Level rings of vertices and the faces between them: what prisms, pyramids, frustums and antiprisms are made of.
// A ring runs counter-clockwise seen from above; its first edge is at the front (-y), parallel to x. mm.
// Faces come in a fixed order: the base, the top where there is one, then the sides, beginning at the front.

import type { Vec3 } from '../kernel/vec.ts';
import type { Loop, Polyhedron } from './polyhedron.ts';

/** The corners of a regular polygon of `sides` at height `zMm`, turned by `turnRad` from its front edge. */
export function ring(sides: number, radiusMm: number, zMm: number, turnRad = 0): readonly Vec3[] {
  const first = turnRad - Math.PI / 2 - Math.PI / sides;
  return Array.from({ length: sides }, (_, k): Vec3 => {
    const angle = first + (2 * Math.PI * k) / sides;
    return [radiusMm * Math.cos(angle), radiusMm * Math.sin(angle), zMm];
  });
}

/** The corners of a rectangle about the upright axis: `lengthMm` along x, `widthMm` along y. */
export function rectangle(lengthMm: number, widthMm: number, zMm: number): readonly Vec3[] {
  const [x, y] = [lengthMm / 2, widthMm / 2];
  return [
    [-x, -y, zMm],
    [x, -y, zMm],
    [x, y, zMm],
    [-x, y, zMm],
  ];
}

/** Prism or frustum: a top ring straight above a base ring, corner over corner. */
export function prismBetween(base: readonly Vec3[], top: readonly Vec3[]): Polyhedron {
  const n = base.length;
  const sides = edgesOf(n).map(([i, j]): Loop => [i, j, n + j, n + i]);
  return { vertices: [...base, ...top], loops: [seenFromBelow(n), loopOf(n, n), ...sides] };
}

/** Pyramid: a base ring and one apex. */
export function pyramidOver(base: readonly Vec3[], apex: Vec3): Polyhedron {
  const n = base.length;
  return { vertices: [...base, apex], loops: [seenFromBelow(n), ...edgesOf(n).map(([i, j]): Loop => [i, j, n])] };
}

/** Antiprism: each corner of the top ring stands between two of the base ring, the first over the front edge. */
export function antiprismBetween(base: readonly Vec3[], top: readonly Vec3[]): Polyhedron {
  const n = base.length;
  const sides = edgesOf(n).flatMap(([i, j]): Loop[] => [
    [i, j, n + i],
    [n + i, j, n + j],
  ]);
  return { vertices: [...base, ...top], loops: [seenFromBelow(n), loopOf(n, n), ...sides] };
}

/** Each corner of a ring with the next. */
export const edgesOf = (sides: number): readonly (readonly [number, number])[] =>
  Array.from({ length: sides }, (_, i) => [i, (i + 1) % sides]);

/** A ring as a face seen from above; its corners are numbered from `first`. */
export const loopOf = (sides: number, first: number): Loop => Array.from({ length: sides }, (_, i) => first + i);

/** The base ring as a face seen from below. */
export const seenFromBelow = (sides: number): Loop => [...loopOf(sides, 0)].reverse();
