import type { Decision, DecisionMade, ReportedFact } from '@cairnmark/engine';
import type { Fact, Step } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { inClass } from './in-class.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const inches = inClass('en', 'sixteenth-inch');

describe('names and amounts', () => {
  it('are those that pupils read, and the trade has its own', () => {
    expect([en.label('footprint-area'), en.plainLabel('footprint-area')]).toEqual([
      'area from above',
      'footprint area',
    ]);
    expect([es.label('base-area'), es.plainLabel('base-area')]).toEqual(['área sobre la mesa', 'área de la base']);
    expect([en.label('judged:idea'), en.label('kind:cube-5'), en.label('points')]).toEqual([
      'Idea',
      'large cube',
      'points',
    ]);
  });

  it('have the decimals of the step that they are rounded to', () => {
    expect([en.roundedAmount('base-area', 1500, 1), en.roundedAmount('base-area', 1082, 1)]).toEqual([
      '15.00 cm²',
      '10.82 cm²',
    ]);
    expect([es.roundedAmount('height', 350, 5), es.roundedAmount('height', 345, 5)]).toEqual(['35,0 cm', '34,5 cm']);
    expect(inches.roundedAmount('height', 9.525, 25.4 / 16)).toBe('3/8 in');
    expect(en.roundedAmount('points', 7, 1)).toBe('7 points');
  });

  it('in inches are read to sixteenths, also where the class rounds to whole millimetres', () => {
    expect([inches.roundedAmount('height', 379, 1), inches.roundedAmount('height', 0, 1)]).toEqual([
      '14 15/16 in',
      '0 in',
    ]);
    expect([inches.fullAmount('height', 320), inches.full(321, 'mm')]).toEqual(['12 5/8 in', '12 5/8 in']);
    // A limit is not moved, and what is under half a sixteenth is not made nothing of.
    expect([inches.exactAmount('height', 320), inches.roundedAmount('height', 0.5, 0.5)]).toEqual([
      '12.598 in',
      '0.020 in',
    ]);
  });

  it('an area rounded in square millimetres has no more decimals in square inches than tell two steps apart', () => {
    expect(inches.roundedAmount('base-area', 15_000, 100)).toBe('23.3 in²');
  });

  it('what was read or decided keeps the decimals of the ruler', () => {
    expect([en.fullAmount('height', 320), es.full(320, 'mm')]).toEqual(['32.0 cm', '32,0 cm']);
    expect([en.fullAmount('height', 321.25), en.fullAmount('base-area', 6000)]).toEqual(['32.125 cm', '60 cm²']);
    expect(inClass('en', 'mm').fullAmount('height', 320)).toBe('320 mm');
    expect(en.fact(fact({ source: 'decided', value: 320, tolerance: 0 }))).toBe('32.0 cm');
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

const height = (value: number, tolerance: number): Fact => ({
  status: 'measured',
  id: 'height',
  value,
  unit: 'mm',
  tolerance,
  errors: {},
  working: { method: 'highest-point', steps: [], parts: [] },
});
const fact = (rest: Partial<ReportedFact>): ReportedFact => ({
  id: 'height',
  unit: 'mm',
  value: 431,
  tolerance: 3,
  errors: {},
  source: 'observed',
  predicted: height(428, 0.9),
  observed: { value: 431, tolerance: 3, readings: [430, 432] },
  decided: null,
  ...rest,
});
const decision: Decision = { measure: 'height', value: 420, by: 'Ms Reid', reason: 'the ruler slipped', at: '' };

const alone = (one: Decision): DecisionMade => ({
  decision: one,
  state: one.takenBack === undefined ? 'counts' : 'taken-back',
  replaces: null,
});

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
    expect(en.otherValues(fact({}))).toEqual(['readings: 43.0 cm and 43.2 cm', 'worked out: 43.0 cm ± 0.1 cm']);
    expect(en.otherValues(fact({ source: 'decided', value: 420 }))).toEqual([
      'measured: 43.0 cm ± 0.3 cm',
      'readings: 43.0 cm and 43.2 cm',
      'worked out: 43.0 cm ± 0.1 cm',
    ]);
  });

  it('without a formula names its method', () => {
    expect(es.working({ method: 'boundary-walk', steps: [], parts: [] })).toEqual(['siguiendo el contorno']);
  });

  it('tells the letters of the surface that can be touched', () => {
    const area = (value: number) => ({ value, unit: 'mm2' }) as const;
    const symbol = (name: string): Step['formula'] => ({ op: 'symbol', name });
    const step: Step = {
      symbol: 'U',
      formula: { op: 'difference', from: symbol('S'), less: symbol('T') },
      inputs: { S: area(15_000), T: area(2_500) },
      result: area(12_500),
    };
    const lines = en.working({ method: 'surface-less-contacts', steps: [step], parts: [] });
    expect(lines).toEqual([
      'U = S − T = 150 cm² − 25.0 cm² = 125 cm²',
      'all surfaces S, less both sides of C, where pieces touch flat, and less T, what lies flat on the table',
    ]);
  });
});

describe('a decision', () => {
  it('is told with who, why and what it stands for', () => {
    expect(en.decision(alone(decision), fact({}))).toBe(
      'height 42.0 cm instead of 43.0 cm, decided by Ms Reid: the ruler slipped',
    );
    expect(en.decision(alone(decision), null)).toBe('height 42.0 cm, decided by Ms Reid: the ruler slipped');
    expect(en.decision(alone({ ...decision, takenBack: { at: '', reason: 'it did not' } }), null)).toBe(
      'height 42.0 cm by Ms Reid was taken back: it did not',
    );
  });

  it('[A16] of several tells which one counts now, and what each replaced', () => {
    const later = { ...decision, value: 425, by: 'Mr Lund', reason: 'read again' };
    expect(en.decision({ decision, state: 'replaced', replaces: null }, fact({}))).toBe(
      'height 42.0 cm instead of 43.0 cm, decided by Ms Reid (counts no longer): the ruler slipped',
    );
    expect(en.decision({ decision: later, state: 'counts', replaces: decision }, fact({}))).toBe(
      'height 42.5 cm instead of 42.0 cm, decided by Mr Lund (counts now): read again',
    );
    expect(es.decision({ decision: later, state: 'counts', replaces: decision }, null)).toBe(
      'altura 42,5 cm en lugar de 42,0 cm, decidido por Mr Lund (vale ahora): read again',
    );
    expect(es.decision({ decision, state: 'replaced', replaces: null }, null)).toBe(
      'altura 42,0 cm, decidido por Ms Reid (ya no vale): the ruler slipped',
    );
  });
});

describe('gaps', () => {
  it('are told with their width and place', () => {
    expect(en.gap({ at: [-35, 120], widthMm: 1.5 })).toBe(
      'A gap of 0.15 cm counts as closed. From the middle of the sheet it is 3.5 cm to the left and 12.0 cm to the back.',
    );
  });
});

describe('measures that are no plain length, area or count', () => {
  it('a quotient is one amount for each of another, in the digits that its error leaves', () => {
    expect(en.amount('volume-per-paper', 12.4321, 0.09)).toBe('1.243 cm³ per cm²');
    expect(es.amount('area-to-perimeter', 12.4321, 0.9)).toBe('1,24 cm² por cm');
    expect(inches.amount('volume-per-paper', 12.7, 0.9)).toBe('0.50 in³ per in²');
    expect(en.roundedAmount('volume-per-paper', 12.43, 0.1)).toBe('1.24 cm³ per cm²');
    expect(en.exactAmount('area-to-perimeter', 15)).toBe('1.5 cm² per cm');
    const reported = { id: 'volume-per-paper', value: 8.4, tolerance: 0.06, source: 'predicted' } as const;
    expect(en.fact(fact(reported))).toBe('0.840 cm³ per cm² ± 0.006 cm³ per cm²');
  });

  it('a ratio is a plain number', () => {
    expect([en.amount('height-to-width', 3.4167, 0.1), es.amount('height-to-width', 3.4167, 0.1)]).toEqual([
      '3.42',
      '3,42',
    ]);
    expect(en.roundedAmount('height-to-width', 7, 0.1)).toBe('7.0');
    expect(en.fact(fact({ id: 'height-to-width', unit: 'ratio', value: 8.776, tolerance: 0.11 }))).toBe('8.78 ± 0.11');
  });

  it('seconds are counted, and a tilt is rounded down', () => {
    expect([en.amount('stood-seconds', 7.5, 0), es.amount('stood-seconds', 1, 0)]).toEqual([
      '7.5 seconds',
      '1 segundo',
    ]);
    const degrees = (value: number): number => (value * Math.PI) / 180;
    expect(en.amount('stands-to', degrees(14.96), 0)).toBe('14°');
    expect(es.amount('stands-to', degrees(5.37), 0)).toBe('5,3°');
    expect([en.amount('stands-to', 0, 0), en.exactAmount('stands-to', degrees(15))]).toEqual(['0°', '15°']);
  });

  it('sets and what was earned are counted by their own nouns', () => {
    expect([en.amount('full-sets', 2, 0), es.amount('full-sets', 1, 0)]).toEqual(['2 full sets', '1 juego completo']);
    expect([en.amount('earned:pieces', 1, 0), es.amount('earned:pieces', 7, 0)]).toEqual([
      '1 piece earned',
      '7 piezas ganadas',
    ]);
    expect([en.label('earned:penalties'), es.label('full-sets')]).toEqual(['penalty points', 'juegos completos']);
  });
});

describe('a decision on a value that reads the same', () => {
  it('in inches is told in decimals where the ruler reads both alike, and in sixteenths where it does not', () => {
    const before = { value: 321, tolerance: 3, readings: [321] };
    expect(inches.decision(alone({ ...decision, value: 320 }), fact({ observed: before }))).toBe(
      'height 12.598 in instead of 12.638 in, decided by Ms Reid: the ruler slipped',
    );
    expect(inches.decision(alone({ ...decision, value: 325 }), fact({ observed: before }))).toBe(
      'height 12 13/16 in instead of 12 5/8 in, decided by Ms Reid: the ruler slipped',
    );
  });

  it('is told with the value before in full', () => {
    const finer = { ...decision, value: 430 };
    const before = { value: 431, tolerance: 3, readings: [431] };
    expect(en.decision(alone(finer), fact({ observed: before }))).toBe(
      'height 43.0 cm instead of 43.1 cm, decided by Ms Reid: the ruler slipped',
    );
    const plain = inClass('en', 'mm');
    expect(plain.decision(alone({ ...decision, value: 431 }), fact({ observed: { ...before, value: 431.4 } }))).toBe(
      'height 431 mm instead of 431.4 mm, decided by Ms Reid: the ruler slipped',
    );
  });
});
