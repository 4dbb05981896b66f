import { expect, it } from 'vitest';
import { rowSizes } from './row-sizes.ts';

it('a value in sixteenths of an inch gets the room of all its letters', () => {
  expect(rowSizes(6, ['Puffins'], ['14 15/16 in', null])).toEqual({
    '--rows': 6,
    '--letters': 7,
    '--value-letters': 11,
  });
});
