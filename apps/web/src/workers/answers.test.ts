import { demoClass } from '@cairnmark/demo';
import type { Report } from '@cairnmark/engine';
import { rememberedReports, scoreClass, USUAL_LIMITS } from '@cairnmark/engine';
import { rememberedTabPaper } from '@cairnmark/nets';
import { describe, expect, it } from 'vitest';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { answerTo } from './answers.ts';

const TOOLS = {
  solver: async () => HIGHS,
  evaluator: rememberedReports(),
  progress: () => undefined,
  tabsOf: rememberedTabPaper(),
};

describe('why a build falls, to be drawn', () => {
  it('shows the pieces that go, turning over their edge', async () => {
    const demo = demoClass();
    const attempt = demo.attempts.find(({ id }) => id === 'tall-light-eiders-0935')!;
    const challenge = demo.challenges.find(({ id }) => id === attempt.challenge)!;
    const build = { attempt, challenge, group: demo.groups.find(({ id }) => id === attempt.group)!, events: [] };
    const report = (await answerTo({ number: 1, topic: 'report', ask: build }, TOOLS)) as { value: Report };
    const stability = report.value.stability!;
    const ask = structuredClone({ ...build, stability });
    expect(await answerTo({ number: 2, topic: 'overlay', ask }, TOOLS)).toMatchObject({
      falls: true,
      marks: stability.first.map(({ pieces, hinge }) => ({ pieces, hinge: hinge?.ends })),
    });
    const empty = { ...attempt, layout: { kind: 'laid-out' as const, pieces: [] } };
    expect(await answerTo({ number: 3, topic: 'overlay', ask: { ...ask, attempt: empty } }, TOOLS)).toBeNull();
  });
});

describe('the score of a class, asked again after a tap', () => {
  it('is that of a fresh scoring, whichever attempt has changed', async () => {
    const demo = demoClass();
    // A tower, a build that takes the solver, and one at another challenge: to score them all takes seconds.
    const few = ['tall-light', 'narrow-rock', 'harbour-wall'];
    const attempts = few.flatMap((id) => demo.attempts.filter((one) => one.challenge === id).slice(0, 1));
    const record = { ...demo, attempts };
    const ask = (ofClass: typeof record) =>
      answerTo({ number: 1, topic: 'score', ask: structuredClone(ofClass) }, TOOLS);
    await ask(record);
    const statics = { solver: HIGHS, limits: USUAL_LIMITS, tabsOf: TOOLS.tabsOf };
    for (const at of attempts.keys()) {
      const open = { ...record, attempts: attempts.map((one, k) => (k === at ? { ...one, confirmedBy: null } : one)) };
      expect(await ask(open)).toEqual(scoreClass(open, statics));
    }
  }, 60_000);
});
