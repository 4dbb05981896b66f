import { demoClass } from '@cairnmark/demo';
import type { EngineIssue, Report } from '@cairnmark/engine';
import { evaluate, USUAL_LIMITS } from '@cairnmark/engine';
import type { Layout } from '@cairnmark/geometry';
import { noTabs } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Worked } from '../../workers/worked.ts';
import { buildState, moodOf } from './build-state.ts';

const record = demoClass();
const IDLE: Worked<Report> = {
  value: null,
  working: false,
  progress: null,
  issues: [],
  failed: null,
  stopped: false,
};
const ISSUE: EngineIssue = { code: 'overlaps', path: [], details: {} };

/** The report on an attempt of the demo, with its layout or another one. */
function reportOn(id: string, layout?: Layout): { layout: Layout; report: Report } {
  const attempt = record.attempts.find((one) => one.id === id);
  const challenge = record.challenges.find((one) => one.id === attempt?.challenge);
  const group = record.groups.find((one) => one.id === attempt?.group);
  if (attempt === undefined || challenge === undefined || group === undefined) throw new RangeError(id);
  const built = { ...attempt, layout: layout ?? attempt.layout };
  const result = evaluate(
    built,
    { challenge, group, events: [] },
    { solver: null, limits: USUAL_LIMITS, tabsOf: noTabs },
  );
  if (!result.ok) throw new RangeError(JSON.stringify(result.issues));
  return { layout: built.layout, report: result.value };
}

const stateOn = (id: string, change: Partial<Worked<Report>> = {}, layout?: Layout) => {
  const built = reportOn(id, layout);
  return buildState(built.layout, { ...IDLE, value: built.report, ...change });
};
const tower = (...kinds: string[]): Layout => ({
  kind: 'laid-out',
  pieces: kinds.map((kind) => ({ kind, resting: 'base', xMm: 0, yMm: 0, turnRad: 0 })),
});

describe('the state of a build', () => {
  it('is empty with nothing on the table, whatever was worked out before', () => {
    expect(stateOn('tall-light-puffins-0920', {}, tower())).toEqual({ is: 'empty' });
  });

  it('is the judgement of a tower that keeps its rules', () => {
    const state = stateOn('tall-light-puffins-0941');
    expect([state.is, moodOf(state)]).toEqual(['judged', 'warn']);
  });

  it('is red when it falls, also where a rule is broken', () => {
    const state = stateOn('tall-light-eiders-0935');
    expect([state.is, moodOf(state)]).toEqual(['judged', 'bad']);
  });

  it('is a broken rule with a piece too many', () => {
    const state = stateOn('tall-light-puffins-0920', {}, tower('cube', 'cube', 'cube', 'cube', 'cube', 'cube'));
    expect(state).toMatchObject({ is: 'rule-broken', broken: ['five-pieces'], stability: { verdict: 'wobbly' } });
    expect(moodOf(state)).toBe('bad');
  });

  it('is no broken rule while pieces are still missing', () => {
    expect(stateOn('tall-light-puffins-0920', {}, tower('cube', 'cube', 'cube')).is).toBe('judged');
  });

  it('is numbers only where nothing is drawn', () => {
    const layout: Layout = { kind: 'numbers-only', pieces: ['cube', 'cube', 'cube'] };
    expect(stateOn('tall-light-puffins-0920', {}, layout)).toEqual({ is: 'numbers-only' });
  });

  it('keeps the last judgement while a small change is worked out, and tells of a large one', () => {
    expect(stateOn('tall-light-puffins-0941', { working: true }).is).toBe('judged');
    const progress = { solved: 3, most: 120 };
    expect(stateOn('tall-light-puffins-0941', { working: true, progress })).toEqual({ is: 'working', progress });
  });

  it('tells what was refused, what failed, and what was stopped', () => {
    const layout = tower('cube');
    expect(buildState(layout, { ...IDLE, issues: [ISSUE] })).toEqual({ is: 'refused' });
    expect(buildState(layout, { ...IDLE, failed: 'out of memory' })).toEqual({ is: 'failed' });
    expect(buildState(layout, IDLE)).toEqual({ is: 'stopped' });
    // What was worked out before is of another build.
    expect(stateOn('tall-light-puffins-0920', { stopped: true })).toEqual({ is: 'stopped' });
  });
});
