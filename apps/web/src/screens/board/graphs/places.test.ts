import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshSeed, share } from '../../../../../../tests/tools/share.ts';
import { dotRows, flagLevels } from './dot-rows.ts';
import { labelPlaces, spread } from './label-places.ts';

describe('dots of a line plot', () => {
  it('stand above each other where they would lie on each other, and on the ruler elsewhere', () => {
    expect(dotRows([100, 100, 100, 130, 135], 14)).toEqual([0, 1, 2, 0, 1]);
  });

  const seed = freshSeed('flags');
  it(`no name is crossed by the pole of another (seed ${seed})`, () => {
    const flag = fc.record({ x: fc.integer({ min: 0, max: 500 }), widthPx: fc.integer({ min: 20, max: 180 }) });
    const flags = fc.uniqueArray(flag, { selector: ({ x }) => x, minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(flags, (unsorted) => {
        const sorted = [...unsorted].sort((a, b) => a.x - b.x);
        const levels = flagLevels(sorted, 12);
        for (const [k, one] of sorted.entries()) {
          for (const [j, other] of sorted.entries()) {
            const crosses = j > k && other.x < one.x + one.widthPx + 12;
            if (crosses) expect(levels[j]!).toBeLessThan(levels[k]!);
          }
        }
      }),
      { seed, numRuns: share(1000, 150) },
    );
  });
});

describe('names beside dots', () => {
  const room = { widthPx: 300, heightPx: 200 };

  it('stand at the right, at the left near the edge, and above where both sides are taken', () => {
    const dots = [
      { x: 50, y: 100, widthPx: 60 },
      { x: 280, y: 50, widthPx: 60 },
    ];
    expect(labelPlaces(dots, 16, room).map((side) => side?.anchor)).toEqual(['start', 'end']);
    const between = [{ x: 150, y: 100, widthPx: 60 }, ...[90, 210].map((x) => ({ x, y: 100, widthPx: 20 }))];
    expect(labelPlaces(between, 16, room)[0]?.anchor).toBe('middle');
  });

  it('a name without a place is left to the table', () => {
    const crowd = Array.from({ length: 30 }, (_, k) => ({ x: 150 + k, y: 100, widthPx: 280 }));
    expect(labelPlaces(crowd, 16, room)).toContain(null);
  });

  const seed = freshSeed('spread');
  it(`texts at the end of lines keep their order and their distance (seed ${seed})`, () => {
    const ys = fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(ys, (all) => {
        const placed = spread(all, 20, 0, 200);
        const order = all.map((y, k) => ({ y, k })).sort((a, b) => a.y - b.y || a.k - b.k);
        const sorted = order.map(({ k }) => placed[k]!);
        // 1e-9 px is far below what a screen shows: a mean of whole numbers is not always one in doubles.
        for (const [k, y] of sorted.slice(1).entries()) expect(y - sorted[k]!).toBeGreaterThanOrEqual(20 - 1e-9);
        expect(sorted[0]!).toBeGreaterThanOrEqual(0);
        expect(sorted.at(-1)!).toBeLessThanOrEqual(200 + 1e-9);
      }),
      { seed, numRuns: share(1000, 150) },
    );
  });

  it('texts that have room stay beside their dots; two that have not are moved alike', () => {
    expect(spread([10, 100, 50], 20, 0, 200)).toEqual([10, 100, 50]);
    expect(spread([100, 90], 20, 0, 200)).toEqual([105, 85]);
  });
});
