import { describe, expect, it } from 'vitest';
import { attempt, challenge, numbersOnly, reportOn } from '../../../../../tests/reference/small-class.ts';
import { billOf } from './bill.ts';
import { headlineFact } from './headline.ts';
import { scoreLines } from './lines.ts';

/** A slab of 60 x 40 x 30 under a cube of 50: 80 high, 197 000 mm3. 2 points a cm of height, 0.5 a piece. */
const CHALLENGE = challenge({
  criteria: [{ id: 'idea', name: 'Idea' }],
  points: [
    { id: 'high', measure: 'height', points: 2, per: 10, rounding: 'down' },
    { id: 'idea', measure: 'judged:idea', points: 1, per: 1, rounding: 'none' },
    { id: 'higher', measure: 'height', points: 1, per: 40, rounding: 'down' },
    { id: 'pieces', measure: 'pieces', points: 0.5, per: 1, rounding: 'none' },
  ],
  own: { pi: 'key', closeShare: 0.05, rewards: [{ measure: 'volume', points: 3 }] },
  requirements: [{ id: 'no-tape', kind: 'judged', text: 'No tape.', consequence: { kind: 'costs', points: 4 } }],
});
const ATTEMPT = attempt({
  judged: [
    { judge: 'teacher', criterion: 'idea', mark: 3 },
    { judge: 'visitor', criterion: 'idea', mark: 4 },
  ],
  own: [{ measure: 'volume', value: 197_000 }],
  answers: { 'no-tape': { kept: false } },
  adjustments: [{ points: -1, by: 'teacher', reason: 'Late', at: '2026-03-05T10:30:00+01:00' }],
});

describe('the lines of a score card', () => {
  it('put what earns points first, one line a measure, own rewards last', () => {
    const { scoring } = scoreLines(reportOn(ATTEMPT, CHALLENGE), CHALLENGE);
    expect(scoring.map(({ id, points, rows }) => [id, points, rows.length])).toEqual([
      ['height', 18, 2],
      ['judged:idea', 3.5, 1],
      ['pieces', 1, 1],
      ['volume', 3, 0],
    ]);
  });

  it('put what was measured besides second, without points, and leave counts of kinds to the fold', () => {
    const { also, rest } = scoreLines(reportOn(ATTEMPT, CHALLENGE), CHALLENGE);
    expect(also.map(({ id }) => id)).toContain('footprint-area');
    expect(also.every(({ scores }) => !scores)).toBe(true);
    expect(also.some(({ id }) => id.startsWith('kind:'))).toBe(false);
    expect(rest.map(({ id }) => id)).toContain('kind:cube');
  });

  it('leave what the class is not shown to the fold, but nothing that points, places or rules depend on', () => {
    const hiding = { ...CHALLENGE, hidden: ['pieces', 'volume', 'footprint-area'] };
    const { scoring, also, rest } = scoreLines(reportOn(ATTEMPT, hiding), hiding);
    // Volume earns by its own result alone.
    expect(scoring.map(({ id }) => id)).toEqual(['height', 'judged:idea', 'pieces', 'volume']);
    expect(also.map(({ id }) => id)).not.toContain('footprint-area');
    expect(rest.map(({ id }) => id)).toContain('footprint-area');
    expect(rest.some(({ scores }) => scores)).toBe(false);
    const ranked = { ...hiding, points: [], own: { ...hiding.own, rewards: [] }, hidden: ['height', 'pieces'] };
    const places = scoreLines(reportOn(ATTEMPT, ranked), ranked);
    expect(places.also.map(({ id }) => id)).toContain('height');
    expect(places.rest.map(({ id }) => id)).toContain('pieces');
  });

  it('leave what has no number to the fold', () => {
    const { also, rest } = scoreLines(reportOn(attempt({ layout: numbersOnly('cube') }), CHALLENGE), CHALLENGE);
    expect(also.map(({ id }) => id)).not.toContain('footprint-area');
    expect(rest.find(({ id }) => id === 'footprint-area')?.fact?.value).toBe(null);
  });

  it('are none for an absent group', () => {
    const lines = scoreLines(reportOn(attempt({ state: { kind: 'absent' } }), CHALLENGE), CHALLENGE);
    expect(lines.also).toEqual([]);
    expect(lines.scoring.every(({ fact }) => fact === null)).toBe(true);
  });
});

describe('the bill below the lines', () => {
  it('adds up to the total, whatever is hidden', () => {
    for (const hidden of [[], ['pieces'], ['height', 'volume', 'judged:idea']]) {
      const hiding = { ...CHALLENGE, hidden };
      const report = reportOn(ATTEMPT, hiding);
      const lines = scoreLines(report, hiding);
      const bill = billOf(report, lines);
      const shown = lines.scoring.reduce((sum, { points }) => sum + (points ?? 0), 0);
      // 18 + 3.5 + 1 + 3 for the lines, 4 for the rule that was broken, 1 by hand: halves are exact in doubles.
      expect(shown + (bill.rules ?? 0) + bill.byHand).toBe(20.5);
      expect(bill.total).toBe(20.5);
      expect(bill).toMatchObject({ rules: -4, byHand: -1, decimals: 1 });
    }
  });

  it('has no total for an absent group: that is not 0', () => {
    const report = reportOn(attempt({ state: { kind: 'absent' } }), CHALLENGE);
    expect(billOf(report, scoreLines(report, CHALLENGE)).total).toBe(null);
  });
});

describe('the large number', () => {
  it('is of the points where anything can earn or cost some', () => {
    expect(headlineFact(reportOn(ATTEMPT, CHALLENGE), CHALLENGE)).toBe(null);
    const rulesOnly = challenge({ points: [], requirements: CHALLENGE.requirements });
    expect(headlineFact(reportOn(attempt(), rulesOnly), rulesOnly)).toBe(null);
  });

  it('is what decides the ranking where nothing earns points', () => {
    const ranked = challenge({ points: [] });
    expect(headlineFact(reportOn(attempt(), ranked), ranked)).toMatchObject({ id: 'height', value: 80 });
    const unmeasured = attempt({ layout: numbersOnly() });
    expect(headlineFact(reportOn(unmeasured, ranked), ranked)).toBe(null);
  });
});
