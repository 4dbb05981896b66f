// Each command on small builds, by hand: what it gives to the last digit, and how it is refused. mm.

import { describe, expect, it } from 'vitest';
import { benchOf, done, follow } from '../../../tests/reference/edited-builds.ts';
import { box, cone, cube, put } from '../../../tests/reference/stacked-builds.ts';
import { edit } from './edit.ts';
import { degreesOf, turnOf } from './grid.ts';
import { restingsOf } from './restings.ts';
import { stockLeft } from './stock.ts';
import type { Command, Pieces } from './types.ts';

const over = benchOf({ cube: cube(50), brick: box(70, 50, 30), cone: cone(30, 40) }, 2);
const tower: Pieces = [put('cube', 3, 5), put('brick', 8, 5), put('cone', 8, 7)];

const refusal = (pieces: Pieces, command: Command) => {
  const edited = edit(pieces, command, over);
  return edited.ok ? [] : edited.issues;
};

describe('adding', () => {
  it('the first stands in the middle, the next over the last', () => {
    const pieces = follow(
      [],
      [
        { do: 'add', kind: 'cube' },
        { do: 'offset', piece: 0, of: 'table', xMm: 3.004, yMm: 5 },
      ],
      over,
    );
    expect(done(pieces, { do: 'add', kind: 'cone' }, over)).toEqual({
      pieces: [put('cube', 3, 5), put('cone', 3, 5)],
      piece: 1,
      earlier: false,
    });
  });

  it('at a spot, on a side, turned', () => {
    const spot = { xMm: 12.3456, yMm: -0.001, surfaceMm: null, lineUp: 'free' } as const;
    const { pieces } = done([], { do: 'add-at', kind: 'brick', resting: 'long-side', degrees: 450, spot }, over);
    expect(JSON.stringify(pieces)).toBe(
      `[{"kind":"brick","resting":"long-side","xMm":12.35,"yMm":0,"turnRad":${Math.PI / 2}}]`,
    );
  });

  it('no more than there are', () => {
    const pieces = follow(
      [],
      [
        { do: 'add', kind: 'cube' },
        { do: 'copy', piece: 0 },
      ],
      over,
    );
    expect([...stockLeft(pieces, over)]).toEqual([
      ['cube', 0],
      ['brick', 2],
      ['cone', 2],
    ]);
    const spot = { xMm: 0, yMm: 0, surfaceMm: null, lineUp: 'free' } as const;
    for (const command of [
      { do: 'add', kind: 'cube' },
      { do: 'copy', piece: 1 },
      { do: 'add-at', kind: 'cube', resting: null, spot },
    ] as const) {
      expect(refusal(pieces, command)).toEqual([
        { code: 'none-left', path: ['kind'], details: { kind: 'cube', stock: 2 } },
      ]);
    }
  });

  it('a layout that uses more than there are is told, not mended', () => {
    const three = [put('cube', 0, 0), put('cube', 0, 0), put('cube', 0, 0)];
    expect(stockLeft(three, over).get('cube')).toBe(-1);
    expect(done(three, { do: 'turn-by', piece: 0, degrees: 15 }, over).pieces).toHaveLength(3);
  });

  it('a copy lies on top, loose and not yet weighed', () => {
    const pieces: Pieces = [put('cube', 3, 5, { turnRad: 1, on: 'table', held: 'taped', weighed: { massG: 7 } })];
    expect(done(pieces, { do: 'copy', piece: 0 }, over)).toEqual({
      pieces: [pieces[0], put('cube', 3, 5, { turnRad: 1 })],
      piece: 1,
      earlier: false,
    });
  });
});

describe('placing', () => {
  it('on another: centred on it', () => {
    const pieces: Pieces = [put('cube', 3, 5), put('cone', 100, 0)];
    expect(done(pieces, { do: 'put-on', piece: 1, of: 0 }, over).pieces).toEqual([pieces[0], put('cone', 3, 5)]);
  });

  it('in the middle of the table, or refused where another is in the way', () => {
    const pieces: Pieces = [put('cube', 100, 5), put('cone', 100, 0)];
    const middle = done(pieces, { do: 'put-on', piece: 0, of: 'table' }, over);
    expect(middle).toEqual({ pieces: [pieces[1], put('cube', 0, 0, { on: 'table' })], piece: 1, earlier: false });
    const issues = refusal(middle.pieces, { do: 'put-on', piece: 0, of: 'table' });
    expect(issues).toMatchObject([{ code: 'overlaps', path: ['pieces', 0, 'on'], details: { other: 1 } }]);
  });

  it('moved on top a piece is no longer bound to the table', () => {
    const pieces: Pieces = [put('cube', 0, 0, { on: 'table' }), put('brick', 100, 0)];
    const spot = { xMm: 100, yMm: 0, surfaceMm: 30, lineUp: 'free' } as const;
    expect(done(pieces, { do: 'move-to', piece: 0, spot }, over).pieces).toEqual([pieces[1], put('cube', 100, 0)]);
  });

  it('by its offset from another, from the table, or by a shift', () => {
    expect(done(tower, { do: 'offset', piece: 2, of: 1, xMm: -8.5, yMm: 0.126 }, over).pieces[2]).toEqual(
      put('cone', -0.5, 5.13),
    );
    expect(done(tower, { do: 'offset', piece: 2, of: 'table', xMm: 1, yMm: 2 }, over).pieces[2]).toEqual(
      put('cone', 1, 2),
    );
    const shifted = done(tower, { do: 'shift', pieces: [1, 2], xMm: 0.1, yMm: -5 }, over);
    expect(shifted).toEqual({
      pieces: [tower[0], put('brick', 8.1, 0), put('cone', 8.1, 2)],
      piece: 1,
      earlier: false,
    });
    expect(shifted.pieces[0]).toBe(tower[0]);
  });

  it('on the table where it is, or refused', () => {
    const apart: Pieces = [put('cube', 0, 0), put('cone', 100, 0)];
    const bound = done(apart, { do: 'stand', piece: 1, on: 'table' }, over).pieces;
    expect(bound[1]).toEqual(put('cone', 100, 0, { on: 'table' }));
    expect(done(bound, { do: 'stand', piece: 1, on: 'what-is-below' }, over).pieces).toEqual(apart);
    expect(refusal(tower, { do: 'stand', piece: 1, on: 'table' })).toMatchObject([
      { code: 'overlaps', path: ['pieces', 1, 'on'] },
    ]);
  });
});

describe('turning and laying', () => {
  it('turns are whole degrees from 0 up to 360', () => {
    const turned = (command: Command): number | undefined => done(tower, command, over).pieces[1]?.turnRad;
    expect(turned({ do: 'turn-to', piece: 1, degrees: 15 })).toBe((15 * Math.PI) / 180);
    expect(turned({ do: 'turn-to', piece: 1, degrees: -90 })).toBe((270 * Math.PI) / 180);
    expect(turned({ do: 'turn-by', piece: 1, degrees: 360 })).toBe(0);
    expect(turned({ do: 'turn-by', piece: 1, degrees: -0.4 })).toBe(0);
  });

  it('every degree is read back as itself', () => {
    for (let degrees = 0; degrees < 360; degrees++) expect(degreesOf(turnOf(degrees))).toBe(degrees);
  });

  it('on a named side, or the next one round', () => {
    const brick = over.solids.get('brick');
    expect(brick === undefined ? [] : restingsOf(brick)).toEqual(['base', 'long-side', 'short-side']);
    expect(done(tower, { do: 'lay-on', piece: 1, resting: 'short-side' }, over).pieces[1]?.resting).toBe('short-side');
    const sides = [1, 2, 3].map((times) => {
      const next = Array.from({ length: times }, (): Command => ({ do: 'lay-next', piece: 1 }));
      return follow(tower, next, over)[1]?.resting;
    });
    expect(sides).toEqual(['long-side', 'short-side', 'base']);
  });

  it('a side that it has not', () => {
    expect(refusal(tower, { do: 'lay-on', piece: 1, resting: 'dome' })).toEqual([
      {
        code: 'no-such-face',
        path: ['resting'],
        details: { kind: 'brick', resting: 'dome', known: 'base, long-side, short-side' },
      },
    ]);
  });

  it('turned into a neighbour on the table it is refused', () => {
    const pieces: Pieces = [put('cube', 0, 0), put('brick', 60, 0, { on: 'table' })];
    expect(refusal(pieces, { do: 'turn-by', piece: 1, degrees: 45 })).toMatchObject([
      { code: 'overlaps', path: ['pieces', 1, 'on'], details: { other: 0 } },
    ]);
  });
});

describe('order and the rest', () => {
  it('one piece to another place, the others as they were', () => {
    expect(done(tower, { do: 'reorder', piece: 0, to: 2 }, over)).toEqual({
      pieces: [tower[1], tower[2], tower[0]],
      piece: 2,
      earlier: false,
    });
  });

  it('refused where a piece bound to the table would have no room', () => {
    const pieces: Pieces = [put('cube', 0, 0, { on: 'table' }), put('brick', 10, 0)];
    expect(refusal(pieces, { do: 'reorder', piece: 1, to: 0 })).toMatchObject([
      { code: 'overlaps', path: ['pieces', 0, 'on'], details: { other: 1 } },
    ]);
  });

  it('held and let loose', () => {
    const taped = done(tower, { do: 'hold', piece: 1, held: 'taped' }, over).pieces;
    expect(taped[1]).toEqual({ ...tower[1], held: 'taped' });
    expect(done(taped, { do: 'hold', piece: 1, held: null }, over).pieces).toEqual(tower);
  });

  it('cleared', () => {
    expect(done(tower, { do: 'clear' }, over)).toEqual({ pieces: [], piece: null, earlier: false });
  });

  it('what changes nothing gives the same layout', () => {
    for (const command of [
      { do: 'turn-to', piece: 0, degrees: 360 },
      { do: 'hold', piece: 0, held: null },
      { do: 'reorder', piece: 1, to: 1 },
      { do: 'shift', pieces: [], xMm: 1, yMm: 1 },
      { do: 'offset', piece: 1, of: 0, xMm: 5, yMm: 0 },
    ] as const) {
      expect(done(tower, command, over).pieces, command.do).toBe(tower);
    }
  });
});

describe('refusals', () => {
  it.each<Command>([
    { do: 'take-off', piece: 3 },
    { do: 'copy', piece: -1 },
    { do: 'put-on', piece: 0, of: 0 },
    { do: 'put-beside', piece: 1, of: 1, side: 'left' },
    { do: 'offset', piece: 1, of: 1, xMm: 0, yMm: 0 },
    { do: 'reorder', piece: 0, to: 3 },
    { do: 'lay-next', piece: 7 },
    { do: 'shift', pieces: [0, 9], xMm: 1, yMm: 1 },
    { do: 'turn-to', piece: 0.5, degrees: 1 },
  ])('no such piece: %o', (command) => {
    expect(refusal(tower, command)).toMatchObject([{ code: 'no-such-piece', path: ['piece'], details: { count: 3 } }]);
  });

  it('a kind that the kit has not', () => {
    expect(refusal(tower, { do: 'add', kind: 'torus' })).toEqual([
      { code: 'kind-unknown', path: ['kind'], details: { kind: 'torus' } },
    ]);
  });

  it('off the floor, or nowhere', () => {
    const far = { xMm: 10_001, yMm: Number.NaN, surfaceMm: 0, lineUp: 'free' } as const;
    expect(refusal(tower, { do: 'move-to', piece: 1, spot: far })).toMatchObject([
      { code: 'position-too-far', path: ['pieces', 1, 'xMm'] },
      { code: 'position-not-finite', path: ['pieces', 1, 'yMm'] },
    ]);
    expect(refusal(tower, { do: 'add-at', kind: 'cube', resting: null, spot: far })).toMatchObject([
      { code: 'position-too-far', path: ['pieces', 3, 'xMm'] },
      { code: 'position-not-finite', path: ['pieces', 3, 'yMm'] },
    ]);
    expect(refusal(tower, { do: 'turn-by', piece: 2, degrees: Number.POSITIVE_INFINITY })).toMatchObject([
      { code: 'position-not-finite', path: ['pieces', 2, 'turnRad'] },
    ]);
  });

  it('a layout that cannot be built is told as it is', () => {
    const broken: Pieces = [put('cube', 0, 0), put('torus', 0, 0)];
    expect(
      refusal(broken, { do: 'move-to', piece: 0, spot: { xMm: 0, yMm: 0, surfaceMm: 0, lineUp: 'free' } }),
    ).toMatchObject([{ code: 'kind-unknown', path: ['pieces', 1, 'kind'] }]);
    expect(done(broken, { do: 'take-off', piece: 1 }, over).pieces).toEqual([put('cube', 0, 0)]);
  });
});
