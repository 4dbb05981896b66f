// What the worker answers about the best possible build, and what it tells on the way.

import { demoClass } from '@cairnmark/demo';
import type { Challenge } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { bestAnswerTo } from './best-answers.ts';

const [TALL, NARROW] = demoClass().challenges;
const ANYBODY = { group: null, earned: null };

function answerTo(challenge: Challenge | undefined, front: boolean) {
  if (challenge === undefined) throw new Error('no such challenge');
  const told: [done: number, most: number][] = [];
  const answer = bestAnswerTo({ challenge, whose: ANYBODY, front }, (done, most) => told.push([done, most]));
  return { answer, told };
}

describe('the best possible build in the worker', () => {
  it('is that of the challenge, with the front where it is asked for', () => {
    expect(answerTo(NARROW, true).answer).toMatchObject({
      answer: { kind: 'best', value: 400, scope: 'any' },
      front: { finished: true, points: [{ heightMm: 400 }] },
    });
    expect(answerTo(TALL, false).answer.front).toBeNull();
  });

  it('tells how far it is, never back and never past the most', () => {
    const rule = { kind: 'measured', comparison: 'at-least', consequence: { kind: 'must' } } as const;
    const steep = { ...rule, id: 'steep', measure: 'stands-to', limit: Math.PI / 18 };
    const tilted = TALL && { ...TALL, requirements: [...TALL.requirements, steep] };
    const { answer, told } = answerTo(tilted, true);
    expect(answer.answer).toMatchObject({ kind: 'best', scope: 'centred' });
    expect(told.length).toBeGreaterThan(10);
    expect(told.map(([done]) => done)).toEqual(told.map(([done]) => done).sort((a, b) => a - b));
    expect(told.every(([done, most]) => done <= most)).toBe(true);
  });

  it('is none where places go by something else', () => {
    const yard = { first: { by: 'courtyard-area', better: 'more', roundTo: 1 }, tieBreaks: [] } as const;
    const { answer } = answerTo(TALL && { ...TALL, ranking: yard }, true);
    expect(answer).toEqual({ plan: null, answer: null, front: null });
  });
});
