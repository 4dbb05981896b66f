// From a challenge to what is searched, and how near a build came. Published tilts: a cone of radius 25 and height 50 on a cube
// of 50 tips at 34.8782577472 degrees as shells and 37.3308699919 full, k cubes at atan(1/k); worked out in the notes of the
// project from the centres of mass of OpenStax University Physics 1, section 9.6 (from memory).

import type { Material } from '@cairnmark/geometry';
import { noTabs } from '@cairnmark/geometry';
import type { BestTask, MeasuredRule, RankingRule, Requirement } from '@cairnmark/scoring';
import { bestBuild } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, group, KIT, laid, PAPER, reportOn } from '../../../../tests/reference/small-class.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Challenge, KindOfPiece } from '../types.ts';
import type { BestFor, BestPlan } from './best-plan.ts';
import { bestPlan } from './best-plan.ts';
import { nearBest } from './near-best.ts';

const LIMIT = 100_000;
const ANYBODY: BestFor = { group: null, earned: null };
const by = (measure: string): RankingRule => ({ first: { by: measure, better: 'more', roundTo: 0 }, tieBreaks: [] });
const must = (measure: string, comparison: MeasuredRule['comparison'], limit: number): Requirement => {
  return {
    id: `${measure} ${comparison}`,
    kind: 'measured',
    measure,
    comparison,
    limit,
    consequence: { kind: 'must' },
  };
};
const kind = (id: string, stock: number, solid: KindOfPiece['solid'], material: Material = PAPER): KindOfPiece => {
  return { id, name: id, stock, solid, material, surface: 'paper', friction: 2 };
};

function planOf(of: Challenge, whose = ANYBODY): BestPlan {
  const plan = bestPlan(of, whose, noTabs);
  if (plan === null) throw new Error('no goal');
  return plan;
}

function bestOf(task: BestTask) {
  const answer = bestBuild(task, LIMIT);
  if (answer.kind !== 'best') throw new Error(`no best: ${JSON.stringify(answer)}`);
  return answer;
}

describe('the steadiest tower of known solids', () => {
  const tiltOf = (kinds: readonly KindOfPiece[], pieces: number): number => {
    const asked = challenge({
      kit: { ...KIT, kinds },
      ranking: by('stands-to'),
      requirements: [must('pieces', 'exactly', pieces)],
    });
    return (Math.atan(bestOf(planOf(asked).task).tower.tipsPush) * 180) / Math.PI;
  };

  it.each([
    ['shells', PAPER, 34.8782577472],
    ['full', { kind: 'full', densityGPerCm3: 0.5 } as const, 37.3308699919],
  ])('a cone on a cube, %s', (_, material, degrees) => {
    const cone = kind('cone', 1, { solid: 'cone', sizes: { radius: 25, height: 50 } }, material);
    const cube = kind('cube', 1, { solid: 'cube', sizes: { edge: 50 } }, material);
    expectNear(tiltOf([cone, cube], 2), degrees, { absolute: 5e-11 });
  });

  it.each([1, 2, 3, 5])('%d cubes', (count) => {
    const cube = kind('cube', 7, { solid: 'cube', sizes: { edge: 50 } });
    expectNear(Math.tan((tiltOf([cube], count) * Math.PI) / 180), 1 / count, { relative: 1e-12 });
  });
});

describe('what a challenge asks', () => {
  const stocks = ({ task }: BestPlan): readonly number[] => task.kinds.map(({ stock }) => stock);

  it('is what its places go by', () => {
    const goals = ['height', 'height-to-width', 'stands-to', 'points', 'courtyard-area'].map(
      (measure) => bestPlan(challenge({ ranking: by(measure) }), ANYBODY, noTabs)?.task.goal.kind ?? null,
    );
    expect(goals).toEqual(['tallest', 'tallest-for-width', 'greatest-tilt', 'most-points', null]);
    const narrow = { ...by('height'), tieBreaks: [{ by: 'base-area', better: 'less', roundTo: 1 }] } as const;
    expect(planOf(challenge({ ranking: narrow })).task.goal.kind).toBe('tallest-on-smallest-base');
    expect(bestPlan(challenge({ ranking: by('points'), points: [] }), ANYBODY, noTabs)).toBeNull();
  });

  it('lets pieces stand beside where grounds add up, and nothing asks for a ground that is the hull of all', () => {
    const narrow = { ...by('height'), tieBreaks: [{ by: 'base-area', better: 'less', roundTo: 1 }] } as const;
    const beside = (base: Challenge['base'], ranking: RankingRule) =>
      planOf(challenge({ base, ranking, points: [] })).task.beside;
    expect([beside('contact-patches', narrow), beside('hull-of-contacts', by('height'))]).toEqual([true, true]);
    expect(beside('hull-of-contacts', narrow)).toBe(false);
  });

  it('takes the rules on pieces, ground, tilt and kinds, and names those that it does not look at', () => {
    const { task, leftOut } = planOf(
      challenge({
        requirements: [
          must('pieces', 'exactly', 3),
          must('base-area', 'at-most', 2345),
          must('stands-to', 'at-least', 0.2),
          must('kind:cube', 'at-most', 1),
          must('full-sets', 'at-least', 1),
          must('volume', 'at-most', 5),
          { id: 'tape', kind: 'judged', text: 'No tape.', consequence: { kind: 'must' } },
        ],
      }),
    );
    expect(task).toMatchObject({ pieces: { least: 3, most: 3 }, baseAtMostMm2: 2345, pushAtLeast: Math.tan(0.2) });
    expect(task.kinds.map(({ stock, least }) => [stock, least])).toEqual([
      [3, 1],
      [1, 1],
    ]);
    expect(leftOut).toEqual({ requirements: ['volume at-most'], rows: [] });
  });

  it('keeps to allowed kinds, to whole pieces and to what a group has earned', () => {
    const [slab, cube] = KIT.kinds;
    if (slab === undefined || cube === undefined) throw new Error('two kinds');
    const kit = { ...KIT, kinds: [{ ...slab, crushed: 1 }, cube] };
    expect(stocks(planOf(challenge({ kit })))).toEqual([2, 2]);
    const only: Requirement = { id: 'k', kind: 'only-kinds', kinds: ['cube'], consequence: { kind: 'must' } };
    expect(stocks(planOf(challenge({ kit, requirements: [only] })))).toEqual([0, 2]);
    const whose = { group: group('terns'), earned: { slab: 1 } };
    expect(stocks(planOf(challenge({ kit }), whose))).toEqual([1, 0]);
  });

  it('is worked out with the sizes that the group measured', () => {
    const own = group('terns', { cube: { edge: 47 } });
    const heights = (whose: BestFor) => planOf(challenge(), whose).task.kinds[1]?.ways[0]?.heightMm;
    expect([heights(ANYBODY), heights({ group: own, earned: null })]).toEqual([50, 47]);
  });

  it('leaves rows out that do not sum over pieces, and keeps rules that cost points as if they had to be', () => {
    const costs: Requirement = { ...must('pieces', 'at-most', 2), consequence: { kind: 'costs', points: 5 } };
    const plan = planOf(
      challenge({
        ranking: by('points'),
        requirements: [costs],
        points: [
          { id: 'tall', measure: 'height', points: 1, per: 10, rounding: 'down' },
          { id: 'yard', measure: 'courtyard-area', points: 1, per: 100, rounding: 'down' },
        ],
      }),
    );
    expect(plan.leftOut.rows).toEqual(['yard']);
    expect([plan.takenAsMust, plan.task.pieces]).toEqual([['pieces at-most'], { least: 1, most: 2 }]);
  });
});

describe('how near a build comes', () => {
  // Two slabs and two cubes of 60 x 40 x 30 and 50: 60 + 60 + 50 + 50 at most, a slab on its short side being 60 high.
  const four = challenge({ requirements: [must('pieces', 'at-most', 4)] });
  const near = (of: Challenge, ...kinds: readonly string[]) => {
    const plan = planOf(of);
    return nearBest(reportOn(attempt({ layout: laid(...kinds) }), of), plan, bestBuild(plan.task, LIMIT));
  };

  it('is told in steps of 5, rounded down, of few pieces', () => {
    // 3 slabs of 60 and a cube: 230. A slab on its base and a cube: 80 of 230, 34.8 %.
    expect(near(four, 'slab', 'cube')).toEqual({ percent: 30, about: true, over: false });
  });

  it('is told exactly of many, and never of a build that breaks a rule', () => {
    const [slab, cube] = KIT.kinds;
    if (slab === undefined || cube === undefined) throw new Error('two kinds');
    const many = challenge({
      kit: {
        ...KIT,
        kinds: [
          { ...slab, stock: 4 },
          { ...cube, stock: 4 },
        ],
      },
    });
    // 4 x 60 + 4 x 50 = 440: 80 are 18.18 %.
    expect(near(many, 'slab', 'cube')).toEqual({ percent: 18, about: false, over: false });
    expect(near(four, 'slab', 'slab', 'slab', 'cube', 'cube')).toBeNull();
  });

  it('is not told where a rule that costs points is broken, which the best build keeps', () => {
    const most = must('pieces', 'at-most', 2);
    const costs: Requirement = { ...most, consequence: { kind: 'costs', points: 5 } };
    const tall = { id: 'tall', measure: 'height', points: 1, per: 10, rounding: 'none' } as const;
    const of = challenge({ ranking: by('points'), requirements: [costs], points: [tall] });
    // 60 and 60 are the best of two pieces.
    expect(near(of, 'slab', 'cube')).toMatchObject({ percent: 65 });
    expect(near(of, 'slab', 'cube', 'cube')).toBeNull();
  });

  it('is not told of a build that fell, nor without a best build', () => {
    const plan = planOf(four);
    const fell = reportOn(attempt({ state: { kind: 'fell', afterSeconds: 3 } }), four);
    expect(nearBest(fell, plan, bestBuild(plan.task, LIMIT))).toBeNull();
    expect(nearBest(reportOn(attempt(), four), plan, bestBuild(plan.task, 1))).toBeNull();
  });
});
