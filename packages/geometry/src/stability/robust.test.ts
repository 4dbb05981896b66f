// Figures at the edge of what can be computed: never NaN, never an endless search, never a wrong verdict. mm, grams.

import { describe, expect, it } from 'vitest';
import { brick, wall } from '../../../../tests/reference/brick-problems.ts';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { FULL, judged, LIMITS, question } from '../../../../tests/reference/judged-builds.ts';
import { cube, put } from '../../../../tests/reference/stacked-builds.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Judgement } from './judge.ts';
import { judge, judgeByProgrammes } from './judge.ts';
import { simplex } from './simplex.ts';
import type { StaticProblem } from './types.ts';

const figures = ({ tips, slides, standsTo }: Judgement): readonly number[] =>
  [tips, slides, standsTo].flatMap((margin) => (margin === null ? [] : [margin.push, ...margin.direction]));

describe('very different masses', () => {
  /** A lintel on two pillars that hangs out by `past` beyond the right pillar's edge at 0.75. */
  const gate = (pillarG: number, lintelG: number, past: number) =>
    wall(
      [
        brick(-0.75, 0, { width: 0.5, height: 1, massG: pillarG }),
        brick(0.25, 0, { width: 0.5, height: 1, massG: pillarG }),
        brick(-0.5 + past, 1, { width: 2.5, height: 0.3, massG: lintelG }),
      ],
      0.5,
    );
  it.each([
    [1e6, 1, 0.03 / 0.15],
    [1, 1e6, 0.03 / 1.15],
    [1e-3, 1e3, 0.03 / 1.15],
  ])('pillars of %s g under a lintel of %s g: flips at the edge', (pillarG, lintelG, push) => {
    expect(judge(gate(pillarG, lintelG, -1e-5), null, LIMITS).stands).toBe(true);
    expect(judge(gate(pillarG, lintelG, 1e-5), null, LIMITS).stands).toBe(false);
    const stands = judge(gate(pillarG, lintelG, -0.03), HIGHS, LIMITS);
    // The lintel's middle lies 0.03 inside: 0.15 above its joint, and 1.15 above the foot of a pillar without weight.
    expectNear(stands.tips!.push, push, { absolute: 1e-6 });
  });
});

describe('contacts of almost nothing', () => {
  it.each([1e-3, 1e-5, 1e-7])('two bricks that share %s of their length', (shared) => {
    const problem = wall([brick(0, 0), brick(1 - shared, 0.25), brick(-1 + shared, 0.25)], 0.4);
    for (const answer of [judge(problem, HIGHS, LIMITS), judgeByProgrammes(problem, simplex, LIMITS)]) {
      expect(answer.stands).toBe(false);
      expect(figures(answer).every(Number.isFinite)).toBe(true);
    }
  });
  it('a slab that reaches 1e-5 onto the second pillar is carried by both', () => {
    const bricks = [brick(0, 0), brick(2, 0), brick(0.9, 0.25, { width: 1.1 + 1e-5 })];
    expect(judge(wall(bricks, 0.4), null, LIMITS).stands).toBe(true);
    expect(figures(judge(wall(bricks, 0.4), HIGHS, LIMITS)).every(Number.isFinite)).toBe(true);
  });
});

it('coincident edges: cubes set flush, corner on corner, stand by the raw verdict', () => {
  const pieces = [put('cube', 0, 0), put('cube', 50, 0), put('cube', 25, 0), put('cube', 50, 0), put('cube', 0, 0)];
  const answer = judged(question(pieces, { cube: cube(50) }, FULL, 0.4, { limits: { ...LIMITS, trials: 0 } }));
  expect(answer.stands).not.toBe(null);
  expect(Object.values(answer).some(Number.isNaN)).toBe(false);
});

const bond = (count: number): StaticProblem =>
  wall(
    Array.from({ length: count }, (_, k) => {
      const course = Math.floor(k / 10);
      return brick((k % 10) * 1.1 + (course % 2) * 0.3, course * 0.25);
    }),
    0.6,
  );

it('a wall of a hundred pieces gets its verdict', () => {
  expect(judge(bond(100), null, LIMITS).stands).toBe(true);
});

it(`a wall of ${share(100, 30)} pieces gets its margin`, () => {
  // Courses of depth 1 tip over the long side: 0.5 from the middle, half of all courses high.
  const courses = share(100, 30) / 10;
  expectNear(judge(bond(share(100, 30)), HIGHS, LIMITS).tips!.push, 0.5 / (courses * 0.125), { absolute: 1e-6 });
});

it('work limits cut off with "not decided", never with a verdict', () => {
  const problem = wall([brick(0, 0), brick(1.1, 0), brick(0.3, 0.25), brick(1.4, 0.25)], 0.4);
  expect(judge(problem, HIGHS, { ...LIMITS, pivots: 2 }).stands).toBe(null);
  expect(judge(problem, HIGHS, { ...LIMITS, solves: 1 })).toMatchObject({ stands: true, tips: null, standsTo: null });
});
