// Rings as a shaky hand or a careless program leaves them: crossing themselves, walked twice, with spikes and doubles; mm.

import type { Outline, Vec2 } from '@cairnmark/geometry';
import type { Dice } from './dice.ts';
import { box, polygon } from './outline-shapes.ts';

/** A star path, an out-and-back spike, doubled points, a square walked twice with noise, or four times with a spike. */
export function tracedRing({ between, whole, oneOf }: Dice): Outline {
  const [x, y, r] = [between(-20, 20), between(-20, 20), between(10, 40)];
  const around = (angle: number, reach = r): Vec2 => [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
  const square = [0, 1, 2, 3].map((k) => around((Math.PI / 2) * k));
  const noisy = ([a, b]: Vec2): Vec2 => [a + between(-1e-14, 1e-14), b + between(-1e-14, 1e-14)];
  const corners = oneOf([5, 7, 9]);
  return oneOf([
    () => polygon(Array.from({ length: corners }, (_, k) => around((4 * Math.PI * k) / corners))),
    () => polygon([...square.slice(0, 2), around(1, 2 * r), ...square.slice(1)]),
    () => polygon(square.flatMap((p) => [p, p])),
    () => polygon([...square, ...square.map(noisy)]),
    () => polygon([...square, ...square, ...square, ...square, around(2, 1.5 * r), ...square]),
    () => polygon(Array.from({ length: whole(5, 12) }, () => around(between(0, 7), between(0, r)))),
    () =>
      polygon([...square, around(0), ...[3, 2, 1, 0].map((k) => around((Math.PI / 2) * k, r / 2)), around(0, r / 2)]),
  ])();
}

/** Bow-ties, boxes of the opposite turn over them, repeated and collinear points, rings of three equal points. */
export function degenerateRing({ between, oneOf }: Dice): Outline {
  const [x, y, w, h] = [between(-20, 20), between(-20, 20), between(5, 30), between(5, 30)];
  const at = (a: number, b: number): Vec2 => [x + a * w, y + b * h];
  return oneOf([
    () => polygon([at(0, 0), at(1, 1), at(1, 0), at(0, 1)]),
    () => polygon([...box(x, y, w, h).points].reverse()),
    () => polygon([at(0, 0), at(0.5, 0), at(0.5, 0), at(1, 0), at(1, 1), at(0, 1), at(0, 0)]),
    () => polygon([at(0, 0), at(0, 0), at(0, 0)]),
    () => polygon([at(0, 0), at(1, 0), at(0.25, 0), at(0.75, 0), at(1, 1)]),
    () => polygon([at(0, 0), at(1, 0)]),
  ])();
}
