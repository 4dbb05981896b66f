import type { Decision, Report, ReportedFact } from '@cairnmark/engine';
import type { Fact, Ruler, RulerId, Unit } from '@cairnmark/geometry';
import type { PointsLine, PointsRow, Requirement, RequirementLine } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import type { ClassWords } from './class-words.ts';
import { wordsFor } from './words.ts';

const RULERS: Readonly<Partial<Record<RulerId, Ruler>>> = {
  mm: { id: 'mm', unit: 'mm', stepMm: 1 },
  'half-cm': { id: 'half-cm', unit: 'cm', stepMm: 5 },
  'sixteenth-inch': { id: 'sixteenth-inch', unit: 'in', stepMm: 25.4 / 16 },
};
const UNITS: Readonly<Record<string, Unit>> = { height: 'mm', 'base-area': 'mm2', volume: 'mm3' };
const GROUPS: Readonly<Record<string, string>> = { puffins: 'Puffins', terns: 'Terns', gannets: 'Gannets' };

function inClass(language: 'en' | 'es', ruler: 'mm' | 'half-cm' | 'sixteenth-inch'): ClassWords {
  return wordsFor(language).inClass({
    ruler: RULERS[ruler]!,
    unitOf: (measure) => UNITS[measure] ?? 'count',
    kindName: (kind) => (kind === 'cube-5' ? 'large cube' : kind),
    criterionName: (criterion) => (criterion === 'idea' ? 'Idea' : criterion),
    groupName: (group) => GROUPS[group] ?? group,
  });
}
const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const inches = inClass('en', 'sixteenth-inch');

describe('names and amounts', () => {
  it('are those that pupils read, and the trade has its own', () => {
    expect([en.label('footprint-area'), en.plainLabel('footprint-area')]).toEqual(['area from above', 'footprint area']);
    expect([es.label('base-area'), es.plainLabel('base-area')]).toEqual(['área sobre la mesa', 'área de la base']);
    expect([en.label('judged:idea'), en.label('kind:cube-5'), en.label('points')]).toEqual(['Idea', 'large cube', 'points']);
  });

  it('come with their unit or their noun', () => {
    expect(en.amount('height', 253.4, 3)).toBe('25.5 cm');
    expect(inches.amount('height', 187, 3)).toBe('7 3/8 in');
    expect([en.amount('pieces', 1, 0), en.amount('pieces', 5, 0)]).toEqual(['1 piece', '5 pieces']);
    expect([es.amount('points', 2.5, 0), es.amount('points', 1, 0)]).toEqual(['2,5 puntos', '1 punto']);
    expect([en.amount('judged:idea', 3.25, 0), es.amount('judged:idea', 3.25, 0)]).toEqual(['3.25 of 4', '3,25 de 4']);
    expect(en.amount('kind:cube-5', 3, 0)).toBe('3 pieces');
  });
});

const rule = (measure: string, comparison: 'exactly' | 'at-least' | 'at-most', limit: number): Requirement => ({
  id: 'r',
  kind: 'measured',
  measure,
  comparison,
  limit,
  consequence: { kind: 'must' },
});
const NO_TAPE: Requirement = { id: 'r', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: 2 } };
const line = (verdict: RequirementLine['verdict'], value: number | null, of: Requirement): RequirementLine => ({
  requirement: of.id,
  verdict,
  measure: of.kind === 'measured' ? of.measure : null,
  value,
  comparison: of.kind === 'measured' ? of.comparison : null,
  limit: of.kind === 'measured' ? of.limit : null,
  consequence: of.consequence,
});

describe('a rule', () => {
  const five = rule('pieces', 'exactly', 5);
  const base = rule('base-area', 'at-most', 6000);

  it('is told with the number and the limit', () => {
    expect(en.rule(line('broken', 6, five), five, 0)).toBe('6 pieces. The rule says exactly 5 pieces.');
    expect(en.rule(line('kept', 5, five), five, 0)).toBe('5 pieces. The rule says exactly 5 pieces. Kept.');
    expect(es.rule(line('broken', 6, five), five, 0)).toBe('6 piezas. La regla dice exactamente 5 piezas.');
    expect(en.rule(line('broken', 6400, base), base, 58)).toBe('Area on the table 64.0 cm². The rule says at most 60 cm².');
    expect(es.rule(line('kept', 5950, base), base, 58)).toBe(
      'Área sobre la mesa: 59,5 cm². La regla dice como máximo 60 cm². Cumplida.',
    );
  });

  it('is never told as broken with a number that looks like the limit', () => {
    expect(en.rule(line('broken', 6002, base), base, 58)).toBe('Area on the table 60.02 cm². The rule says at most 60 cm².');
  });

  it('says so when it was not measured', () => {
    expect(en.rule(line('not-measured', null, base), base, 0)).toBe(
      'Area on the table was not measured. The rule says at most 60 cm².',
    );
  });

  it('that a person judges is told by its own text, with what it costs', () => {
    expect(en.rule(line('broken', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape" was not kept. It costs 2 points.');
    expect(en.rule(line('kept', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape" was kept.');
    expect(es.rule(line('not-judged', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape": nadie lo ha valorado todavía.');
  });

  it('on the stock names the kind', () => {
    expect(en.stock({ kind: 'cube-5', used: 4, stock: 3 })).toBe('It uses 4 of large cube; the kit has 3.');
  });
});

describe('points', () => {
  const row = (measure: string, points: number, per: number, rest: Partial<PointsRow> = {}): PointsRow => ({
    id: 'p',
    measure,
    points,
    per,
    rounding: 'down',
    ...rest,
  });
  const earned = (value: number | null, times: number | null, points: number, limited: PointsLine['limited'] = null) => ({
    row: 'p',
    measure: 'height',
    value,
    times,
    points,
    limited,
  });

  it('are a product', () => {
    expect(en.points(earned(12, 12, 24), row('faces', 2, 1), 0)).toBe('12 faces × 2 points = 24 points');
    expect(en.points(earned(437, 43, 43), row('height', 1, 10), 3)).toBe(
      'Height 43.5 cm. 1 point for every 1 cm, rounded down: 43 × 1 point = 43 points',
    );
    expect(es.points(earned(437, 43.7, 21.85), row('height', 0.5, 10, { rounding: 'none' }), 3)).toBe(
      'Altura: 43,5 cm. 0,5 puntos por cada 1 cm, sin redondear: 43,7 × 0,5 puntos = 21,85 puntos',
    );
  });

  it('say what held them', () => {
    expect(en.points(earned(12, 12, 20, 'cap'), row('faces', 2, 1, { capPoints: 20 }), 0)).toBe(
      '12 faces × 2 points = 24 points, but at most 20 points',
    );
    expect(es.points(earned(1, 1, 5, 'floor'), row('faces', 2, 1, { floorPoints: 5 }), 0)).toBe(
      '1 cara × 2 puntos = 2 puntos, pero como mínimo 5 puntos',
    );
  });

  it('say that there was nothing measured, and what a person gave', () => {
    expect(en.points(earned(null, null, 0), row('volume', 1, 1000), 0)).toBe('Volume: not measured, 0 points');
    expect(en.adjustment({ points: -2, by: 'Ms Reid', reason: 'ran indoors', at: '' })).toBe('−2 points by Ms Reid: ran indoors');
  });
});

const height = (value: number, tolerance: number): Fact => ({
  status: 'measured',
  id: 'height',
  value,
  unit: 'mm',
  tolerance,
  working: { method: 'highest-point', steps: [], parts: [] },
});
const fact = (rest: Partial<ReportedFact>): ReportedFact => ({
  id: 'height',
  unit: 'mm',
  value: 431,
  tolerance: 3,
  source: 'observed',
  predicted: height(428, 0.9),
  observed: { value: 431, tolerance: 3, readings: [430, 432] },
  decided: null,
  ...rest,
});
const decision: Decision = { measure: 'height', value: 420, by: 'Ms Reid', reason: 'the ruler slipped', at: '' };

describe('a fact', () => {
  it('has its value with its tolerance, or the reason why there is none', () => {
    expect(en.fact(fact({}))).toBe('43.0 cm ± 0.3 cm');
    expect(es.fact(fact({}))).toBe('43,0 cm ± 0,3 cm');
    expect(inches.fact(fact({}))).toBe('16 15/16 in ± 1/8 in');
    expect(en.fact(fact({ id: 'pieces', unit: 'count', value: 5, tolerance: 0 }))).toBe('5 pieces');
    const missing: Fact = { status: 'not-measured', id: 'height', unit: 'mm', reason: 'no-layout' };
    expect(en.fact(fact({ value: null, predicted: missing }))).toBe('not measured: no drawing of this build');
    expect(es.fact(fact({ value: null, predicted: null }))).toBe('sin medir');
  });

  it('has the other values beside it', () => {
    expect(en.otherValues(fact({}))).toEqual(['readings: 43 cm and 43.2 cm', 'worked out: 43.0 cm ± 0.09 cm']);
    expect(en.otherValues(fact({ source: 'decided', value: 420 }))).toEqual([
      'measured: 43.0 cm ± 0.3 cm',
      'readings: 43 cm and 43.2 cm',
      'worked out: 43.0 cm ± 0.09 cm',
    ]);
  });

  it('without a formula names its method', () => {
    expect(es.working({ method: 'boundary-walk', steps: [], parts: [] })).toEqual(['calculado siguiendo el contorno']);
  });
});

describe('a decision', () => {
  it('is told with who, why and what it stands for', () => {
    expect(en.decision(decision, fact({}))).toBe(
      'height 42 cm instead of 43.0 cm, decided by Ms Reid: the ruler slipped',
    );
    expect(en.decision(decision, null)).toBe('height 42 cm, decided by Ms Reid: the ruler slipped');
    expect(en.decision({ ...decision, takenBack: { at: '', reason: 'it did not' } }, null)).toBe(
      'height 42 cm by Ms Reid was taken back: it did not',
    );
  });
});

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
      'El día suma puntos por puesto: 7 puntos y 5 puntos.',
      'Tall Light cuenta 2 veces.',
      'Un grupo al que le falta un resultado no tiene puesto.',
    ]);
    expect(words.dayValue({ ...day, kind: 'mean-place' }, 1.5)).toBe('puesto 1,5');
    expect(words.dayValue({ ...day, kind: 'sum-of-points' }, 12)).toBe('12 puntos');
  });
});

describe('gaps', () => {
  it('are told with their width and place', () => {
    expect(en.gap({ at: [-35, 120], widthMm: 1.5 })).toBe(
      'A gap of 0.15 cm counts as closed: 3.5 cm left and 12 cm at the back of the middle of the sheet.',
    );
  });
});
