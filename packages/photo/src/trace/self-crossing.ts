// Whether two sides of a ring cross each other.

import type { Vec2 } from '@cairnmark/geometry';
import { cross2, sub2 } from '@cairnmark/geometry';

/** The numbers of the first two sides that do, by the corners that they begin at; null when none do. */
export function firstCrossing(ring: readonly Vec2[]): readonly [first: number, second: number] | null {
  const side = (k: number): readonly [Vec2, Vec2] => {
    const from = ring[k] ?? [0, 0];
    return [from, ring[(k + 1) % ring.length] ?? from];
  };
  for (let first = 0; first < ring.length; first += 1) {
    for (let second = first + 2; second < ring.length; second += 1) {
      const neighbours = first === 0 && second === ring.length - 1;
      if (!neighbours && cross(side(first), side(second))) return [first, second];
    }
  }
  return null;
}

function cross([a, b]: readonly [Vec2, Vec2], [c, d]: readonly [Vec2, Vec2]): boolean {
  const sideOf = (p: Vec2, q: Vec2, point: Vec2): number => Math.sign(cross2(sub2(q, p), sub2(point, p)));
  return sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;
}
