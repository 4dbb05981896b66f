// The best possible build in sentences, in both languages: every answer there is.

import type { BestPlan } from '@cairnmark/engine';
import type { BestAnswer, BestGoal, BestTower } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { challenge } from '../../../tests/reference/small-class.ts';
import { talkWords, wordsFor } from './at-once.ts';
import { bestSentences } from './best.ts';
import { inClass } from './in-class.ts';
import type { Language } from './language.ts';

const TOWER: BestTower = {
  pieces: [
    { kind: 'slab', way: 'base' },
    { kind: 'cube', way: 'base' },
    { kind: 'cube', way: 'base' },
  ],
  beside: [{ kind: 'slab', way: 'short-side' }],
  heightMm: 130,
  baseMm2: 4800,
  tipsPush: 0.03,
  standsPush: 0.03,
};
const GOALS: readonly BestGoal[] = [
  { kind: 'tallest' },
  { kind: 'tallest-on-smallest-base' },
  { kind: 'tallest-for-width' },
  { kind: 'greatest-tilt' },
  { kind: 'most-points', rows: [{ id: 'tall-row', measure: 'height', points: 2, per: 10, rounding: 'down' }] },
];
const plan = (goal: BestGoal, leftOut = { requirements: [] as string[], rows: [] as string[] }): BestPlan => ({
  task: {
    kinds: [],
    pieces: { least: 1, most: 4 },
    beside: true,
    baseAtMostMm2: null,
    pushAtLeast: 0,
    grips: null,
    goal,
  },
  leftOut,
  takenAsMust: leftOut.requirements,
});
const best = { kind: 'best', tower: TOWER, value: 130, scope: 'any', ceiling: 130, looked: 7 } as const;
const ANSWERS: readonly BestAnswer[] = [
  best,
  { ...best, scope: 'centred', ceiling: null },
  { ...best, scope: 'centred', ceiling: 170 },
  { kind: 'not-finished', tower: TOWER, value: 130, noMoreThan: 170, looked: 7 },
  { kind: 'not-finished', tower: null, value: null, noMoreThan: Number.POSITIVE_INFINITY, looked: 7 },
  { kind: 'none', why: { code: 'too-few-pieces', pieces: 3, needed: 5 }, looked: 0 },
  { kind: 'none', why: { code: 'too-few-carriers', most: 3, needed: 5 }, looked: 0 },
  { kind: 'none', why: { code: 'base-too-small', smallestMm2: 1200 }, looked: 0 },
  { kind: 'none', why: { code: 'too-steep', greatest: TOWER }, looked: 0 },
  { kind: 'none', why: { code: 'rules-clash' }, looked: 0 },
];
const CHALLENGE = challenge({
  requirements: [
    { id: 'r', kind: 'measured', measure: 'volume', comparison: 'at-most', limit: 5000, consequence: { kind: 'must' } },
  ],
});

const told = (language: Language, of: BestPlan | null, answer: BestAnswer | null, at = CHALLENGE): readonly string[] =>
  bestSentences(of, answer, at, {
    words: wordsFor(language),
    inClass: inClass(language, 'mm'),
    talk: talkWords(language),
  });

describe('the best possible build in words', () => {
  it('says what it reaches, whose best it is, how it is put together, and how far it bears a tilt', () => {
    expect(told('en', plan({ kind: 'tallest' }), best)).toEqual([
      'The tallest build that can be: 130 mm.',
      'No build of these pieces that keeps the rules can have more.',
      'From the table up: Slab on its base, 2 × Cube on its base.',
      'Beside it: Slab on its short side.',
      'It stands until the table is tilted by 1.7°.',
      'That is so little that it may fall on a real table.',
    ]);
  });

  it('calls what another build may pass the best of towers, in both languages', () => {
    const centred = { ...best, scope: 'centred', ceiling: 170 } as const;
    for (const goal of GOALS.slice(0, 2)) {
      expect(told('en', plan(goal), centred)[0]).toMatch(/^The tallest tower: 130 mm\./);
      expect(told('es', plan(goal), centred)[0]).toMatch(/^La torre más alta: 130 mm\./);
    }
    const [, , , , points] = GOALS;
    if (points === undefined) throw new Error('points');
    expect(told('en', plan(points), centred)[0]).toBe('The most points with a tower: 130 points.');
  });

  it('never calls a search that was cut off the best', () => {
    const cut = ANSWERS.filter(({ kind }) => kind === 'not-finished');
    for (const answer of cut) {
      const [first] = told('en', plan({ kind: 'tallest' }), answer);
      expect(first).toBe(
        'The search stopped before the end: so many builds there are. Nothing here is called the best.',
      );
    }
  });

  it('names what was not looked at', () => {
    const of = plan({ kind: 'tallest' }, { requirements: ['r'], rows: ['tall-row'] });
    expect(told('en', of, best).slice(-3)).toEqual([
      'This was not looked at: volume at most 5 cm³.',
      'Points for this are not among them: height.',
      'This is kept, and what it is worth is not among the points: volume at most 5 cm³.',
    ]);
  });

  it.each(['en', 'es'] as const)('has words for every answer and every goal (%s)', (language) => {
    for (const goal of GOALS) {
      for (const answer of ANSWERS) {
        const lines = told(language, plan(goal, { requirements: ['r'], rows: ['tall-row'] }), answer);
        for (const line of lines) expect(line).toMatch(/^[A-ZÁÉÍÓÚ¿¡].*[.!?]$/);
        expect(lines.join(' ')).not.toMatch(/\{|undefined|NaN|Infinity/);
      }
    }
    const yard = { first: { by: 'courtyard-area', better: 'more', roundTo: 1 }, tieBreaks: [] } as const;
    expect(told(language, null, null, challenge({ ranking: yard }))).toHaveLength(1);
  });
});
