import { describe, expect, it } from 'vitest';
import type { Comparison, Facts, Requirement, Verdict } from '../types.ts';
import { costOfBroken, requirementLines } from './lines.ts';

const MUST = { kind: 'must' } as const;

function measured(comparison: Comparison, limit: number, measure = 'pieces'): Requirement {
  return { id: `${measure} ${comparison} ${limit}`, kind: 'measured', measure, comparison, limit, consequence: MUST };
}

function judged(id: string, points?: number): Requirement {
  const consequence = points === undefined ? MUST : ({ kind: 'costs', points } as const);
  return { id, kind: 'judged', text: id, consequence };
}

function facts(values: Readonly<Record<string, number | null>>): Facts {
  return new Map(Object.entries(values).map(([id, value]) => [id, { id, value, unit: 'count', tolerance: 3 }]));
}

function verdictOf(requirement: Requirement, values: Readonly<Record<string, number | null>>): Verdict | undefined {
  return requirementLines([requirement], facts(values), {})[0]?.verdict;
}

describe('rules that a build must keep', () => {
  it('[Q1] tells all at once, each with its number', () => {
    const requirements = [
      measured('exactly', 5),
      measured('at-most', 3000, 'base-area'),
      measured('at-least', 200, 'height'),
      judged('no-tape'),
      judged('hands-off'),
    ];
    const lines = requirementLines(requirements, facts({ pieces: 7, 'base-area': 3500, height: 235 }), {
      'no-tape': false,
    });
    expect(lines.map(({ verdict, value, limit }) => [verdict, value, limit])).toEqual([
      ['broken', 7, 5],
      ['broken', 3500, 3000],
      ['kept', 235, 200],
      ['broken', null, null],
      ['not-judged', null, null],
    ]);
    expect(lines[1]).toEqual({
      requirement: 'base-area at-most 3000',
      verdict: 'broken',
      measure: 'base-area',
      value: 3500,
      comparison: 'at-most',
      limit: 3000,
      consequence: MUST,
    });
  });

  it.each<[Comparison, Verdict, Verdict, Verdict]>([
    ['exactly', 'broken', 'kept', 'broken'],
    ['at-least', 'broken', 'kept', 'kept'],
    ['at-most', 'kept', 'kept', 'broken'],
  ])('[Q2] %s: a millionth below, at, and a millionth above the limit', (comparison, below, at, above) => {
    const verdicts = [0.299999, 0.1 + 0.2, 0.300001].map((height) =>
      verdictOf(measured(comparison, 0.3, 'height'), { height }),
    );
    expect(verdicts).toEqual([below, at, above]);
  });

  it('[Q2] gives no allowance for measuring error', () => {
    // The tolerance of the fact is 3: a height of 197.1 would pass with it.
    expect(verdictOf(measured('at-least', 200, 'height'), { height: 197.1 })).toBe('broken');
  });

  it('[Q3] a measure that was not measured keeps and breaks nothing', () => {
    for (const comparison of ['exactly', 'at-least', 'at-most'] as const) {
      expect(verdictOf(measured(comparison, 0), { pieces: null })).toBe('not-measured');
      expect(verdictOf(measured(comparison, 0), {})).toBe('not-measured');
    }
  });

  it('[Q4] yes keeps, no breaks, no answer is not judged', () => {
    const verdicts = ['yes', 'no', 'toString'].map((id) =>
      requirementLines([judged(id)], facts({}), { yes: true, no: false }),
    );
    expect(verdicts.map(([line]) => line?.verdict)).toEqual(['kept', 'broken', 'not-judged']);
  });

  it('[Q5] only broken rules with a cost take points', () => {
    const costly: Requirement = {
      id: 'low',
      kind: 'measured',
      measure: 'height',
      comparison: 'at-least',
      limit: 100,
      consequence: { kind: 'costs', points: 7 },
    };
    const requirements = [
      judged('kept', 2),
      judged('broken', 3.1),
      judged('also', 0.2),
      judged('unknown', 13),
      judged('must'),
      costly,
    ];
    const lines = requirementLines(requirements, facts({}), { kept: true, broken: false, also: false, must: false });
    expect(costOfBroken(lines)).toBe(3.3);
  });
});
