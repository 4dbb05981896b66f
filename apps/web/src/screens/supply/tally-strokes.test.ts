import fc from 'fast-check';
import { expect, it } from 'vitest';
import { share } from '../../../../../tests/tools/share.ts';
import { gatePath, gatesOf } from './tally-strokes.ts';

it('strokes come in fives', () => {
  expect([0, 3, 5, 12].map(gatesOf)).toEqual([[], [3], [5], [5, 5, 2]]);
});

it('as many strokes are drawn as were counted (seed 5221)', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 300 }), (count) => {
      const drawn = gatesOf(count).map(gatePath).join('');
      expect(drawn.split('M').length - 1).toBe(count);
    }),
    { seed: 5221, numRuns: share(300, 50) },
  );
});

it('the fifth goes across', () => {
  expect(gatePath(4)).not.toContain('L');
  expect(gatePath(5)).toMatch(/M1 23L34 7$/);
});
