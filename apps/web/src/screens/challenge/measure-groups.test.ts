import { demoClass } from '@cairnmark/demo';
import type { Challenge } from '@cairnmark/engine';
import { factIds, unitOf } from '@cairnmark/engine';
import { RULERS } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { limitsOf, ratesOf, usualLimit } from './amounts-of.ts';
import { measureGroups } from './measure-groups.ts';

const [, , WALL] = demoClass().challenges as [Challenge, Challenge, Challenge];
const GAME = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
const PLAYED: Challenge = { ...WALL, supply: GAME };

it('every fact that a challenge can ask about is offered, once', () => {
  const offered = measureGroups(PLAYED).flatMap(([, measures]) => measures);
  expect([...offered].sort()).toEqual([...factIds(PLAYED)].sort());
  expect(measureGroups(PLAYED).map(([group]) => group)).toContain('earned');
  expect(measureGroups(WALL).map(([group]) => group)).not.toContain('earned');
});

it('what is counted is listed apart from what is measured', () => {
  const groups = new Map(measureGroups(PLAYED));
  expect(groups.get('build')?.every((measure) => ['mm', 'mm2', 'mm3', 'count'].includes(unitOf(measure)))).toBe(true);
  expect(groups.get('counted')?.every((measure) => unitOf(measure) === 'count')).toBe(true);
  expect(groups.get('judged')).toEqual(['judged:idea', 'judged:craft']);
});

it.each(RULERS)('a new rule or row on any measure starts within its limits: $id', ({ unit }) => {
  const lengthMm = unit === 'in' ? 25.4 : 10;
  const ones = { mm: lengthMm, mm2: lengthMm ** 2, mm3: lengthMm ** 3, count: 1, ratio: 1, s: 1, rad: Math.PI / 180 };
  for (const measure of factIds(PLAYED)) {
    const one = ones[unitOf(measure)];
    const [limit, rate] = [limitsOf(measure), ratesOf(measure, one)];
    const usual = usualLimit(measure, one);
    expect(usual, measure).toBeGreaterThan(limit.least);
    expect(usual, measure).toBeLessThanOrEqual(limit.most);
    expect(limit.whole && !Number.isInteger(usual), measure).toBe(false);
    expect(one, measure).toBeGreaterThanOrEqual(rate.least);
    expect(rate.least, measure).toBeGreaterThan(0);
  }
});
