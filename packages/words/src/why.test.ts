import type { Challenge, Report, WhyLine } from '@cairnmark/engine';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, reportOn } from '../../../tests/reference/small-class.ts';
import { inClass, rule } from './in-class.ts';
import type { Sides } from './why.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const REPORT: Report = reportOn(attempt());
const TALL: Challenge = challenge({
  requirements: [rule('pieces', 'at-most', 5)],
  ranking: {
    first: { by: 'height', better: 'more', roundTo: 5 },
    tieBreaks: [{ by: 'base-area', better: 'less', roundTo: 0 }],
  },
});
const SIDES: Sides = {
  challenge: TALL,
  first: { name: 'Puffins', report: REPORT },
  second: { name: 'Terns', report: REPORT },
};
const HEIGHT: WhyLine = {
  kind: 'key',
  by: 'height',
  first: 380,
  second: 350,
  ahead: 'first',
  withinError: false,
};

describe('what separates two builds', () => {
  it('is the measure that decides, with who is ahead and by what', () => {
    expect(en.why([HEIGHT], SIDES)).toEqual(['Height: 38.0 cm (Puffins), 35.0 cm (Terns). Ahead: Puffins, by 3.0 cm.']);
    expect(es.why([{ ...HEIGHT, first: 345, ahead: 'second', withinError: true }], SIDES)).toEqual([
      'Altura: 34,5 cm (Puffins), 35,0 cm (Terns). Por delante: Terns, con 0,5 cm de diferencia. Está dentro del error de medida.',
    ]);
  });

  it('is told for every measure up to it, and for none', () => {
    const level: WhyLine = { ...HEIGHT, second: 380, ahead: null };
    // An area that the ranking does not round is read like any measure; these have no error of their own.
    const base: WhyLine = { ...HEIGHT, by: 'base-area', first: 2400, second: null };
    expect(en.why([level, base], SIDES)).toEqual([
      'Height: the same, 38.0 cm.',
      'Area on the table: 24.0 cm² (Puffins), not measured (Terns). Ahead: Puffins.',
    ]);
    expect(en.why([level], SIDES)).toEqual(['Height: the same, 38.0 cm.', 'Level in all that the ranking asks.']);
  });

  it('is what the points come from, part by part', () => {
    const lines: readonly WhyLine[] = [
      { kind: 'row', row: 'tall-row', measure: 'height', first: 76, second: 70 },
      { kind: 'requirement', requirement: 'r', verdicts: ['kept', 'broken'], first: 0, second: 0 },
      { kind: 'requirement', requirement: 'r', verdicts: ['kept', 'not-judged'], first: 5, second: 0 },
      { kind: 'requirement', requirement: 'r', verdicts: ['kept', null], first: 5, second: null },
      { kind: 'own-result', measure: 'volume', first: 0, second: 3 },
      { kind: 'fallen', first: 0, second: 2 },
      { kind: 'adjustments', first: 0, second: -1 },
      { kind: 'total', first: 76, second: null },
    ];
    expect(en.why([HEIGHT, ...lines], SIDES).slice(1)).toEqual([
      'Points for height: 76 points (Puffins), 70 points (Terns). Ahead: Puffins, by 6 points.',
      'Rule "at most 5 pieces": kept (Puffins), not kept (Terns).',
      'Rule "at most 5 pieces": kept: 5 points (Puffins), not judged yet: 0 points (Terns). Ahead: Puffins, by 5 points.',
      'Rule "at most 5 pieces": kept: 5 points (Puffins), no result (Terns). Ahead: Puffins.',
      'Own result, volume: 0 points (Puffins), 3 points (Terns). Ahead: Terns, by 3 points.',
      'Points of a build that fell: 0 points (Puffins), 2 points (Terns). Ahead: Terns, by 2 points.',
      'Points by hand: 0 points (Puffins), −1 point (Terns). Ahead: Puffins, by 1 point.',
      'Total: 76 points (Puffins), no result (Terns). Ahead: Puffins.',
    ]);
    expect(es.why([HEIGHT, { kind: 'total', first: 7, second: 7 }], SIDES)[1]).toBe('Total: igual, 7 puntos.');
  });

  it('is not told of points that are not known: nobody is ahead by them, and two such are not the same', () => {
    const lines: readonly WhyLine[] = [
      { kind: 'row', row: 'tall-row', measure: 'base-area', first: -24, second: 'not-known' },
      { kind: 'requirement', requirement: 'r', verdicts: ['broken', 'not-measured'], first: -5, second: 'not-known' },
      { kind: 'total', first: 'not-known', second: 'not-known' },
    ];
    expect(en.why([HEIGHT, ...lines], SIDES).slice(1)).toEqual([
      'Points for area on the table: −24 points (Puffins), not known (Terns).',
      'Rule "at most 5 pieces": not kept: −5 points (Puffins), not measured: not known (Terns).',
      'Total: not known (Puffins), not known (Terns).',
    ]);
    expect(es.why([HEIGHT, ...lines], SIDES).at(-1)).toBe('Total: no se sabe (Puffins), no se sabe (Terns).');
  });

  it('is told beside why one of them takes no place', () => {
    expect(en.takesNoPlace('Terns', 'Fell after 4 seconds.')).toBe('Terns takes no place: Fell after 4 seconds.');
  });
});

describe('what changed between two tries', () => {
  it('is the value before and now, with a mark where the ruler may have made it', () => {
    expect(en.change({ fact: 'height', before: 361, after: 380, error: 4, withinError: false })).toBe(
      'Height: 36.0 cm before, 38.0 cm now.',
    );
    expect(es.change({ fact: 'pieces', before: 5, after: 4, error: 0, withinError: false })).toBe(
      'Piezas: antes 5 piezas, ahora 4 piezas.',
    );
    expect(en.change({ fact: 'height', before: 361, after: 357, error: 4, withinError: true })).toBe(
      'Height: 36.0 cm before, 35.5 cm now. That is within measuring error.',
    );
  });

  it('is not laid to the ruler where the errors of the two cancel, however near they are', () => {
    expect(en.change({ fact: 'height', before: 361, after: 357, error: 4, withinError: false })).toBe(
      'Height: 36.0 cm before, 35.5 cm now.',
    );
  });

  it('is told in full where both would read the same, and with what was not measured', () => {
    expect(en.change({ fact: 'height', before: 358, after: 362, error: 4, withinError: true })).toBe(
      'Height: 35.8 cm before, 36.2 cm now. That is within measuring error.',
    );
    expect(en.change({ fact: 'volume', before: null, after: 125_000, error: 900, withinError: false })).toBe(
      'Volume: not measured before, 125.0 cm³ now.',
    );
  });
});
