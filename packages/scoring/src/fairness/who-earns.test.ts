import { describe, expect, it } from 'vitest';
import { EXAMPLES, exampleData } from '../../../../tests/reference/lab/examples.ts';
import type { Earned, LabData } from './types.ts';
import { whoEarns } from './who-earns.ts';

/** The file's own rule for comparing: 1e-9 relative; both sides are doubles of some ten operations. */
const RELATIVE = 1e-9;

function expectEarned(
  earned: Earned | null,
  known: Pick<Earned, 'lead' | 'share'> & { values: number[]; best: string[] },
) {
  expect(earned?.favourites).toEqual(known.best);
  const pairs: [known: number, ours: number | null | undefined][] = [
    ...known.values.map((value, k): [number, number | null | undefined] => [value, earned?.values[k]]),
    [known.lead, earned?.lead],
    [known.share ?? 0, earned?.share],
  ];
  for (const [value, ours] of pairs) {
    expect(Math.abs((ours ?? Number.NaN) - value)).toBeLessThanOrEqual(RELATIVE * Math.abs(value));
  }
}

const kinds = (...rows: readonly (readonly [measures: readonly number[], minutes: number | null])[]): LabData => ({
  rows: ['faces'],
  kinds: rows.map(([measures, minutes], k) => ({ id: 'abc'.charAt(k), measures, paperMm2: null, minutes })),
});

describe('who earns what', () => {
  it.each(EXAMPLES.perUnit)(
    '[F1] [F2] $name',
    ({ kit, rows, w, scores, gap, share, perPiece, per100cm2, per10min }) => {
      const earnings = whoEarns(exampleData(kit, rows), w);
      expect(earnings.perPiece.values).toEqual(scores);
      expect(earnings.perPiece.gap).toBe(gap);
      expectEarned(earnings.perPiece, { ...perPiece, share });
      expectEarned(earnings.per100Cm2, per100cm2);
      expectEarned(earnings.per10Minutes, per10min);
    },
  );

  it('[F2] a tie is one in whole numbers, where thirds of doubles differ', () => {
    // 26 points in 6 minutes and 13 in 3: each 43.333 in ten minutes.
    const { per10Minutes } = whoEarns(kinds([[26], 6], [[13], 3], [[7], 2]), [1]);
    expect(per10Minutes?.favourites).toEqual(['a', 'b']);
    expect(per10Minutes?.lead).toBe(26 / 0.6 - 35);
  });

  it('[F2] what is not known is left out, and all that is known of nobody is not told', () => {
    const { per100Cm2, per10Minutes } = whoEarns(kinds([[5], 2], [[7], null], [[3], 7]), [1]);
    expect(per100Cm2).toBeNull();
    expect(per10Minutes?.values).toEqual([25, null, 3 / 0.7]);
    expect(per10Minutes?.favourites).toEqual(['a']);
    expect(per10Minutes?.gap).toBe(25 - 3 / 0.7);
  });

  it('[F3] the lead is over the next below all favourites, and 0 when all earn alike', () => {
    expect(whoEarns(kinds([[7], 1], [[7], 1], [[5], 1]), [3]).perPiece).toMatchObject({
      favourites: ['a', 'b'],
      lead: 6,
    });
    expect(whoEarns(kinds([[7], 1], [[7], 1]), [3]).perPiece).toMatchObject({
      favourites: ['a', 'b'],
      lead: 0,
      gap: 0,
    });
  });

  it('[F4] no share where a rate takes points or nobody earns any', () => {
    expect(whoEarns(kinds([[7], 1], [[5], 1]), [-2]).perPiece).toMatchObject({
      share: null,
      gap: 4,
      favourites: ['b'],
    });
    expect(whoEarns(kinds([[0], 1], [[0], 1]), [2]).perPiece).toMatchObject({ share: null, gap: 0 });
    expect(whoEarns(kinds([[0], 1], [[5], 1]), [2]).perPiece.share).toBe(0);
  });

  it('tenths of a point add up', () => {
    const data: LabData = { rows: ['a', 'b'], kinds: [{ id: 'k', measures: [1, 1], paperMm2: 100, minutes: null }] };
    expect(whoEarns(data, [0.1, 0.2]).perPiece.values).toEqual([0.3]);
  });

  it('refuses rates that are not as many as the measures', () => {
    expect(() => whoEarns(kinds([[7], 1]), [1, 2])).toThrow(RangeError);
  });
});
