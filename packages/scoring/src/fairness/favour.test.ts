import { describe, expect, it } from 'vitest';
import { proves } from '../../../../tests/reference/lab/certificates.ts';
import { EXAMPLES, exampleData } from '../../../../tests/reference/lab/examples.ts';
import { favour } from './favour.ts';
import type { FavourTask } from './favour-types.ts';
import { offers } from './offers.ts';
import type { LabData } from './types.ts';

const WORK = { branchesMost: 20_000 };
const ALL = { order: 'fewest-rows', rules: 20 } as const;

const taskOf = (one: (typeof EXAMPLES.favour)[number]): FavourTask => ({
  data: exampleData(one.kit, one.rows),
  favourite: one.favourite,
  lead: one.lead,
  most: one.max,
  negative: one.negative,
  step: 1,
});

const named = (name: string): FavourTask => taskOf(EXAMPLES.favour.find((one) => one.name === name)!);

describe('favour a kind', () => {
  it.each(EXAMPLES.favour.filter(({ possible }) => possible))('[F5] [F6] $name', (one) => {
    const task = taskOf(one);
    const answer = favour(task, ALL, WORK);
    if (answer.status !== 'possible') throw new Error(answer.status);
    const told = answer.rules.map(({ rates, sum, lead, scores }) => ({ w: rates, sum, lead, scores }));
    const inOrder = [...(one.minimalRowSets ?? [])].sort((a, b) => rowsOf(a.w) - rowsOf(b.w) || a.sum - b.sum);
    expect(told.map(({ w, sum }) => [rowsOf(w), sum])).toEqual(inOrder.map(({ w, sum }) => [rowsOf(w), sum]));
    // Of one sum there may be several rates: then ours must do, and differ from the file's in nothing but that.
    told.forEach((rule, k) => {
      const same = one.minimalRowSets?.some(({ w }) => w.join() === rule.w.join());
      expect({ k, same, leads: rule.lead >= one.lead }).toEqual({ k, same: true, leads: true });
    });
    expect([told[0]?.w.filter((rate) => rate !== 0).length, told[0]?.sum]).toEqual([
      one.fewestRows,
      one.sumAtFewestRows,
    ]);
    expect(answer.complete).toBe(true);
    const smallest = favour(task, { order: 'smallest-sum', rules: 1 }, WORK);
    expect(smallest.status === 'possible' && smallest.rules[0]?.sum).toBe(one.smallestSum);
  });

  it.each(EXAMPLES.favour.filter(({ possible }) => !possible))('[F7] $name', (one) => {
    const task = taskOf(one);
    const answer = favour(task, ALL, WORK);
    if (answer.status !== 'impossible') throw new Error(answer.status);
    expect(answer.why.code).toBe(one.reason?.code);
    expect(proves(answer.why, task)).toBe(true);
    if (answer.why.code !== 'lead-out-of-reach') return;
    expect(answer.why).toMatchObject({ greatestLead: one.greatestLead, maxNeeded: one.reason?.maxNeeded });
    expect(answer.why.atGreatest?.lead).toBe(one.greatestLead);
    expect(Math.max(...(answer.why.atNeeded?.rates ?? []))).toBe(one.reason?.maxNeeded);
  });

  it('[F6] by the smallest sum: three rows with 7, then the two rows with 9', () => {
    const answer = favour(named('pyramid with negative rates'), { order: 'smallest-sum', rules: 4 }, WORK);
    expect(answer).toMatchObject({ status: 'possible', complete: true });
    const sums = answer.status === 'possible' ? answer.rules.map(({ rows, sum }) => [rows.length, sum]) : [];
    expect(sums).toEqual([
      [3, 7],
      [2, 9],
      [2, 11],
    ]);
  });

  it('[F6] that there may be more is told', () => {
    expect(favour(named('plain cube'), { order: 'fewest-rows', rules: 2 }, WORK)).toMatchObject({ complete: false });
  });

  it('[F5] half points are whole ones with twice the lead and the limit, halved', () => {
    const task = named('cylinder, five rows, lead 6');
    const half = favour({ ...task, lead: 0.5, most: 5, step: 0.5 }, ALL, WORK);
    const whole = favour({ ...task, lead: 1, most: 10 }, ALL, WORK);
    if (half.status !== 'possible' || whole.status !== 'possible') throw new Error('not possible');
    expect(half.rules.map(({ rates, sum, lead }) => ({ rates, sum, lead }))).toEqual(
      whole.rules.map(({ rates, sum, lead }) => ({
        rates: rates.map((rate) => rate / 2),
        sum: sum / 2,
        lead: lead / 2,
      })),
    );
  });

  it('[F7] 1 cuboid and 1 triangular pyramid are enough against 2 square pyramids', () => {
    // The worked case has 6 and 1 against 7; 6 + 4, 8 + 4, 3 + 10 against 10, 10, 8 is less to add up.
    const answer = favour(named('seven pyramids against six cuboids and a pyramid'), ALL, WORK);
    expect(answer).toMatchObject({
      why: {
        code: 'mix',
        times: 2,
        others: [
          { kind: 'cuboid', times: 1 },
          { kind: 'triPyr', times: 1 },
        ],
        totalOfFavourite: [10, 10, 8],
        totalOfOthers: [10, 12, 13],
      },
    });
  });

  it('says honestly that the work limit was reached, and asks whether to go on', () => {
    const task = named('sphere, lead 3');
    expect(favour(task, ALL, { branchesMost: 2 })).toEqual({ status: 'not-settled', branches: 2 });
    const asked: number[] = [];
    const stop = (branches: number): boolean => asked.push(branches) > 1;
    const longer = named('pyramid with negative rates');
    const wish = { order: 'smallest-sum', rules: 9 } as const;
    expect(favour(longer, wish, { branchesMost: 20_000, stop })).toEqual({ status: 'not-settled', branches: 16 });
    expect(asked).toEqual([8, 16]);
  });

  it('refuses what makes no sense', () => {
    const task = named('plain cube');
    const refused: readonly Partial<FavourTask>[] = [
      { favourite: 'nobody' },
      { lead: 0 },
      { lead: 0.5 },
      { most: 2.5 },
      { data: { ...task.data, kinds: task.data.kinds.slice(0, 1) } },
      { data: { ...task.data, kinds: task.data.kinds.map((kind) => ({ ...kind, measures: [0.5, 1, 2] })) } },
    ];
    for (const change of refused) expect(() => favour({ ...task, ...change }, ALL, WORK)).toThrow(RangeError);
  });
});

describe('what is offered instead', () => {
  const further = ({ data }: FavourTask, rows: readonly string[]): LabData =>
    exampleData(
      data.kinds.map(({ id }) => id),
      rows,
    );

  it('[F8] a row that takes points for the square pyramid, and height for the triangular one', () => {
    const pyramid = named('pyramid dominated');
    const offered = offers(pyramid, further(pyramid, ['hcm', 'pap10']), WORK);
    if (offered.status !== 'tried') throw new Error('not settled');
    expect(offered.offers.map(({ rows, negative }) => [rows, negative])).toEqual([[[], true]]);
    expect(offered.offers[0]?.rule.rates).toEqual([7, -2, 0]);
    const triangular = named('triangular pyramid in the hull');
    const twins = { ...triangular, negative: false, data: exampleData(['cube', 'sqPyr', 'triPyr'], ['F', 'E', 'V']) };
    const rows = offers(twins, further(twins, ['hcm', 'pap10']), WORK);
    expect(rows).toMatchObject({
      offers: [{ rows: ['hcm'], negative: false, rule: { rates: [0, 0, 0, 1] } }, { negative: true }],
    });
  });

  it('[F8] nothing parts twins but what they differ in', () => {
    const twin = named('cube with a twin');
    expect(offers(twin, further(twin, ['Ff', 'Ce']), WORK)).toMatchObject({ status: 'tried', offers: [] });
    const offered = offers(twin, further(twin, ['pap10', 'hcm']), WORK);
    expect(offered.status === 'tried' && offered.offers.map(({ rows }) => rows)).toEqual([['pap10'], ['hcm']]);
  });

  it('[F8] two together where one alone does not help', () => {
    const task: FavourTask = { ...named('cube with a twin'), favourite: 'cuboid' };
    const offered = offers(task, further(task, ['Ff', 'hcm', 'pap10']), WORK);
    if (offered.status !== 'tried') throw new Error('not settled');
    expect(offered.offers.length).toBeGreaterThan(0);
    for (const { rows, negative, rule } of offered.offers) {
      expect(rows.length + Number(negative)).toBe(2);
      expect(rule.lead).toBeGreaterThanOrEqual(task.lead);
    }
  });

  it('[F8] where two do not help, of all only what is needed', () => {
    // b has less of w than c, of x than d, of y than a; by all three together it wins, and z parts nobody.
    const kind = (id: string, ...measures: number[]) => ({ id, measures, paperMm2: null, minutes: null });
    const own = { rows: ['v'], kinds: [kind('a', 1), kind('b', 1), kind('c', 1), kind('d', 1)] };
    const further = {
      rows: ['w', 'x', 'y', 'z'],
      kinds: [kind('a', 0, 0, 5, 3), kind('b', 2, 2, 2, 3), kind('c', 5, 0, 0, 3), kind('d', 0, 5, 0, 3)],
    };
    const task = { data: own, favourite: 'b', lead: 1, most: 5, negative: true, step: 1 } as const;
    const tried = offers(task, further, WORK);
    expect(tried).toMatchObject({
      offers: [{ rows: ['w', 'x', 'y'], negative: false, rule: { rates: [0, 1, 1, 1], lead: 1 } }],
    });
  });

  it('[F8] says that the work limit was reached, and refuses rows of another kit', () => {
    const task = named('pyramid dominated');
    expect(offers(task, further(task, ['hcm']), { branchesMost: 1 }).status).toBe('not-settled');
    expect(() => offers(task, exampleData(['cone'], ['hcm']), WORK)).toThrow(RangeError);
  });
});

const rowsOf = (rates: readonly number[]): number => rates.filter((rate) => rate !== 0).length;
