// Where a hand means to put a piece. mm; a px of the page is a mm here, counted from the middle of the sheet.

import type { LaidPiece, PlacedPiece, Vec3 } from '@cairnmark/geometry';
import { buildStack, makeSolid } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Sight } from './hand-place.ts';
import { handPlace } from './hand-place.ts';

const post = makeSolid({ solid: 'cube', sizes: { edge: 50 } });
const slab = makeSolid({ solid: 'rectangular-prism', sizes: { length: 140, width: 50, height: 10 } });
if (!post.ok || !slab.ok) throw new RangeError('posts and a slab');
const lay = (kind: string, xMm: number): LaidPiece => ({ kind, resting: 'base', xMm, yMm: 0, turnRad: 0 });
const built = buildStack(
  [lay('post', -50), lay('post', 50), lay('slab', 0)],
  new Map([
    ['post', post.value],
    ['slab', slab.value],
  ]),
  0,
);
const bridge: readonly PlacedPiece[] = built.ok ? built.value.pieces : [];

/** Looks level from the front at a drawing of 800 by 600; or down on an empty table. */
const sight = (isLevel: boolean): Sight => ({
  isLevel,
  nearest: (x, y) => {
    const place = [Math.min(400, Math.max(-400, x)), Math.min(300, Math.max(-300, y))] as const;
    return { place, isInside: place[0] === x && place[1] === y };
  },
  pick: (x, y) => ({ point: [x, y, 0], surfaceMm: 0 }),
  dragPlanePoint: (x, y, through): Vec3 => [x, through[1], -y],
});
const free = { by: [0, 0, 0], through: [0, 0, 0] } as const;

describe('the place of a hand', () => {
  it('a piece that is taken hold of away from its axis keeps that distance', () => {
    const grip = { by: [12, -7, 30], through: [0, 0, 0] } as const;
    expect(handPlace(sight(false), [100, 50], grip, [])).toEqual({ xMm: 88, yMm: 57, surfaceMm: 0, isOnTable: true });
  });

  it('beside the drawing it is off the table, and the piece is seen at the edge', () => {
    expect(handPlace(sight(false), [900, 0], free, [])).toMatchObject({ xMm: 400, isOnTable: false });
  });

  it('further out than a table reaches it is off the table too', () => {
    const far: Sight = { ...sight(false), pick: () => ({ point: [0, 2400, 0], surfaceMm: 0 }) };
    expect(handPlace(far, [0, 0], free, [])).toMatchObject({ yMm: 1500, isOnTable: false });
  });

  it.each([
    ['through the gap the table', [0, -20], 0],
    ['in front of a post the table', [50, -20], 0],
    ['above the slab its top', [0, -90], 60],
    ['past everything the table', [300, -90], 0],
  ] as const)('looked at level, it keeps its depth and comes down: %s', (_, at, surfaceMm) => {
    const grip = { by: [0, 0, 0], through: [0, 5, 0] } as const;
    expect(handPlace(sight(true), at, grip, bridge)).toEqual({ xMm: at[0], yMm: 5, surfaceMm, isOnTable: true });
  });
});
