import { describe, expect, it } from 'vitest';
import { provesNeverEven } from '../../../../tests/reference/lab/certificates.ts';
import { EXAMPLES, exampleData } from '../../../../tests/reference/lab/examples.ts';
import { mostEven } from './even.ts';
import type { Evenness, EvenTask } from './even-types.ts';
import type { LabData } from './types.ts';

const WORK = { branchesMost: 20_000 };
const [HALVES] = EXAMPLES.rounding.filter(({ name }) => name.startsWith('half points'));
/** The file's own rule for comparing: relative, doubles of some ten operations. */
const RELATIVE = 1e-9;

const near = (value: number, known: number): boolean => Math.abs(value - known) <= RELATIVE * Math.abs(known);

function found(task: EvenTask): Extract<Evenness, { status: 'found' }> {
  const answer = mostEven(task, WORK);
  if (answer.status !== 'found') throw new Error(answer.status);
  return answer;
}

const data = (rows: readonly string[], ...kinds: readonly (readonly number[])[]): LabData => ({
  rows,
  kinds: kinds.map((measures, k) => ({ id: 'abc'.charAt(k), measures, paperMm2: null, minutes: null })),
});

const fair = { goal: 'share', per: 'piece', most: 10, negative: false, step: 1 } as const;

describe('as even as can be', () => {
  it.each(EXAMPLES.fairness)('[F9] [F10] [F11] $name', ({ kit, rows, max, negative, smallestGap, greatestShare }) => {
    const task: EvenTask = { ...fair, data: exampleData(kit, rows), most: max, negative };
    const { rule, exactly } = found(task);
    expect([rule.share, rule.sum, rule.rates]).toEqual([greatestShare.share, greatestShare.sum, greatestShare.w]);
    const close = found({ ...task, goal: 'gap' }).rule;
    expect([close.gap, close.sum]).toEqual([smallestGap.gap, smallestGap.sum]);
    expect(exactly.possible).toBe(greatestShare.share === 1);
    if (!exactly.possible) expect(provesNeverEven(exactly, task)).toBe(true);
  });

  it('[F9] per 10 minutes of folding', () => {
    const { kit, rows, max, share, sum, w, perMinute } = EXAMPLES.fairPerMinute;
    const { rule } = found({ ...fair, data: exampleData(kit, rows), per: '10-minutes', most: max });
    expect([rule.rates, rule.sum]).toEqual([w, sum]);
    expect(near(rule.share ?? 0, share)).toBe(true);
    expect(rule.values.map((value, k) => near(value, 10 * perMinute[k]!))).toEqual(kit.map(() => true));
  });

  it('[F9] half points are whole ones with twice the limit, halved', () => {
    const { rule } = found({ ...fair, data: exampleData(HALVES?.kit ?? [], HALVES?.rows ?? []), most: 5, step: 0.5 });
    expect([rule.rates, rule.scores]).toEqual([HALVES?.w, HALVES?.scores]);
  });

  it('[F9] a row that counts pieces is left out, and so is one of which nobody has any', () => {
    const answer = found({ ...fair, data: data(['pieces', 'faces', 'edges'], [1, 3, 0], [1, 7, 0]) });
    expect(answer.leftOut).toEqual([
      { row: 'pieces', why: 'per-piece' },
      { row: 'edges', why: 'nobody-has' },
    ]);
    expect(answer.rule).toMatchObject({ rates: [0, 1, 0], share: 3 / 7, gap: 4 });
    expect(mostEven({ ...fair, data: data(['pieces'], [1], [1]) }, WORK).status).toBe('no-rows');
  });

  it('[F11] flat + 2 curved - straight - curved edges + vertices is 2 on every kind of the file', () => {
    // Euler 1758 for solids with flat faces; the round ones by counting.
    const all = exampleData(Object.keys(EXAMPLES.kinds), ['Ff', 'Cs', 'Se', 'Ce', 'Vx']);
    const { exactly } = found({ ...fair, data: all, most: 1, negative: true });
    expect(exactly).toMatchObject({ possible: true, rule: { rates: [1, 2, -1, -1, 1], highest: 2, lowest: 2 } });
  });

  it('[F11] exactly even points may be larger than the limit', () => {
    const { rule, exactly } = found({ ...fair, data: data(['a', 'b'], [7, 0], [0, 11]), most: 5 });
    expect(rule.share).toBeLessThan(1);
    expect(exactly).toMatchObject({ possible: true, rule: { rates: [11, 7], lowest: 77, highest: 77 } });
  });

  it('[F11] with rates below 0: the same in every row, and not as many', () => {
    // Two a of 3 are one b of 6: were they to earn alike, 2 x is x.
    const task: EvenTask = { ...fair, data: data(['a'], [3], [6]), negative: true };
    const { exactly } = found(task);
    if (exactly.possible) throw new Error('even');
    expect(provesNeverEven(exactly, task)).toBe(true);
    expect([exactly.these, exactly.those]).toEqual([[{ kind: 'a', times: 2 }], [{ kind: 'b', times: 1 }]]);
  });

  it('[F11] per 10 minutes the pieces on both sides take as long', () => {
    const kit: LabData = {
      rows: ['faces'],
      kinds: [
        { id: 'a', measures: [5], paperMm2: 9000, minutes: 3 },
        { id: 'b', measures: [7], paperMm2: 15000, minutes: 7 },
      ],
    };
    const { rule, exactly } = found({ ...fair, data: kit, per: '10-minutes' });
    expect(rule.values).toEqual([50 / 3, 10]);
    expect(exactly).toMatchObject({
      possible: false,
      these: [{ kind: 'a', times: 7 }],
      those: [{ kind: 'b', times: 3 }],
      totalOfThese: [35],
      totalOfThose: [21],
    });
    expect(found({ ...fair, data: kit, per: '100-cm2' }).rule.values).toEqual([500 / 90, 700 / 150]);
  });

  it('says honestly that the work limit was reached, and refuses what makes no sense', () => {
    const [{ kit, rows }] = [EXAMPLES.fairness[3]!];
    const task: EvenTask = { ...fair, data: exampleData(kit, rows) };
    expect(mostEven(task, { branchesMost: 2 })).toEqual({ status: 'not-settled', branches: 2 });
    expect(mostEven({ ...task, goal: 'gap' }, { branchesMost: 0 }).status).toBe('not-settled');
    expect(() => mostEven({ ...fair, data: data(['a'], [3], [7]), per: '10-minutes' }, WORK)).toThrow(RangeError);
    expect(() => mostEven({ ...fair, data: data(['a'], [3]) }, WORK)).toThrow(RangeError);
  });
});
