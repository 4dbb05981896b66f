// Ways to put a solid down. Laid on a side, its own upright axis points away from the viewer (+y); on its base or its
// top, its own x axis stays x. Heights in mm.

import { facingDown, rotate } from '../kernel/rotation.ts';
import { AXIS_NOISE } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { cross3, dot3, length3 } from '../kernel/vec.ts';
import type { Body } from './body.ts';
import { moveBody, supportPoint } from './body.ts';
import { shadow } from './shadow.ts';
import type { Resting } from './types.ts';

export const UP: Vec3 = [0, 0, 1];
export const DOWN: Vec3 = [0, 0, -1];

/** A side on which a solid can lie, in its own frame: `down` is the outward unit normal there. */
export interface Side {
  readonly id: string;
  readonly down: Vec3;
  readonly contact: Resting['contact'];
}

/** The usual way up of a solid with a flat base; upside down on its flat top. */
export const ON_BASE: Side = { id: 'base', down: DOWN, contact: 'face' };
export const ON_TOP: Side = { id: 'top', down: UP, contact: 'face' };

/** `body` put down on `side`; `fullCentroid` (own frame) becomes the origin of the plan. */
export function restOn(side: Side, body: Body, fullCentroid: Vec3): Resting {
  const rotation = facingDown(side.down, rightOf(side.down));
  const [x, y] = rotate(rotation, fullCentroid);
  const laid = moveBody(body, rotation, [-x, -y, 0]);
  const heightMm = dot3(supportPoint(laid, UP), UP) + dot3(supportPoint(laid, DOWN), DOWN);
  return { id: side.id, rotation, heightMm, outline: shadow(laid), contact: side.contact };
}

function rightOf(down: Vec3): Vec3 {
  const level = cross3(down, UP);
  return length3(level) > AXIS_NOISE ? level : [1, 0, 0];
}
