import type { Report } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { inClass, line, rule } from './in-class.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');

describe('places', () => {
  it('are marked as shared and as near', () => {
    expect(en.placeNotes({ sharedWith: ['terns'], withinErrorOf: [] })).toEqual(['shared with Terns']);
    expect(es.placeNotes({ sharedWith: [], withinErrorOf: ['puffins', 'terns', 'gannets'] })).toEqual([
      'dentro del error de medida de Puffins, Terns y Gannets',
    ]);
    expect(en.placeNotes({ sharedWith: [], withinErrorOf: [] })).toEqual([]);
  });

  it('follow an order that can be read', () => {
    expect(
      en.order({
        first: { by: 'height', better: 'more', roundTo: 5 },
        tieBreaks: [{ by: 'volume', better: 'less', roundTo: 0 }],
      }),
    ).toBe('height, more is better, rounded to 0.5 cm; then volume, less is better');
  });
});

describe('who is not ranked', () => {
  const five = rule('pieces', 'exactly', 5);
  const report: Report = {
    engineVersion: '1',
    challenge: 'tall',
    group: 'terns',
    attempt: 'terns-1',
    at: '',
    chosen: false,
    state: { kind: 'fell', afterSeconds: 4 },
    confirmedBy: 'Ms Reid',
    facts: [],
    gaps: [],
    stability: null,
    stockBreaches: [{ kind: 'cube-5', used: 4, stock: 3 }],
    requirements: [line('broken', 6, five)],
    points: [],
    adjustments: [],
    own: [],
    supply: null,
    total: null,
  };

  it('is told why, with the numbers', () => {
    expect(en.out([{ code: 'rule-broken', requirements: ['r'] }], report, [five])).toBe(
      'A rule is broken. 6 pieces. The rule says exactly 5 pieces.',
    );
    expect(en.out([{ code: 'more-than-the-kit-has', kinds: ['cube-5'] }], report, [])).toBe(
      'More pieces than the kit has. large cube: it uses 4, the kit has 3.',
    );
    expect(en.out([{ code: 'fell' }], report, [])).toBe('Fell after 4 seconds.');
    expect(es.out([{ code: 'fell' }], { ...report, state: { kind: 'fell-before-measuring' } }, [])).toBe(
      'Se cayó antes de medirla.',
    );
    expect(en.out([{ code: 'absent' }], null, [])).toBe('Absent: no result. That is not 0.');
    expect(es.out([{ code: 'not-measured', measures: ['height'] }], null, [])).toBe('Sin medir: altura.');
    expect(en.out([{ code: 'not-measured', measures: ['height', 'base-area'] }], null, [])).toBe(
      'Not measured: height and area on the table.',
    );
  });

  it('[A14] is told every reason at once', () => {
    const all = [
      { code: 'more-than-the-kit-has', kinds: ['cube-5'] },
      { code: 'rule-broken', requirements: ['r'] },
      { code: 'not-measured', measures: ['height', 'volume'] },
    ] as const;
    expect(en.out(all, report, [five])).toBe(
      'More pieces than the kit has. large cube: it uses 4, the kit has 3. A rule is broken. 6 pieces. The rule says exactly 5 pieces. Not measured: height and volume.',
    );
    expect(es.out(all, report, [five])).toContain('La regla dice exactamente 5 piezas. Sin medir: altura y volumen.');
  });
});
