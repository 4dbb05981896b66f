import type { Decision, ReportedFact } from '@cairnmark/engine';
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
    expect(es.working({ method: 'boundary-walk', steps: [], parts: [] })).toEqual(['siguiendo el contorno']);
  });

  it('tells the letters of the surface that can be touched', () => {
    const area = (value: number) => ({ value, unit: 'mm2' }) as const;
    const symbol = (name: string): Step['formula'] => ({ op: 'symbol', name });
    const step: Step = {
      symbol: 'A',
      formula: { op: 'difference', from: symbol('S'), less: symbol('T') },
      inputs: { S: area(15_000), T: area(2_500) },
      result: area(12_500),
    };
    const lines = en.working({ method: 'surface-less-contacts', steps: [step], parts: [] });
    expect(lines).toEqual([
      'A = S − T = 150 cm² − 25.0 cm² = 125 cm²',
      'all surfaces S, less both sides of C, where pieces touch flat, and less T, what lies flat on the table',
    ]);
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

describe('gaps', () => {
  it('are told with their width and place', () => {
    expect(en.gap({ at: [-35, 120], widthMm: 1.5 })).toBe(
      'A gap of 0.15 cm counts as closed. From the middle of the sheet it is 3.5 cm to the left and 12 cm to the back.',
    );
  });
});
