import { expect, it } from 'vitest';
import { KIT } from '../../../../tests/reference/small-class.ts';
import { wholePieces } from '../facts/pieces.ts';
import { kitIssues } from './kit.ts';

const withSlab = (changes: { stock?: number; crushed?: number }) => {
  const [slab, ...others] = KIT.kinds;
  return { ...KIT, kinds: [{ ...slab!, ...changes }, ...others] };
};

it('no more pieces are crushed than were made, which are 3', () => {
  expect(kitIssues(withSlab({ crushed: 3 }), [])).toEqual([]);
  expect(kitIssues(withSlab({ crushed: 4 }), [])).toEqual([
    { code: 'number-out-of-range', path: ['kinds', 0, 'crushed'], details: { value: 4, least: 0, most: 3 } },
  ]);
});

it('whole are those that are not crushed', () => {
  expect([wholePieces({ stock: 7 }), wholePieces({ stock: 7, crushed: 2 })]).toEqual([7, 5]);
});
