// Stacks of equal bricks with known limits. Sources: harmonic overhang H_n / 2 and the values for several bricks a level
// from Paterson and Zwick, "Overhang", arXiv 0710.2357, and Paterson, Peres, Thorup, Winkler, Zwick, "Maximum overhang",
// figure 1; coordinates of the layouts, boxes, corbel and lintels worked out by hand. Lengths in brick lengths.

import { describe, expect, it } from 'vitest';
import type { Brick } from '../../../../tests/reference/brick-problems.ts';
import { brick, wall } from '../../../../tests/reference/brick-problems.ts';
import { LIMITS } from '../../../../tests/reference/judged-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import { failuresOfMotion, failuresOfTower } from './failures.ts';
import type { Judgement } from './judge.ts';
import { judge, judgeByProgrammes } from './judge.ts';
import { simplex } from './simplex.ts';
import type { StaticProblem } from './types.ts';

const DEGREE = Math.PI / 180;
/** Rounding of twenty additions of lengths of 1. */
const ROUNDING = { absolute: 1e-9 };
/** Programmes end at a gain of 1e-9; the dense table rounds to a little more. */
const PROGRAMME = { absolute: 1e-8 };
const GRIPPY = 50;

const judged = (problem: StaticProblem): Judgement => judge(problem, simplex, LIMITS);
const tipDegrees = (push: number | undefined): number => Math.atan(push ?? Number.NaN) / DEGREE;
const onBothPaths = (problem: StaticProblem): readonly (boolean | null)[] => [
  judged(problem).stands,
  judgeByProgrammes(problem, null, LIMITS).stands,
];

describe('boxes: the push is min(mu, width / height)', () => {
  it.each([
    [1, 1, 45],
    [1, 2, 26.565051177078],
    [1, 3, 18.434948822922],
    [3, 4, 36.869897645844],
    [5, 20, 14.0362434679265],
    [5, 50, 5.71059313749964],
  ])('%s wide, %s high tips at %s degrees', (width, height, degrees) => {
    const { tips, standsTo } = judged(wall([brick(0, 0, { width, height, depth: 99 })], 0.4));
    expectNear(tipDegrees(tips?.push), degrees, ROUNDING);
    expectNear(standsTo?.push ?? Number.NaN, Math.min(0.4, width / height), ROUNDING);
  });

  it.each([5, 10])('%s cubes on each other tip at atan(1 / n)', (n) => {
    const cubes = Array.from({ length: n }, (_, k) => brick(0, k, { height: 1 }));
    expectNear(judged(wall(cubes, GRIPPY)).tips?.push ?? Number.NaN, 1 / n, ROUNDING);
  });

  it.each([
    [0.2, 21.8014094864],
    [0.25, 20.5560452196],
    [1 / 3, 18.434948822922],
    [0.4, 11.309932474],
    [0.5, 0],
  ])(
    'two unit cubes, the upper shifted by %s, tip at %s: the whole or the upper alone, crossing at 1/3',
    (d, degrees) => {
      const cubes = [brick(0, 0, { height: 1 }), brick(d, 1, { height: 1 })];
      expectNear(tipDegrees(judged(wall(cubes, GRIPPY)).tips?.push), degrees, ROUNDING);
      expectNear(tipDegrees(judgeByProgrammes(wall(cubes, GRIPPY), simplex, LIMITS).tips?.push), degrees, {
        absolute: 1e-6,
      });
    },
  );
});

describe('one brick a level: the overhang is H_n / 2', () => {
  const reach = [0.5, 0.75, 0.916667, 1.041667, 1.141667, 1.225, 1.296429, 1.358929, 1.414484, 1.464484];
  it.each(reach.map((overhang, k) => [k + 1, overhang]))('n = %s reaches %s and flips at 1e-6', (n, overhang) => {
    /** Brick k from the top hangs over by 1 / 2k; the lowest over the table's edge at 0, `extra` further. */
    const stack = (extra: number): StaticProblem => {
      let left = -1;
      const bricks: Brick[] = [];
      for (let k = n; k >= 1; k -= 1) {
        left += 1 / (2 * k) + (k === n ? extra : 0);
        bricks.push(brick(left, (n - k) * 0.25));
      }
      if (extra === 0) expectNear(left + 1, overhang, { absolute: 5e-7 });
      return wall(bricks, 0.4, 0);
    };
    expect(onBothPaths(stack(-1e-6))).toEqual([true, true]);
    expect(onBothPaths(stack(0))).toEqual([true, true]);
    expect(onBothPaths(stack(1e-6))).toEqual([false, false]);
  });
});

describe('several bricks a level', () => {
  const stands = (bricks: readonly Brick[]): boolean | null => judged(wall(bricks, 0.4, 0)).stands;
  const three = (all: number, outermost: number): readonly Brick[] => [
    brick(-0.5 + all, 0),
    brick(0 + all + outermost, 0.25),
    brick(-1 + all, 0.25),
  ];
  /** The layout in closed form: 15 - 4 sqrt 2 over 8 past the edge, the counterweights placed to balance. */
  const four = (all: number, outermost: number): readonly Brick[] => [
    brick(-0.4785533906 + all, 0),
    brick(0.1678932188 + all + outermost, 0.25),
    brick(-1.1632524219 + all, 0.25),
    brick(-0.5260874064 + all, 0.5),
  ];
  it('three bricks reach 1', () => {
    expect([stands(three(-1e-4, 0)), stands(three(0, 0)), stands(three(0, 1e-6))]).toEqual([true, true, false]);
  });
  it('four bricks reach (15 - 4 sqrt 2) / 8', () => {
    expectNear((15 - 4 * Math.SQRT2) / 8, 1.1678932188, { absolute: 5e-11 });
    expect([stands(four(-1e-4, 0)), stands(four(0, 0)), stands(four(0, 1e-6))]).toEqual([true, true, false]);
  });
  it('a corbel of three flips at an offset of 1/3', () => {
    const corbel = (d: number): readonly (boolean | null)[] =>
      onBothPaths(wall([brick(0, 0), brick(d, 0.25), brick(2 * d, 0.5)], 0.4));
    expect(corbel(1 / 3 - 1e-6)).toEqual([true, true]);
    expect(corbel(1 / 3 + 1e-6)).toEqual([false, false]);
  });
});

describe('lintels', () => {
  /** Two pillars 0.5 wide with their middles at +-middle, 1 high; a lintel 2.5 long shifted by `shift`. */
  const lintel = (middle: number, shift: number): StaticProblem =>
    wall(
      [
        brick(-middle - 0.25, 0, { width: 0.5, height: 1 }),
        brick(middle - 0.25, 0, { width: 0.5, height: 1 }),
        brick(-1.25 + shift, 1, { width: 2.5, height: 0.3 }),
      ],
      GRIPPY,
    );

  it('pillars at +-1: a shift of 0.74 rests on the right pillar alone, 0.01 short of it, and falls', () => {
    const { stands, joints } = judged(lintel(1, 0.74));
    expect(stands).toBe(false);
    const [failure] = failuresOfTower(joints!);
    expect(failure).toMatchObject({ pieces: [2], on: 1 });
    expectNear(failure?.hinge?.pastMm ?? Number.NaN, 0.01, PROGRAMME);
  });
  it('0.76 stands with a push of 0.0667', () => {
    expectNear(judged(lintel(1, 0.76)).tips?.push ?? Number.NaN, 0.01 / 0.15, PROGRAMME);
  });
  it('pillars at +-0.5, shifted by 0.9: falls about x = 0.75, 0.15 past', () => {
    const problem = lintel(0.5, 0.9);
    const [failure] = failuresOfMotion(problem, judged(problem).motion!, null);
    expect(failure).toMatchObject({ pieces: [2], on: 1 });
    expectNear(failure?.hinge?.ends[0][0] ?? Number.NaN, 0.75, ROUNDING);
    expectNear(failure?.hinge?.pastMm ?? Number.NaN, 0.15, PROGRAMME);
  });
});
