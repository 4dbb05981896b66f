import { expect, it } from 'vitest';
import { interleave, median } from './measure.ts';

it('a way that does ten times the work takes more than three times as long', () => {
  const sums = (upTo: number) => () => {
    let sum = 0;
    for (let k = 0; k < upTo; k += 1) sum += Math.sqrt(k);
    return sum;
  };
  const times = interleave({ short: sums(3_000), long: sums(30_000) }, 7);
  expect(times.long / times.short).toBeGreaterThan(3);
});

it('a way that returns nothing is refused', () => {
  const nothing = (() => undefined) as unknown as () => number;
  expect(() => interleave({ nothing }, 3)).toThrow('the way nothing returns nothing');
});

it.each([
  [[7], 7],
  [[7, 3, 5], 5],
  [[7, 3, 11, 5], 6],
])('the median of %j is %d', (values, middle) => {
  expect(median(values)).toBe(middle);
});
