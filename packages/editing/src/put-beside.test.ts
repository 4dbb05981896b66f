// Beside: touching the true outline of the neighbour and never in it, at whatever turn; on the surface it stands on. mm.

import type { LaidPiece, Side } from '@cairnmark/geometry';
import { besideEachOther, CONTACT_MM, planOverlapDepth } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bench, benchOf, done, follow, stackAt } from '../../../tests/reference/edited-builds.ts';
import { box, cylinder, put } from '../../../tests/reference/stacked-builds.ts';
import { share } from '../../../tests/tools/share.ts';
import { edit } from './edit.ts';
import { onGrid, turnOf } from './grid.ts';
import { restingsOf } from './restings.ts';
import { ALL_SIDES } from './sides.ts';

const SEED = 20261129;

/** mm. Pieces may not overlap; rounding of a turned corner is a millionth of this. */
const NEVER_MM = 1e-6;

const side = fc.constantFrom<Side>(...ALL_SIDES);
const degrees = fc.oneof(fc.constantFrom(0, 45, 90), fc.integer({ min: 0, max: 359 }));
const offGrid = fc.double({ min: -80, max: 80, noNaN: true });

it(`touches the neighbour, on its side, and is not in it (seed ${SEED})`, () => {
  fc.assert(
    fc.property(
      bench,
      fc.nat(),
      fc.nat(),
      degrees,
      degrees,
      side,
      offGrid,
      offGrid,
      (over, n, m, turn, turned, to, xMm, yMm) => {
        const any = [...over.solids].flatMap(([kind, solid]) =>
          restingsOf(solid).map((resting) => ({ kind, resting })),
        );
        const [one, other] = [any[n % any.length], any[m % any.length]];
        if (one === undefined || other === undefined) throw new Error('no kinds');
        const pieces: readonly LaidPiece[] = [
          { ...one, xMm, yMm, turnRad: turnOf(turn) },
          { ...other, xMm: 300, yMm: 300, turnRad: turnOf(turned) },
        ];
        const edited = done(pieces, { do: 'put-beside', piece: 1, of: 0, side: to }, over);
        const stack = stackAt(edited.pieces, over);
        const [fixed, moved] = stack.pieces;
        if (fixed === undefined || moved === undefined) throw new Error('no pieces');
        const depthMm = planOverlapDepth(moved.outline, fixed.outline);
        expect(depthMm).toBeLessThanOrEqual(NEVER_MM);
        expect(depthMm).toBeGreaterThanOrEqual(-CONTACT_MM);
        expect(besideEachOther(stack)).toMatchObject([{ first: 0, second: 1 }]);
        expect(moved.bottomMm).toBe(0);
        const laid = edited.pieces[1];
        expect(laid?.on).toBe('table');
        const isAcross = to === 'left' || to === 'right';
        expect(isAcross ? laid?.yMm : laid?.xMm).toBe(onGrid(isAcross ? yMm : xMm));
        const along = isAcross ? (laid?.xMm ?? 0) - xMm : (laid?.yMm ?? 0) - yMm;
        expect(to === 'right' || to === 'back' ? along : -along).toBeGreaterThan(0);
      },
    ),
    { seed: SEED, numRuns: share(2000, 60) },
  );
});

const over = benchOf(
  { cube: box(50, 50, 50), odd: box(33.33, 20.01, 41), drum: cylinder(20, 50), slab: box(120, 80, 10) },
  9,
);

describe('faces that touch', () => {
  it.each([
    ['right', 50, 0],
    ['left', -50, 0],
    ['back', 0, 50],
    ['front', 0, -50],
  ] as const)('two cubes, %s: whole faces', (to, xMm, yMm) => {
    const pieces = follow(
      [],
      [
        { do: 'add', kind: 'cube' },
        { do: 'add', kind: 'cube' },
      ],
      over,
    );
    const { pieces: now } = done(pieces, { do: 'put-beside', piece: 1, of: 0, side: to }, over);
    expect(now[1]).toEqual(put('cube', xMm, yMm, { on: 'table' }));
    const areas = stackAt(now, over)
      .faceContacts.filter(({ second }) => second !== 'table')
      .map(({ areaMm2 }) => areaMm2);
    expect(areas).toEqual([2500]);
  });

  it.each([0, 90, 180, 270])('sizes off the grid, both turned by %i degrees', (turn) => {
    const pieces = [put('odd', 1 / 3, 2 / 3, { turnRad: turnOf(turn) }), put('odd', 200, 0, { turnRad: turnOf(turn) })];
    const { pieces: now } = done(pieces, { do: 'put-beside', piece: 1, of: 0, side: 'right' }, over);
    const sides = stackAt(now, over).faceContacts.filter(({ second }) => second !== 'table');
    expect(sides).toHaveLength(1);
  });
});

describe('the surface', () => {
  const onSlab = follow(
    [],
    [
      { do: 'add', kind: 'slab' },
      { do: 'add', kind: 'drum' },
      { do: 'offset', piece: 1, of: 0, xMm: 20, yMm: 0 },
      { do: 'add', kind: 'drum' },
    ],
    over,
  );

  it('is that of the neighbour: on the slab, and not bound to the table', () => {
    const { pieces, earlier } = done(onSlab, { do: 'put-beside', piece: 2, of: 1, side: 'left' }, over);
    expect(pieces[2]).toEqual(put('drum', -20, 0));
    expect(stackAt(pieces, over).pieces[2]?.bottomMm).toBe(10);
    expect(earlier).toBe(false);
  });

  it('half past the edge of the slab still that; all past it what is there', () => {
    const half = done(onSlab, { do: 'put-beside', piece: 2, of: 1, side: 'right' }, over).pieces;
    expect(half[2]).toEqual(put('drum', 60, 0));
    expect(stackAt(half, over).pieces[2]?.bottomMm).toBe(10);
    const further = follow(onSlab, [{ do: 'offset', piece: 1, of: 0, xMm: 41, yMm: 0 }], over);
    const past = done(further, { do: 'put-beside', piece: 2, of: 1, side: 'right' }, over).pieces;
    expect(past[2]).toEqual(put('drum', 81, 0));
    expect(stackAt(past, over).pieces[2]?.bottomMm).toBe(0);
  });

  it('on the table a third piece in the way refuses, with its number before', () => {
    const pieces = [put('slab', 300, 0), put('cube', 0, 0), put('cube', 0, 200), put('cube', 60, 0)];
    const beside = edit(pieces, { do: 'put-beside', piece: 0, of: 1, side: 'right' }, over);
    expect(beside).toMatchObject({
      ok: false,
      issues: [{ code: 'overlaps', path: ['pieces', 0, 'on'], details: { other: 3 } }],
    });
  });

  it('a neighbour that stands on the piece comes down to the table first', () => {
    const pieces = follow(
      [],
      [
        { do: 'add', kind: 'cube' },
        { do: 'add', kind: 'drum' },
      ],
      over,
    );
    const { pieces: now, piece } = done(pieces, { do: 'put-beside', piece: 0, of: 1, side: 'left' }, over);
    expect(now).toEqual([put('drum', 0, 0), put('cube', -45, 0, { on: 'table' })]);
    expect(piece).toBe(1);
    expect(stackAt(now, over).pieces.map(({ bottomMm }) => bottomMm)).toEqual([0, 0]);
  });

  it('under an overhang it fits, one that is too tall does not', () => {
    const arm = [put('drum', 0, 0), put('slab', 30, 0)];
    const low = follow(
      arm,
      [
        { do: 'add', kind: 'cube' },
        { do: 'put-beside', piece: 2, of: 0, side: 'right' },
      ],
      over,
    );
    expect(stackAt(low, over).pieces.map(({ bottomMm }) => bottomMm)).toEqual([0, 50, 0]);
    const tall = benchOf({ drum: cylinder(20, 50), slab: box(120, 80, 10), post: box(20, 20, 51) }, 9);
    const grown = follow(arm, [{ do: 'add', kind: 'post' }], tall);
    const refused = edit(grown, { do: 'put-beside', piece: 2, of: 0, side: 'right' }, tall);
    expect(refused).toMatchObject({
      ok: false,
      issues: [{ code: 'overlaps', path: ['pieces', 2, 'on'], details: { other: 1 } }],
    });
  });
});
