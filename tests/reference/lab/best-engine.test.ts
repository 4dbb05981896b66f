// What the search says of its build, held against the engine that scores every build: seeded kits of real solids of several
// materials, sizes and frictions, under rules of every kind. Nothing of the search is used to evaluate.

import type { Challenge, Report } from '@cairnmark/engine';
import { bestLayout, bestPlan, evaluate, USUAL_LIMITS } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import { rememberedTabPaper } from '@cairnmark/nets';
import type { BestAnswer } from '@cairnmark/scoring';
import { bestBuild } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { freshSeed, share } from '../../tools/share.ts';
import { expectNear } from '../../tools/within.ts';
import { attempt, group } from '../small-class.ts';
import { seededChallenge } from './best-classes.ts';

const LIMIT = 2_000_000;
const NEAR = { relative: 1e-9 };
const tabsOf = rememberedTabPaper();

describe('the best build, evaluated as any build is', () => {
  it.each([
    [share(400, 60), 1, 'seeds from 1'],
    [share(200, 15), freshSeed('best engine'), 'fresh seeds'],
  ])('has the height, the base, the tilt and the points that the search said: %d kits, %#, %s', (count, first) => {
    const told = new Map<string, number>();
    for (let seed = first; seed < first + count; seed += 1) {
      const outcome = agreed(seededChallenge(seed), seed);
      told.set(outcome, (told.get(outcome) ?? 0) + 1);
    }
    expect(told.get('best')).toBeGreaterThan(count / 3);
  });
});

function agreed(challenge: Challenge, seed: number): BestAnswer['kind'] {
  const plan = bestPlan(challenge, { group: null, earned: null }, tabsOf);
  if (plan === null) throw new Error('no goal');
  const answer = bestBuild(plan.task, LIMIT);
  if (answer.kind !== 'best') return answer.kind;
  const { tower, value } = answer;
  const report = reportOn(challenge, bestLayout(tower, challenge, null, tabsOf));
  const what = (name: string): string => `${name} of kit ${seed}`;
  expectNear(valueOf(report, 'height'), tower.heightMm, NEAR, what('height'));
  if (challenge.base !== 'hull-of-contacts' || tower.beside.length === 0)
    expectNear(valueOf(report, 'base-area'), tower.baseMm2, NEAR, what('base'));
  expectNear(Math.tan(report.stability?.tipsAt?.tiltRad ?? Number.NaN), tower.tipsPush, NEAR, what('tilt'));
  expectNear(Math.tan(valueOf(report, 'stands-to')), tower.standsPush, NEAR, what('what it stands to'));
  const sought = { points: report.total ?? Number.NaN, 'stands-to': Math.tan(valueOf(report, 'stands-to')) };
  const by = challenge.ranking.first.by;
  const reached = by === 'points' || by === 'stands-to' ? sought[by] : valueOf(report, by);
  expectNear(reached, value, NEAR, what(by));
  // Every rule is kept.
  expect(report.requirements.map(({ verdict }) => verdict)).toEqual(report.requirements.map(() => 'kept'));
  return 'best';
}

const valueOf = ({ facts }: Report, id: string): number => facts.find((fact) => fact.id === id)?.value ?? Number.NaN;

function reportOn(challenge: Challenge, layout: Layout): Report {
  const belonging = { challenge, group: group('terns'), events: [] };
  const result = evaluate(attempt({ layout }), belonging, { solver: null, limits: USUAL_LIMITS, tabsOf });
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.issues)}`);
  return result.value;
}
