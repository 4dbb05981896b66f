// An outline grown all round, by hand. mm.

import { describe, expect, it } from 'vitest';
import type { Vec2 } from '../kernel/vec.ts';
import { grownOutline } from './grown-outline.ts';

function expectPoints(grown: ReturnType<typeof grownOutline>, expected: readonly Vec2[]): void {
  if (grown.kind !== 'polygon') throw new Error('not a polygon');
  expect(grown.points).toHaveLength(expected.length);
  for (const [index, [x, y]] of grown.points.entries()) {
    expect(Math.abs(x - expected[index]![0])).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(y - expected[index]![1])).toBeLessThanOrEqual(1e-12);
  }
}

describe('grownOutline', () => {
  it('moves the edge of a disc', () => {
    expect(grownOutline({ kind: 'disc', centre: [3, 7], radiusMm: 5 }, 0.5)).toEqual({
      kind: 'disc',
      centre: [3, 7],
      radiusMm: 5.5,
    });
  });

  it('moves every side of an L out, also at its inner corner', () => {
    const points: Vec2[] = [
      [0, 0],
      [70, 0],
      [70, 30],
      [20, 30],
      [20, 50],
      [0, 50],
    ];
    const grown: Vec2[] = [
      [-2, -2],
      [72, -2],
      [72, 32],
      [22, 32],
      [22, 52],
      [-2, 52],
    ];
    expectPoints(grownOutline({ kind: 'polygon', points }, 2), grown);
  });

  it('moves it out whichever way round the ring was traced, and in where negative', () => {
    const clockwise: Vec2[] = [
      [0, 0],
      [0, 30],
      [70, 30],
      [70, 0],
    ];
    expectPoints(grownOutline({ kind: 'polygon', points: clockwise }, 2), [
      [-2, -2],
      [-2, 32],
      [72, 32],
      [72, -2],
    ]);
    expectPoints(grownOutline({ kind: 'polygon', points: clockwise }, -2), [
      [2, 2],
      [2, 28],
      [68, 28],
      [68, 2],
    ]);
  });

  it('bears a corner that was traced twice, and a ring that turns straight back', () => {
    const doubled: Vec2[] = [
      [0, 0],
      [70, 0],
      [70, 0],
      [70, 30],
      [0, 30],
    ];
    expectPoints(grownOutline({ kind: 'polygon', points: doubled }, 2), [
      [-2, -2],
      [72, -2],
      [72, 32],
      [-2, 32],
    ]);
    // The spike from (35, 30) up and straight back: its tip has no side to follow and stays.
    const spiked: Vec2[] = [
      [0, 0],
      [70, 0],
      [70, 30],
      [35, 30],
      [35, 60],
      [35, 30],
      [0, 30],
    ];
    const grown = grownOutline({ kind: 'polygon', points: spiked }, 2);
    if (grown.kind !== 'polygon') throw new Error('not a polygon');
    expect(grown.points[4]).toEqual([35, 60]);
  });
});
