// The ladder of the drawn union with a boolean library that fails: it throws, loses area, or makes some up.

import polygonClipping from 'polygon-clipping';
import { beforeEach, expect, it, vi } from 'vitest';
import { box } from '../../../../tests/reference/outline-shapes.ts';
import { drawnUnion } from './drawn-union.ts';

type Union = typeof polygonClipping.union;

const real: Union = polygonClipping.union;
const union = vi.spyOn(polygonClipping, 'union');

const boxes = [box(0, 0, 7, 5), box(3, 2, 9, 9)];
const WELD_MM = 0.05;

beforeEach(() => {
  union.mockReset();
});

it.each([1, 2, 5, 7])('is drawn by a later way when the first %d fail', (failures) => {
  for (let k = 0; k < failures; k += 1) {
    union.mockImplementationOnce(() => {
      throw new Error('Unable to complete output ring');
    });
  }
  union.mockImplementation(real);
  const result = drawnUnion(boxes, WELD_MM);
  expect(result.ok && result.value.length).toBe(1);
  expect(union).toHaveBeenCalledTimes(failures + 1);
});

it.each<readonly [string, Union]>([
  [
    'always throws',
    () => {
      throw new Error('Unable to find segment');
    },
  ],
  ['finds nothing', () => []],
  ['loses one', (first) => real(first)],
  [
    'makes up a box',
    (first, ...others) =>
      real(first, ...others, [
        [
          [900000, 0],
          [990000, 0],
          [990000, 90000],
          [900000, 90000],
        ],
      ]),
  ],
])('is an issue with its area when the library %s', (_, broken) => {
  union.mockImplementation(broken);
  const area = 7 * 5 + 9 * 9 - 4 * 3;
  expect(drawnUnion(boxes, WELD_MM)).toEqual({
    ok: false,
    issues: [{ code: 'union-not-drawn', path: [], details: { outlines: 2, areaMm2: area } }],
  });
});
