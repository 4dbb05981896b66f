// Pieces that touch move together, by hand. mm of movement for each mm of a reading.

import { describe, expect, it } from 'vitest';
import type { Vec2 } from '../kernel/vec.ts';
import type { Link } from './in-touch.ts';
import { driftOf } from './in-touch.ts';

/** Both directions of a link between two pieces. */
function linked(
  count: number,
  pairs: readonly (readonly [number, number, Vec2 | null])[],
): readonly (readonly Link[])[] {
  const links: Link[][] = Array.from({ length: count }, () => []);
  for (const [a, b, normal] of pairs) {
    links[a]!.push({ to: b, normal });
    links[b]!.push({ to: a, normal: normal && [-normal[0], -normal[1]] });
  }
  return links;
}

describe('driftOf', () => {
  it('spreads a row of three about its middle, each pushed by half of both neighbours', () => {
    // Pieces 0 and 2 of the row (order 1 - 0 - 2) grow by 1 each, so by 0.5 to each side; piece 1 does not grow.
    const links = linked(3, [
      [1, 0, [1, 0]],
      [0, 2, [1, 0]],
    ]);
    const drift = driftOf(links, (piece) => (piece === 1 ? 0 : 0.5));
    // From piece 1: 0 moves 0.5, 2 moves 0.5 + 1; the middle of 0, 0.5, 1.5 is 2/3.
    const expected = [0.5 - 2 / 3, 0 - 2 / 3, 1.5 - 2 / 3];
    for (const [piece, movement] of drift.entries()) {
      expect(Math.abs(movement[0] - expected[piece]!)).toBeLessThanOrEqual(1e-15);
      expect(movement[1]).toBe(0);
    }
  });

  it('carries what stands on a piece, and leaves others alone', () => {
    const links = linked(4, [
      [0, 1, [0, 1]],
      [1, 2, null],
    ]);
    const drift = driftOf(links, () => 0.5);
    // 1 and, on it, 2 move by 1 from 0: about the middle of 0, 1, 1.
    const expected = [-2 / 3, 1 / 3, 1 / 3, 0];
    for (const [piece, movement] of drift.entries()) {
      expect(movement[0]).toBe(0);
      expect(Math.abs(movement[1] - expected[piece]!)).toBeLessThanOrEqual(1e-15);
    }
  });

  it('keeps side by side in touch before up and down, where both lead to a piece', () => {
    // 2 stands on 0 and beside 1, which stands beside 0: the way along the sides counts.
    const links = linked(3, [
      [0, 2, null],
      [0, 1, [1, 0]],
      [1, 2, [1, 0]],
    ]);
    const drift = driftOf(links, () => 0.5);
    expect(Math.abs(drift[2]![0] - drift[1]![0] - 1)).toBeLessThanOrEqual(1e-15);
    expect(Math.abs(drift[1]![0] - drift[0]![0] - 1)).toBeLessThanOrEqual(1e-15);
  });
});
