// Areas of touching faces in closed form; mm2. Areas of some thousand mm2 on corners rounded to 1e-14: 1e-9 mm2.

import { describe, expect, it } from 'vitest';
import {
  box,
  cone,
  cube,
  cylinder,
  put,
  solidsOf,
  sphere,
  stackOf,
} from '../../../../tests/reference/stacked-builds.ts';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import type { FaceContact, LaidPiece, Stack } from './types.ts';

const AREA = { absolute: 1e-9 };
const solids = solidsOf({
  cube: cube(50),
  slab: box(120, 80, 10),
  drum: cylinder(25, 40),
  disc: cylinder(10, 4),
  cone: cone(25, 40),
  ball: sphere(25),
});
const areas = (stack: Stack, first: number, second: FaceContact['second']): number[] =>
  stack.faceContacts.filter((one) => one.first === first && one.second === second).map(({ areaMm2 }) => areaMm2);

/** The areas of contact between the first two pieces. */
const between = (...pieces: readonly LaidPiece[]): number[] => areas(stackOf(pieces, solids), 0, 1);

function expectOne(found: readonly number[], areaMm2: number): void {
  expect(found).toHaveLength(1);
  expectNear(found[0] ?? 0, areaMm2, AREA);
}

describe('lying on each other', () => {
  it.each<[string, LaidPiece, LaidPiece, number]>([
    ['cube on cube', put('cube', 0, 0), put('cube', 0, 0), 2500],
    ['cube on cube, 20 off', put('cube', 0, 0), put('cube', 20, 0), 1500],
    ['cube on cube, off both ways', put('cube', 0, 0), put('cube', 20, -15), 1050],
    [
      'cube on cube, turned by 45 degrees',
      put('cube', 0, 0),
      put('cube', 0, 0, { turnRad: Math.PI / 4 }),
      2500 * 2 * (Math.SQRT2 - 1),
    ],
    ['drum on a cube', put('cube', 0, 0), put('drum', 0, 0), 625 * Math.PI],
    ['cone on a cube', put('cube', 0, 0), put('cone', 0, 0), 625 * Math.PI],
    ['drum half over the edge', put('slab', 0, 0), put('drum', 60, 0), (625 * Math.PI) / 2],
    [
      'drum on a drum, apart by a radius',
      put('drum', 0, 0),
      put('drum', 25, 0),
      625 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2),
    ],
    ['disc on a drum', put('drum', 0, 0), put('disc', 9, 3), 100 * Math.PI],
    ['cube on a slab', put('slab', 0, 0), put('cube', 50, 30), 35 * 35],
  ])('%s', (_, lower, upper, areaMm2) => expectOne(between(lower, upper), areaMm2));

  it('round on flat touches without area', () => {
    const onSide = put('drum', 0, 0, { resting: 'side' });
    expect(between(put('cube', 0, 0), put('ball', 0, 0, { resting: 'round' }))).toEqual([]);
    expect(between(put('cube', 0, 0), onSide)).toEqual([]);
    expect(between(put('ball', 0, 0, { resting: 'round' }), put('cube', 0, 0))).toEqual([]);
  });

  it('the table takes the whole face, and nothing of a ball', () => {
    const pieces = [
      put('cube', 0, 0),
      put('drum', 100, 0),
      put('ball', 200, 0, { resting: 'round' }),
      put('cube', 0, 0),
    ];
    const stack = stackOf(pieces, solids);
    expectOne(areas(stack, 0, 'table'), 2500);
    expectOne(areas(stack, 1, 'table'), 625 * Math.PI);
    expect(areas(stack, 2, 'table')).toEqual([]);
    expect(areas(stack, 3, 'table')).toEqual([]);
  });
});

describe('side by side', () => {
  /** Two pieces in one line, the whole turned. */
  const beside = (apartMm: number, turnRad: number, sideMm = 0): number[] => {
    const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
    const x = c * apartMm - s * sideMm;
    const y = s * apartMm + c * sideMm;
    return between(put('cube', 3, 5, { turnRad }), put('cube', 3 + x, 5 + y, { turnRad }));
  };

  it.each([0, Math.PI / 6, 1, 3])('flush cubes, turned together by %d', (turnRad) => {
    expectOne(beside(50, turnRad), 2500);
    expectOne(beside(50, turnRad, 20), 1500);
  });

  it.each([0, Math.PI / 6])(
    'turned by %d, a gap of 0.04 is contact, one of 0.06 is not; so for a press of 0.04',
    (turnRad) => {
      expectOne(beside(50.04, turnRad), 2500);
      expect(beside(50.06, turnRad)).toEqual([]);
      expectOne(beside(49.96, turnRad), 2500);
    },
  );

  it('at a corner or along an edge there is no contact', () => {
    expect(beside(50, 0, 50)).toEqual([]);
    const stack = stackOf([put('cube', 0, 0), put('cube', 50, 0), put('cube', 0, 0)], solids);
    expect(areas(stack, 1, 2)).toEqual([]);
  });

  it('not parallel: 0.0005 rad apart touches, 0.002 does not, nor does 0.0009 over a gap that opens to 0.07', () => {
    const turned = (turnRad: number, apartMm: number): number[] =>
      between(put('cube', 0, 0), put('cube', apartMm, 0, { turnRad }));
    expect(turned(0.0005, 50)).toHaveLength(1);
    expect(turned(0.002, 50)).toEqual([]);
    expect(turned(0.0009, 50.05)).toEqual([]);
  });

  it('one cube beside two that stand on each other', () => {
    const stack = stackOf([put('cube', 0, 0), put('cube', 0, 0), put('slab', 85, 0), put('cube', 50, 0)], solids);
    // The last cube stands on the slab, 10 up: 40 of it beside the lower cube, 10 beside the upper one.
    expectOne(areas(stack, 0, 3), 40 * 50);
    expectOne(areas(stack, 1, 3), 10 * 50);
    expectOne(areas(stack, 0, 2), 10 * 50);
  });
});

describe('slanted', () => {
  it('a frustum leaning upside down against one that stands: it rests on the slope, faces crossed like a roof', () => {
    const frustum = solidsOf({
      block: { solid: 'rectangular-frustum', sizes: { length: 70, width: 50, topLength: 42, height: 60 } },
    });
    // Half the length is 35 - 14 t standing and 21 + 14 t upside down, t from 0 to 1 upwards: 56 together at every height.
    const lean = put('block', 56, 0, { resting: 'top', on: 'table' });
    const stack = stackOf([put('block', 0, 0), lean], frustum);
    // Half the width common to both is the less of 25 - 10 t and 15 + 10 t, 17.5 on average; the slope is this long:
    const slope = Math.hypot(14, 60);
    expectOne(areas(stack, 0, 1), 35 * slope);
    expectPointNear(stack.supports.find(({ lower }) => lower === 0)?.normal ?? [], [60 / slope, 0, 14 / slope], 1e-12);
  });

  it('octahedra side by side on a face: a face that overhangs against one that leans back, half of each', () => {
    const solid = solidsOf({ stone: { solid: 'octahedron', sizes: { edge: 50 } } });
    const stone = (x: number, y: number): LaidPiece => put('stone', x, y, { resting: 'face', on: 'table' });
    const [alone] = stackOf([stone(0, 0)], solid).pieces;
    const back = alone?.flatFaces.find(({ normal }) => normal[2] > 0.1 && normal[2] < 0.9)?.normal ?? [0, 0, 0];
    // The faces are 2 x 50 / sqrt 6 apart and lean by asin 1/3: level, that is 50 sqrt(3) / 2.
    const level = (25 * Math.sqrt(3)) / Math.hypot(back[0], back[1]);
    const stack = stackOf([stone(0, 0), stone(level * back[0], level * back[1])], solid);
    expectOne(areas(stack, 0, 1), (2500 * Math.sqrt(3)) / 8);
  });
});
