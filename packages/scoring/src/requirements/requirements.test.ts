import { describe, expect, it } from 'vitest';
import type { Comparison, Facts, Requirement, Verdict } from '../types.ts';
import { pointsOfRequirements, requirementLines, requirementPoints } from './lines.ts';

const MUST = { kind: 'must' } as const;
const ANSWERS = { kept: { kept: true }, broken: { kept: false }, also: { kept: false }, must: { kept: false } };

function measured(comparison: Comparison, limit: number, measure = 'pieces'): Requirement {
  return { id: `${measure} ${comparison} ${limit}`, kind: 'measured', measure, comparison, limit, consequence: MUST };
}

function judged(id: string, points?: number): Requirement {
  const consequence = points === undefined ? MUST : ({ kind: 'costs', points } as const);
  return { id, kind: 'judged', text: id, consequence };
}

function facts(values: Readonly<Record<string, number | null>>): Facts {
  return new Map(
    Object.entries(values).map(([id, value]) => [id, { id, value, unit: 'count', tolerance: 3, errors: {} }]),
  );
}

function verdictOf(requirement: Requirement, values: Readonly<Record<string, number | null>>): Verdict | undefined {
  return requirementLines([requirement], facts(values), {}, null, null)[0]?.verdict;
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
    const values = facts({ pieces: 7, 'base-area': 3500, height: 235 });
    const lines = requirementLines(requirements, values, { 'no-tape': { kept: false } }, null, null);
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
      breaches: [],
      note: null,
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
      requirementLines([judged(id)], facts({}), { yes: { kept: true }, no: { kept: false } }, null, null),
    );
    expect(verdicts.map(([line]) => line?.verdict)).toEqual(['kept', 'broken', 'not-judged']);
  });

  const judgedRules = [
    judged('kept', 2),
    judged('broken', 3.1),
    judged('also', 0.2),
    judged('unknown', 13),
    judged('must'),
  ];
  const costing = (points: number): Requirement => ({
    ...measured('at-least', 100, 'height'),
    consequence: { kind: 'costs', points },
  });

  it('[Q5] only broken rules with a cost take points; one that nobody has judged yet takes none', () => {
    const taken = (height: number) =>
      pointsOfRequirements(requirementLines([...judgedRules, costing(7)], facts({ height }), ANSWERS, null, null));
    expect([taken(100), taken(99)]).toEqual([-3.3, -10.3]);
  });

  it('[Q5] what a rule costs is not known while its measure, or the pieces it is about, are not', () => {
    const kinds: Requirement = {
      id: 'kinds',
      kind: 'only-kinds',
      kinds: ['cube'],
      consequence: { kind: 'costs', points: 4 },
    };
    const taken = (more: Requirement, used: Readonly<Record<string, number>> | null = null) => {
      const lines = requirementLines([...judgedRules, more], facts({ height: null }), ANSWERS, used, null);
      return [pointsOfRequirements(lines), requirementPoints(lines.at(-1)!)];
    };
    expect(taken(costing(7))).toEqual([null, null]);
    expect(taken(costing(0))).toEqual([-3.3, 0]);
    expect(taken(kinds)).toEqual([null, null]);
    expect(taken(kinds, { drum: 1 })).toEqual([-7.3, -4]);
  });

  it('[Q8] only kept rules that earn give points, beside what broken ones cost', () => {
    const earning = (id: string, points: number): Requirement => ({
      ...judged(id),
      consequence: { kind: 'earns', points },
    });
    const requirements = [earning('kept', 0.1), earning('broken', 7), earning('unknown', 13)];
    const points = (more: readonly Requirement[]) =>
      pointsOfRequirements(requirementLines([...requirements, ...more], facts({}), ANSWERS, null, null));
    expect(points([])).toBe(0.1);
    // 0.1 + 0.2 - 3.1.
    expect(points([earning('kept', 0.2), judged('broken', 3.1)])).toBe(-2.8);
    // The limit is the only thing that a kept measure must reach, and it is reached at 200 itself.
    const high: Requirement = { ...measured('at-least', 200, 'height'), consequence: { kind: 'earns', points: 5 } };
    const earned = [199.999999, 200].map((height) =>
      pointsOfRequirements(requirementLines([high], facts({ height }), {}, null, null)),
    );
    expect(earned).toEqual([0, 5]);
  });

  it('[Q9] what a person noted stands beside the answer', () => {
    const answers = { tape: { kept: false, note: 'two strips' }, hands: { kept: true } };
    const lines = requirementLines([judged('tape'), judged('hands'), judged('other')], facts({}), answers, null, null);
    expect(lines.map(({ verdict, note }) => [verdict, note])).toEqual([
      ['broken', 'two strips'],
      ['kept', null],
      ['not-judged', null],
    ]);
  });
});
