// Near pairs against trying every pair, on boxes spread out, crowded, of very different sizes, and in one line.

import { expect, it } from 'vitest';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import type { Box } from './box.ts';
import { boxesMeet } from './box.ts';
import { forNearPairs, nearBoxes } from './near.ts';

const SEED = 20260408;

const boxAt = (x: number, y: number, w: number, d: number): Box => ({ minX: x, minY: y, maxX: x + w, maxY: y + d });

it.each([
  ['spread out', 200, 40, 200, 1],
  ['crowded', 20, 30, 20, 0],
  ['large and small', 300, 200, 300, 2],
  ['in one line', 400, 5, 0, 0.5],
  ['points', 30, 0, 30, 3],
] as const)(`%s (seed ${SEED})`, (_, width, size, depth, reachMm) => {
  const { between } = diceOf(SEED);
  const boxes = times(120, () =>
    boxAt(
      between(-width, width),
      between(-depth, depth),
      size * between(0, 1) ** 4,
      depth === 0 ? 0 : size * between(0, 1) ** 4,
    ),
  );
  const pairs: string[] = [];
  forNearPairs(boxes, reachMm, (i, j) => pairs.push(`${Math.min(i, j)} ${Math.max(i, j)}`));
  const expected = boxes.flatMap((a, i) =>
    boxes.flatMap((b, j) => (i < j && boxesMeet(a, b, reachMm) ? [`${i} ${j}`] : [])),
  );
  expect(pairs.sort()).toEqual(expected.sort());
  expect(expected.length).toBeGreaterThan(10);
  const near = nearBoxes(boxes, reachMm);
  expect(near.flatMap((list, i) => list.filter((j) => j > i).map((j) => `${i} ${j}`)).sort()).toEqual(expected);
});

it('none, one, and two in one place', () => {
  expect(nearBoxes([], 1)).toEqual([]);
  expect(nearBoxes([boxAt(3, 5, 7, 1)], 1)).toEqual([[]]);
  expect(nearBoxes([boxAt(3, 5, 0, 0), boxAt(3, 5, 0, 0)], 0)).toEqual([[1], [0]]);
});
