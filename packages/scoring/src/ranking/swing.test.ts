// Builds near each other in points that go in steps: heights in mm with an error of 3 mm each, so that two of them differ
// within root 18 = 4.24 mm.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/tools/share.ts';
import { pointsErrors } from '../points/errors.ts';
import { pointsLines } from '../points/lines.ts';
import { pointsOfRequirements, requirementLines } from '../requirements/lines.ts';
import type { Facts, MeasuredRule, PointsRow, Rounding, ScoringFact } from '../types.ts';
import { rank } from './rank.ts';
import { errorReach } from './swing.ts';

const row = (points: number, per: number, rounding: Rounding, more: Partial<PointsRow> = {}): PointsRow => ({
  id: 'row',
  measure: 'height',
  points,
  per,
  rounding,
  ...more,
});

type Errors = Readonly<Record<string, number>>;

const fact = (id: string, value: number | null, tolerance = 3, errors: Errors = {}): ScoringFact => ({
  id,
  value,
  unit: 'mm',
  tolerance,
  errors,
});

interface Scheme {
  readonly rows: readonly PointsRow[];
  readonly rules?: readonly MeasuredRule[];
}

/** The builds ranked by points: for each its total, and whom it is marked as near. */
function marks({ rows, rules = [] }: Scheme, ...builds: readonly (readonly ScoringFact[])[]) {
  const entries = builds.map((facts, k) => {
    const values: Facts = new Map(facts.map((one) => [one.id, one]));
    const ofRules = pointsOfRequirements(requirementLines(rules, values, {}, null, null));
    const value = (pointsLines(rows, values).sum ?? Number.NaN) + (ofRules ?? Number.NaN);
    const points = { id: 'points', value, unit: 'points', ...pointsErrors(rows, rules, values) };
    return { group: `g${k}`, values: new Map([...values, ['points', points]]), out: [] };
  });
  const rule = { first: { by: 'points', better: 'more', roundTo: 0 }, tieBreaks: [] } as const;
  const standings = rank(entries, rule);
  expect(rank([...entries].reverse(), rule)).toEqual(standings);
  return builds.map((_, k) => {
    const standing = standings.find(({ group }) => group === `g${k}`);
    return [standing?.decidedBy[0]?.value, standing?.withinErrorOf];
  });
}

const APART = (a: number, b: number) => [
  [a, []],
  [b, []],
];
const NEAR = (a: number, b: number) => [
  [a, ['g1']],
  [b, ['g0']],
];
const heights = (scheme: Scheme, ...values: readonly number[]) =>
  marks(scheme, ...values.map((value) => [fact('height', value)]));

describe('points that go in steps', () => {
  it('[K11] 379.9 and 380.1 mm at a point for each whole cm are as near as 3 mm of error make them', () => {
    expect(heights({ rows: [row(1, 10, 'down')] }, 379.9, 380.1)).toEqual(NEAR(37, 38));
  });

  it('[K11] a coarse row: 395 and 405 mm are both further from 400 than the ruler errs, 399.9 and 400.1 are not', () => {
    const coarse = { rows: [row(5, 100, 'down')] };
    expect(heights(coarse, 395, 405)).toEqual(APART(15, 20));
    expect(heights(coarse, 399.9, 400.1)).toEqual(NEAR(15, 20));
    // One build at the step is enough: were it 0.1 mm higher, it would have as much.
    expect(heights(coarse, 399.9, 460)).toEqual(NEAR(15, 20));
  });

  it('[K11] a step that would only take the two further apart is none between them', () => {
    // 380.5 may be 379.9 and have less still, 395 is past neither 390 nor 400.
    expect(heights({ rows: [row(1, 10, 'down')] }, 380.5, 395)).toEqual(APART(38, 39));
    expect(heights({ rows: [row(-1, 10, 'down')] }, 380.5, 395)).toEqual(APART(-38, -39));
    expect(heights({ rows: [row(1, 10, 'down')] }, 386, 395)).toEqual(NEAR(38, 39));
  });

  it('[K11] of two that only a tie-break parted, either may come to be ahead', () => {
    const [a, b] = [371, 375].map((height, k) => {
      const values: Facts = new Map([['height', fact('height', height)]]);
      const points = { id: 'points', value: 37, unit: '', ...pointsErrors([row(1, 10, 'down')], [], values) };
      return { group: `g${k}`, values: new Map([...values, ['points', points]]), out: [] };
    });
    const order = {
      first: { by: 'points', better: 'more', roundTo: 1 },
      tieBreaks: [{ by: 'height', better: 'more', roundTo: 1 }],
    } as const;
    expect(rank([a!, b!], order).map(({ group, withinErrorOf }) => [group, withinErrorOf])).toEqual([
      ['g1', ['g0']],
      ['g0', ['g1']],
    ]);
  });

  it('[K11] two coarse rows: no value is near a step, so that none of their points is in doubt', () => {
    // 3 + 1 against 3 + 2: 390 and 305 keep within 300 to 400, 190 below 200 and 275 above it.
    const rows = [row(1, 100, 'down'), row(1, 100, 'down', { id: 'wide', measure: 'width' })];
    const build = (height: number, width: number) => [fact('height', height), fact('width', width)];
    expect(marks({ rows }, build(390, 190), build(305, 275))).toEqual(APART(4, 5));
    // 397 may be 400: its point swings, and the difference is one.
    expect(marks({ rows }, build(397, 190), build(305, 275))).toEqual(NEAR(4, 5));
  });

  it('[K11] the step itself is within reach: 3 and 4 make 5', () => {
    const two = (height: number) =>
      marks({ rows: [row(7, 100, 'down')] }, [fact('height', height, 3)], [fact('height', 450, 4)]);
    expect(two(395)).toEqual(NEAR(21, 28));
    expect(two(394.999999)).toEqual(APART(21, 28));
  });

  it('[K11] measures of their own add in quadrature: swings of 3 and 4 points reach 5, and no further', () => {
    const rows = (more: number) => [
      row(3, 100, 'down'),
      row(4, 100, 'down', { id: 'wide', measure: 'width' }),
      row(more, 1, 'none', { id: 'pieces', measure: 'pieces' }),
    ];
    const build = (height: number, pieces: number) => [
      fact('height', height),
      fact('width', height),
      fact('pieces', pieces, 0),
    ];
    // Height and width give 3 x 3 and 3 x 4 both times: only the pieces differ.
    expect(marks({ rows: rows(5) }, build(399, 1), build(398, 2))).toEqual(NEAR(26, 31));
    expect(marks({ rows: rows(5.000001) }, build(399, 1), build(398, 2))).toEqual(APART(26.000001, 31.000002));
  });

  it('[K11] a bonus given once swings with the rest that its measure gives', () => {
    // 1 point a cm and 10 from 300 mm on: 29 and 40.
    const rows = [row(1, 10, 'down'), row(10, 300, 'down', { id: 'bonus', capPoints: 10 })];
    expect(heights({ rows }, 299.9, 300.1)).toEqual(NEAR(29, 40));
    expect(heights({ rows }, 295.1, 304.9)).toEqual(APART(29, 40));
  });

  it('[K11] a row beyond its cap, and out of reach of it, swings by nothing', () => {
    const capped = { rows: [row(2, 10, 'none', { capPoints: 40 }), row(1, 1, 'none', { measure: 'pieces' })] };
    const build = (height: number, pieces: number) => [fact('height', height), fact('pieces', pieces, 0)];
    expect(marks(capped, build(300, 5), build(350, 6))).toEqual(APART(45, 46));
    // 198 may be 196 or 200: 0.4 either way of 4.24 mm, 0.85 at most; the cap holds it at 40.
    expect(marks(capped, build(198, 5), build(350, 5))).toEqual(NEAR(44.6, 45));
  });

  it('[K11] a floor holds it too', () => {
    const floored = { rows: [row(-1, 10, 'down', { floorPoints: -20 })] };
    expect(heights(floored, 199, 201)).toEqual(NEAR(-19, -20));
    expect(heights(floored, 199, 401)).toEqual(NEAR(-19, -20));
    expect(heights(floored, 190.5, 401)).toEqual(APART(-19, -20));
  });

  it('[K11] a rule that costs, or earns, goes in a step of its own', () => {
    const rule = (points: number, kind: 'costs' | 'earns'): MeasuredRule => ({
      id: 'rule',
      kind: 'measured',
      measure: 'height',
      comparison: 'at-least',
      limit: 300,
      consequence: { kind, points },
    });
    expect(heights({ rows: [], rules: [rule(5, 'costs')] }, 299.9, 300.1)).toEqual(NEAR(-5, 0));
    expect(heights({ rows: [], rules: [rule(5, 'earns')] }, 295, 305)).toEqual(APART(0, 5));
  });

  it('[K11] what both hold of the kit cancels before it can swing anything', () => {
    const built = (value: number, drum: Errors) => fact('height', value, 3, { 'cube/edge': Math.sqrt(8), ...drum });
    const rows = [row(1, 10, 'down')];
    expect(marks({ rows }, [built(379.9, { 'drum/height': 1 })], [built(380.1, { 'drum/height': 1 })])).toEqual(
      APART(37, 38),
    );
    // Other drums: 1 and 1 make 1.41, and 379.9 may be 380.
    expect(marks({ rows }, [built(379.9, { 'drum/height': 1 })], [built(380.1, { 'tun/height': 1 })])).toEqual(
      NEAR(37, 38),
    );
  });

  it('[K11] a build of which the measure is not known swings by nothing', () => {
    const rows = [row(1, 10, 'down'), row(1, 1, 'none', { id: 'pieces', measure: 'pieces' })];
    const bare = (height: number | null, pieces: number) => [fact('height', height), fact('pieces', pieces, 0)];
    expect(marks({ rows }, bare(9, 3), bare(null, 4))).toEqual(NEAR(3, 4));
    expect(marks({ rows }, bare(5, 3), bare(null, 4))).toEqual(APART(3, 4));
    // No measure is less than 0: 2 mm may be 0, and are not -1 times a cm.
    expect(marks({ rows }, bare(2, 3), bare(null, 4))).toEqual(APART(3, 4));
  });

  it('[K11] steps and what goes evenly add in quadrature', () => {
    // Height swings by 3; 1 point a mm of width, 2 and root 12 mm of error: 4. Together 5.
    const rows = [row(3, 100, 'down'), row(1, 1, 'none', { id: 'wide', measure: 'width' })];
    const build = (width: number, error: number) => [fact('height', 399), fact('width', width, error)];
    expect(marks({ rows }, build(70, 2), build(75, Math.sqrt(12)))).toEqual(NEAR(79, 84));
    expect(marks({ rows }, build(70, 2), build(75.000001, Math.sqrt(12)))).toEqual(APART(79, 84.000001));
  });

  it('[K7] [K11] merges no places: the chain 379, 381, 390, 401 keeps four', () => {
    const board = heights({ rows: [row(1, 10, 'down')] }, 379, 381, 390, 401);
    expect(board).toEqual([
      [37, ['g1']],
      [38, ['g0', 'g2']],
      [39, ['g1', 'g3']],
      [40, ['g2']],
    ]);
  });

  it('[K11] marks are those that a slow look at all pairs finds (seed 4153)', () => {
    const rounding = fc.constantFrom<Rounding>('down', 'nearest', 'up');
    const builds = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(builds, rounding, fc.constantFrom(7, 10, 50), fc.constantFrom(2, 5), (tenths, how, per, each) => {
        const found = heights({ rows: [row(each, per, how)] }, ...tenths.map((one) => one / 2));
        expect(found.map(([, near]) => near)).toEqual(
          tenths.map((mine) => tenths.flatMap((other, n) => (slowlyNear(mine, other, how, per) ? [`g${n}`] : []))),
        );
      }),
      { seed: 4153, numRuns: share(20_000, 1_000) },
    );
  });
});

describe('how far the points of one build may lie from what they are', () => {
  const reach = (rows: readonly PointsRow[], ...facts: readonly ScoringFact[]) => {
    const { below, above } = errorReach(pointsErrors(rows, [], new Map(facts.map((one) => [one.id, one]))));
    return [below, above];
  };

  it('[P9] rounded down: 379 mm may be 382 and have one more, 381 may be 378 and have one less, 385 is in no doubt', () => {
    const rows = [row(1, 10, 'down')];
    expect(reach(rows, fact('height', 379))).toEqual([0, 1]);
    expect(reach(rows, fact('height', 381))).toEqual([1, 0]);
    expect(reach(rows, fact('height', 385))).toEqual([0, 0]);
  });

  it('[P9] rounded up and to the nearest, and a row that takes points', () => {
    expect(reach([row(1, 10, 'up')], fact('height', 379))).toEqual([0, 1]);
    expect(reach([row(1, 10, 'nearest')], fact('height', 376))).toEqual([1, 0]);
    expect(reach([row(-2, 10, 'down')], fact('height', 379))).toEqual([2, 0]);
  });

  it('[P9] the ends are those of the error itself: with 3 mm, 397 mm reaches 400 and 396.9 does not', () => {
    expect(reach([row(1, 100, 'down')], fact('height', 397))).toEqual([0, 1]);
    expect(reach([row(1, 100, 'down')], fact('height', 396.9))).toEqual([0, 0]);
  });

  it('[P9] steps of several measures, and what goes evenly, add in quadrature', () => {
    const rows = [
      row(3, 100, 'down'),
      row(4, 100, 'down', { id: 'wide', measure: 'width' }),
      row(1, 1, 'none', { id: 'deep', measure: 'depth' }),
    ];
    expect(reach(rows, fact('height', 399), fact('width', 399), fact('depth', 50, 12))).toEqual([12, 13]);
  });

  it('points that go evenly reach as far to both sides', () => {
    expect(reach([row(1, 10, 'none')], fact('height', 379))).toEqual([0.3, 0.3]);
  });
});

/** Half millimetres. The error of a difference is root 18 mm; every row gives the same for each step, so steps are compared. */
function slowlyNear(mine: number, other: number, how: Rounding, per: number): boolean {
  const steps = (halves: number) => {
    const times = halves / 2 / per;
    if (how === 'down') return Math.floor(times);
    return how === 'up' ? Math.ceil(times) : Math.floor(times + 1 / 2);
  };
  const [low, high] = steps(mine) < steps(other) ? [mine, other] : [other, mine];
  const rise = steps(low + 2 * Math.sqrt(18)) - steps(low);
  const fall = steps(high) - steps(Math.max(0, high - 2 * Math.sqrt(18)));
  const difference = steps(high) - steps(low);
  return difference > 0 && difference <= Math.max(rise, fall);
}
