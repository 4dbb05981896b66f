// Turns and shifts of the sheet that keep its printed side up. mm.

import type { Vec2 } from '@cairnmark/geometry';
import { length2, sub2 } from '@cairnmark/geometry';

/** p goes to (cos x - sin y, sin x + cos y) + shift. */
export interface Motion {
  readonly cos: number;
  readonly sin: number;
  readonly shift: Vec2;
}

export const STAY: Motion = { cos: 1, sin: 0, shift: [0, 0] };

export const moved = ({ cos, sin, shift }: Motion, [x, y]: Vec2): Vec2 => [
  cos * x - sin * y + shift[0],
  sin * x + cos * y + shift[1],
];

/** The motion that lays the line from `a` to `b` onto the line from `onA` to `onB`, which is as long. */
export function lay(a: Vec2, b: Vec2, onA: Vec2, onB: Vec2): Motion {
  const [from, to] = [sub2(b, a), sub2(onB, onA)];
  const product = length2(from) * length2(to);
  const cos = (from[0] * to[0] + from[1] * to[1]) / product;
  const sin = (from[0] * to[1] - from[1] * to[0]) / product;
  const turned = moved({ cos, sin, shift: [0, 0] }, a);
  return { cos, sin, shift: sub2(onA, turned) };
}

/** First `first`, then `then`. */
export function afterMotion(then: Motion, first: Motion): Motion {
  return {
    cos: then.cos * first.cos - then.sin * first.sin,
    sin: then.sin * first.cos + then.cos * first.sin,
    shift: moved(then, first.shift),
  };
}
