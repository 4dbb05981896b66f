import type { Report } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { inClass, line, rule } from './in-class.ts';
import { wordsFor } from './words.ts';

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
    total: null,
  };

  it('is told why, with the numbers', () => {
    expect(en.out({ code: 'rule-broken', requirements: ['r'] }, report, [five])).toBe(
      'A rule is broken. 6 pieces. The rule says exactly 5 pieces.',
    );
    expect(en.out({ code: 'more-than-the-kit-has', kinds: ['cube-5'] }, report, [])).toBe(
      'More pieces than the kit has. It uses 4 of large cube; the kit has 3.',
    );
    expect(en.out({ code: 'fell' }, report, [])).toBe('Fell after 4 seconds.');
    expect(es.out({ code: 'fell' }, { ...report, state: { kind: 'fell-before-measuring' } }, [])).toBe(
      'Se cayó antes de medirla.',
    );
    expect(en.out({ code: 'absent' }, null, [])).toBe('Absent: no result. That is not 0.');
    expect(es.out({ code: 'not-measured', measure: 'height' }, null, [])).toBe('Sin medir: altura.');
  });
});

describe('the day', () => {
  const words = wordsFor('es');
  const day = { placePoints: [7, 5], weights: {}, meanOfThosePresent: false } as const;

  it('says how it adds up', () => {
    const rule = { ...day, kind: 'sum-of-place-points', weights: { tall: 2, wall: 1 } } as const;
    expect(words.day(rule, (id) => (id === 'tall' ? 'Tall Light' : id))).toEqual([
      'El día suma puntos por puesto: 7 puntos por el 1.º y 5 puntos por el 2.º.',
      'Tall Light cuenta 2 veces.',
      'Un grupo al que le falta un resultado no tiene puesto.',
    ]);
    expect(words.dayValue({ ...day, kind: 'mean-place' }, 1.5)).toBe('puesto 1,5');
    expect(words.dayValue({ ...day, kind: 'sum-of-points' }, 12)).toBe('12 puntos');
  });
});
