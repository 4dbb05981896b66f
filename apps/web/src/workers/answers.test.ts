import { demoClass } from '@cairnmark/demo';
import { rememberedReports, scoreClass, USUAL_LIMITS } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { answerTo } from './answers.ts';

describe('the score of a class, asked again after a tap', () => {
  it('is that of a fresh scoring, whichever attempt has changed', async () => {
    const tools = {
      solver: async () => HIGHS,
      evaluator: rememberedReports(),
      progress: () => undefined,
    };
    const demo = demoClass();
    // A tower, a build that takes the solver, and one at another challenge: to score them all takes seconds.
    const few = ['tall-light', 'narrow-rock', 'harbour-wall'];
    const attempts = few.flatMap((id) => demo.attempts.filter((one) => one.challenge === id).slice(0, 1));
    const record = { ...demo, attempts };
    const ask = (ofClass: typeof record) =>
      answerTo({ number: 1, topic: 'score', ask: structuredClone(ofClass) }, tools);
    await ask(record);
    const statics = { solver: HIGHS, limits: USUAL_LIMITS };
    for (const at of attempts.keys()) {
      const open = { ...record, attempts: attempts.map((one, k) => (k === at ? { ...one, confirmedBy: null } : one)) };
      expect(await ask(open)).toEqual(scoreClass(open, statics));
    }
  }, 60_000);
});
