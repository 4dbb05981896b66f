import { describe, expect, it } from 'vitest';
import { challenge } from '../../../../tests/reference/small-class.ts';
import type { Challenge } from '../types.ts';
import { isShown } from './shown.ts';

const HIDDEN = ['height', 'volume', 'base-area', 'pieces', 'paper', 'footprint-area'];
const bare = challenge({
  hidden: HIDDEN,
  points: [],
  ranking: { first: { by: 'points', better: 'more', roundTo: 0 }, tieBreaks: [] },
});
const shown = (changes: Partial<Challenge>): readonly string[] =>
  HIDDEN.filter((measure) => isShown(measure, { ...bare, ...changes }));

describe('the measures that a class sees', () => {
  it('are those that the challenge does not hide', () => {
    expect(isShown('footprint-perimeter', bare)).toBe(true);
    expect(shown({})).toEqual([]);
  });

  it('are, though hidden, those that places depend on', () => {
    const key = (by: string) => ({ by, better: 'more', roundTo: 0 }) as const;
    expect(shown({ ranking: { first: key('height'), tieBreaks: [key('volume')] } })).toEqual(['height', 'volume']);
  });

  it('are, though hidden, those that earn points', () => {
    expect(shown({ points: [{ id: 'r', measure: 'pieces', points: 1, per: 1, rounding: 'none' }] })).toEqual([
      'pieces',
    ]);
  });

  it('are, though hidden, those that a rule is about, whatever hangs on it', () => {
    const rule = { id: 'r', kind: 'measured', measure: 'base-area', comparison: 'at-most', limit: 2400 } as const;
    expect(shown({ requirements: [{ ...rule, consequence: { kind: 'must' } }] })).toEqual(['base-area']);
  });

  it('are, though hidden, those of which an own result is rewarded', () => {
    expect(shown({ own: { ...bare.own, rewards: [{ measure: 'paper', points: 2 }] } })).toEqual(['paper']);
  });
});
