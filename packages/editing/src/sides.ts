// Left, right, back and front of a piece, as directions on the table: x to the right, y to the back.

import type { Side, Vec2 } from '@cairnmark/geometry';

/** Along which axis a side lies, and which way. */
export interface Direction {
  readonly axis: 0 | 1;
  readonly sign: 1 | -1;
}

export const DIRECTIONS: Readonly<Record<Side, Direction>> = {
  left: { axis: 0, sign: -1 },
  right: { axis: 0, sign: 1 },
  back: { axis: 1, sign: 1 },
  front: { axis: 1, sign: -1 },
};

export const ALL_SIDES: readonly Side[] = ['left', 'right', 'back', 'front'];

/** The unit vector towards a side. */
export function towards(side: Side): Vec2 {
  const { axis, sign } = DIRECTIONS[side];
  return axis === 0 ? [sign, 0] : [0, sign];
}

/** The side that a direction points to most; of two alike left or right. */
export function sideOf([x, y]: Vec2): Side {
  if (Math.abs(x) >= Math.abs(y)) return x < 0 ? 'left' : 'right';
  return y < 0 ? 'front' : 'back';
}

/** A point by its coordinate along an axis and the one across it. */
export const pointAt = (axis: 0 | 1, alongMm: number, acrossMm: number): Vec2 =>
  axis === 0 ? [alongMm, acrossMm] : [acrossMm, alongMm];
