import { describe, expect, it } from 'vitest';
import type { Decision } from '../types.ts';
import { decisionOn, decisionsMade } from './decisions.ts';

const decided = (value: number, time: string, changes: Partial<Decision> = {}): Decision => ({
  measure: 'height',
  value,
  by: 'Ada',
  reason: 'read again',
  at: `2026-03-05T${time}:00+01:00`,
  ...changes,
});
const BACK = { takenBack: { at: '2026-03-05T11:00:00+01:00', reason: 'Wrong tower.' } };

const told = (...decisions: readonly Decision[]) =>
  decisionsMade(decisions).map(({ decision, state, replaces }) => [decision.value, state, replaces?.value ?? null]);

describe('several decisions on one value', () => {
  it('[A16] the latest counts, and each replaced the one before it, in whatever order they stand', () => {
    expect(told(decided(350, '10:20'), decided(340, '10:00'), decided(345, '10:10'))).toEqual([
      [350, 'counts', 345],
      [340, 'replaced', null],
      [345, 'replaced', 340],
    ]);
    expect(decisionOn('height', [decided(350, '10:20'), decided(340, '10:00')])?.value).toBe(350);
  });

  it('[A16] at one moment the last in the record counts', () => {
    expect(told(decided(340, '10:00'), decided(350, '10:00'))).toEqual([
      [340, 'replaced', null],
      [350, 'counts', 340],
    ]);
  });

  it('[A16] one that was taken back counts for nothing and replaced nothing', () => {
    expect(told(decided(340, '10:00'), decided(345, '10:10', BACK), decided(350, '10:20'))).toEqual([
      [340, 'replaced', null],
      [345, 'taken-back', null],
      [350, 'counts', 340],
    ]);
    expect(told(decided(340, '10:00'), decided(345, '10:10', BACK))[0]).toEqual([340, 'counts', null]);
    expect(decisionOn('height', [decided(345, '10:10', BACK)])).toBeNull();
  });

  it('[A16] decisions on different values leave each other alone', () => {
    expect(told(decided(340, '10:00'), decided(2400, '10:10', { measure: 'base-area' }))).toEqual([
      [340, 'counts', null],
      [2400, 'counts', null],
    ]);
  });
});
