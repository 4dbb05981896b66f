import { describe, expect, it } from 'vitest';
import { attempt, challenge, reportOn } from '../../../../../tests/reference/small-class.ts';
import type { OursFirst } from './ours-first.ts';
import { AS_USUAL, coveringOf } from './ours-first.ts';

const ON: OursFirst = { on: true, looked: [] };
const PAID = challenge({ own: { pi: 'key', closeShare: 0.05, rewards: [{ measure: 'volume', points: 3 }] } });
const PLAIN = challenge({ ranking: { first: { by: 'points', better: 'more', roundTo: 1 }, tieBreaks: [] } });

const covering = (on = ON, of = PAID, tried = attempt({})) => coveringOf(on, of, reportOn(tried, of), tried.own);

describe('our own result first', () => {
  it('is usual where an own result earns, but not for the youngest, and where none is paid for', () => {
    expect(covering(AS_USUAL)).toMatchObject({ on: true, usual: true });
    expect(covering(AS_USUAL, { ...PAID, gradePreset: 'grades-2-3' })).toMatchObject({ on: false, usual: true });
    expect(covering(AS_USUAL, PLAIN)).toMatchObject({ on: false, usual: true });
    expect(covering(ON, PLAIN)).toMatchObject({ on: true, usual: false });
  });

  it('covers what an own result is paid for; else what earns points; else what the places go by', () => {
    expect([...covering().covered]).toEqual(['volume']);
    expect([...covering(ON, PLAIN).covered]).toEqual(['height']);
    expect([...covering(ON, challenge({ points: [] })).covered]).toEqual(['height']);
  });

  it('covers the total with what it is made of, and not for what only the own result earns', () => {
    expect(covering(ON, PLAIN).totalCovered).toBe(true);
    expect(covering().totalCovered).toBe(false);
  });

  it('covers no longer what the group has entered, or looked at, which it tells', () => {
    const entered = attempt({ own: [{ measure: 'volume', value: 1000 }] });
    expect(covering(ON, PAID, entered).covered.size).toBe(0);
    const looked = covering({ on: true, looked: ['volume'] });
    expect([looked.covered.size, ...looked.looked]).toEqual([0, 'volume']);
  });

  it('covers nothing that people read or decided themselves, nor what the class is not shown', () => {
    const read = attempt({ observed: { heightReadingsMm: [79] } });
    expect(covering(ON, PLAIN, read).asks).toBe(false);
    expect(covering(ON, { ...PLAIN, hidden: ['height'] }).asks).toBe(false);
  });

  it('covers nothing while it is off', () => {
    expect(covering({ on: false, looked: [] }).covered.size).toBe(0);
  });
});
