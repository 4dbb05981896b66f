import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshSeed, share } from '../../../../../../tests/tools/share.ts';
import { fiveNumbers } from './quartiles.ts';

interface Published {
  readonly quartiles: {
    readonly data: readonly number[];
    readonly median: number;
    readonly withoutMedian: readonly [number, number];
    readonly withMedian: readonly [number, number];
  };
}

/** Worked out for the points lab; where they come from stands in the file. */
const LAB = new URL('../../../../../../tests/corpus/points-examples.json', import.meta.url);
const { quartiles }: Published = JSON.parse(readFileSync(LAB, 'utf8'));

describe('the five numbers of a box plot', () => {
  it.each([
    ['without-median', quartiles.withoutMedian],
    ['with-median', quartiles.withMedian],
  ] as const)('the quartiles of an odd count, %s', (rule, [lower, upper]) => {
    const mixed = [...quartiles.data].reverse();
    expect(fiveNumbers(mixed, rule)).toEqual({ least: 2, lower, median: quartiles.median, upper, most: 15 });
  });

  // By hand: 1 3 4 7 8 10 has the halves 1 3 4 and 7 8 10, whatever the rule.
  it('with an even count both rules say the same', () => {
    const values = [10, 3, 8, 1, 7, 4];
    const five = { least: 1, lower: 3, median: 5.5, upper: 8, most: 10 };
    expect(fiveNumbers(values, 'without-median')).toEqual(five);
    expect(fiveNumbers(values, 'with-median')).toEqual(five);
  });

  it('one value is all five; no value has none', () => {
    const seven = { least: 7, lower: 7, median: 7, upper: 7, most: 7 };
    expect(fiveNumbers([7], 'without-median')).toEqual(seven);
    expect(fiveNumbers([7], 'with-median')).toEqual(seven);
    expect(fiveNumbers([], 'with-median')).toBeNull();
  });

  const seed = freshSeed('quartiles');
  it(`they stand in order, and a whole quarter of the values lies on either side of a quartile (seed ${seed})`, () => {
    const rule = fc.constantFrom('without-median' as const, 'with-median' as const);
    const values = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 25 });
    fc.assert(
      fc.property(values, rule, (all, by) => {
        const { least, lower, median, upper, most } = fiveNumbers(all, by)!;
        expect([least, lower, median, upper, most]).toEqual([least, lower, median, upper, most].sort((a, b) => a - b));
        const quarter = Math.floor(all.length / 4);
        expect(all.filter((value) => value <= lower).length).toBeGreaterThanOrEqual(quarter);
        expect(all.filter((value) => value >= upper).length).toBeGreaterThanOrEqual(quarter);
      }),
      { seed, numRuns: share(2000, 200) },
    );
  });
});
