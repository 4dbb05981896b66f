// What is packed, and where it comes to lie. mm, x right, y up; the origin is the lower left corner of the space.

import type { Vec2 } from '@cairnmark/geometry';

export interface Item {
  readonly id: string;
  /** Items of one kind belong together where each kind has pages of its own: the wall and the discs of a cylinder. */
  readonly kind: string;
  /** Corners in order, the last joined to the first; it does not cross itself. Curves are flattened before. */
  readonly outline: readonly Vec2[];
}

/** What there is on a page for outlines. */
export interface Space {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** An outline turned about its origin by `turnRad`, counter-clockwise, then moved by `shiftMm`. */
export interface Placement {
  readonly id: string;
  readonly turnRad: number;
  readonly shiftMm: Vec2;
}

/** Told after every outline: how many are placed, of how many. False stops the work. */
export type Progress = (placed: number, of: number) => boolean;
