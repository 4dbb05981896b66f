import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Box3 } from '../kernel/box.ts';
import { earlierNeighbours } from './plan-grid.ts';

const SEED = 97;
const REACH_MM = 0.5;
const box = fc
  .tuple(
    fc.integer({ min: -40, max: 40 }),
    fc.integer({ min: -40, max: 40 }),
    fc.integer({ min: 4, max: 5 }),
    fc.integer({ min: 2, max: 5 }),
  )
  .map(([x, y, width, depth]): Box3 => ({ min: [x / 2, y / 2, 0], max: [x / 2 + width, y / 2 + depth, 3] }));

it(`finds just the earlier boxes within reach, latest first (seed ${SEED})`, () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 40 }), (boxes) => {
      const neighbours = earlierNeighbours(boxes, REACH_MM);
      boxes.forEach((a, index) => {
        const apart = (b: Box3, k: 0 | 1): number => Math.max(a.min[k] - b.max[k], b.min[k] - a.max[k]);
        const expected = boxes.slice(0, index).flatMap((b, other) => {
          return Math.max(apart(b, 0), apart(b, 1)) <= REACH_MM ? [other] : [];
        });
        expect(neighbours(index)).toEqual(expected.reverse());
      });
    }),
    { seed: SEED, numRuns: 300 },
  );
});
