// Lining up with the piece below, with neighbours and with the grid, by hand. A 30 mm tile over a 120 by 80 mm slab. mm.

import { besideEachOther } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { benchOf, stackAt } from '../../../tests/reference/edited-builds.ts';
import { box, cylinder, put } from '../../../tests/reference/stacked-builds.ts';
import { settle } from './drag.ts';
import { turnOf } from './grid.ts';
import { GRID_MM, LINE_UP_MM } from './line-up.ts';
import type { Pieces, Spot } from './types.ts';

const over = benchOf({ slab: box(120, 80, 10), tile: box(30, 30, 5), drum: cylinder(20, 50) }, 9);

function settled(pieces: Pieces, kind: string, spot: Partial<Spot>, degrees = 0): readonly [x: number, y: number] {
  const at: Spot = { xMm: 0, yMm: 0, surfaceMm: null, lineUp: 'piece-below', ...spot };
  const ghost = settle(pieces, { kind, resting: null, degrees }, at, over);
  if (!ghost.ok) throw new Error(JSON.stringify(ghost.issues));
  return [ghost.value.piece.xMm, ghost.value.piece.yMm];
}

it('distances are these', () => {
  expect([GRID_MM, LINE_UP_MM]).toEqual([5, 6]);
});

describe('the piece below', () => {
  const slab: Pieces = [put('slab', 10, 20)];

  it.each([
    ['centre on centre', [13, 16], [10, 20]],
    ['along one axis alone', [30, 15], [30, 20]],
    ['too far from anything', [30.123, 4.456], [30.12, 4.46]],
    ['flush with the right edge', [51, 8], [55, 8]],
    ['flush with the left edge from outside', [-36, 2], [-35, 2]],
    ['flush in the corner', [57, 43], [55, 45]],
  ] as const)('%s', (_, [xMm, yMm], expected) => {
    expect(settled(slab, 'tile', { xMm, yMm, surfaceMm: 10 })).toEqual(expected);
    expect(settled(slab, 'tile', { xMm, yMm })).toEqual(expected);
  });

  it('turned or round pieces have no level edges: centre on centre alone', () => {
    expect(settled(slab, 'tile', { xMm: 51, yMm: 17 }, 30)).toEqual([51, 20]);
    expect(settled(slab, 'drum', { xMm: 48, yMm: 17 })).toEqual([48, 20]);
    expect(settled([put('slab', 10, 20, { turnRad: turnOf(45) })], 'tile', { xMm: 13, yMm: 30 })).toEqual([10, 30]);
  });

  it('of two the one that was pointed at', () => {
    const pieces: Pieces = [put('slab', 0, 0), put('slab', 4, 4)];
    expect(settled(pieces, 'tile', { xMm: 3, yMm: 3 })).toEqual([4, 4]);
    expect(settled(pieces, 'tile', { xMm: 3, yMm: 3, surfaceMm: 10 })).toEqual([0, 0]);
  });

  it('over the table there is none', () => {
    expect(settled(slab, 'tile', { xMm: 201.004, yMm: 3, surfaceMm: 0 })).toEqual([201, 3]);
  });
});

describe('what stands on the same surface', () => {
  const wall: Pieces = [put('tile', 0, 0)];

  it.each([
    ['a gap is closed', [34, 12], [30, 12]],
    ['an overlap is opened', [27, 12], [30, 12]],
    ['and the walls run on', [33, 4], [30, 0]],
    ['to the left', [-33, 0], [-30, 0]],
    ['behind', [5, 35], [0, 30]],
    ['too far', [37, 12], [37, 12]],
  ] as const)('%s', (_, [xMm, yMm], expected) => {
    expect(settled(wall, 'tile', { xMm, yMm, surfaceMm: 0 })).toEqual(expected);
  });

  it('a drum against a turned tile touches its true outline', () => {
    const turned: Pieces = [put('tile', 0, 0, { turnRad: turnOf(30) })];
    const ghost = settle(
      turned,
      { kind: 'drum', resting: null },
      { xMm: 36, yMm: 9, surfaceMm: 0, lineUp: 'piece-below' },
      over,
    );
    if (!ghost.ok) throw new Error('refused');
    const stack = stackAt(ghost.value.pieces, over);
    expect(besideEachOther(stack)).toHaveLength(1);
    expect(stack.pieces.map(({ bottomMm }) => bottomMm)).toEqual([0, 0]);
  });

  it('on top of it nothing is pushed aside', () => {
    expect(settled(wall, 'tile', { xMm: 12, yMm: 12, surfaceMm: 5 })).toEqual([12, 12]);
    expect(settled(wall, 'tile', { xMm: 33, yMm: 12 })).toEqual([33, 12]);
  });

  it('on a slab: against the neighbour, flush with the slab', () => {
    const pieces: Pieces = [put('slab', 0, 0), put('tile', 45, 10)];
    expect(settled(pieces, 'tile', { xMm: 17, yMm: 27, surfaceMm: 10 })).toEqual([15, 25]);
  });
});

it('the grid takes the centre to multiples of 5 mm', () => {
  expect(settled([], 'tile', { xMm: 12.6, yMm: -2.4, lineUp: 'grid' })).toEqual([15, 0]);
  expect(JSON.stringify(settled([], 'tile', { xMm: -1, yMm: -2.6, lineUp: 'grid' }))).toBe('[0,-5]');
});

it('free only rounds', () => {
  expect(settled([put('slab', 10, 20)], 'tile', { xMm: 10.0149, yMm: 20.9951, lineUp: 'free' })).toEqual([10.01, 21]);
});
