import type { PointsLine, PointsRow, Requirement } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { inClass, line, rule } from './in-class.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const NO_TAPE: Requirement = { id: 'r', kind: 'judged', text: 'No tape', consequence: { kind: 'costs', points: 2 } };
describe('a rule', () => {
  const five = rule('pieces', 'exactly', 5);
  const base = rule('base-area', 'at-most', 6000);

  it('is told with the number and the limit', () => {
    expect(en.rule(line('broken', 6, five), five, 0)).toBe('6 pieces. The rule says exactly 5 pieces.');
    expect(en.rule(line('kept', 5, five), five, 0)).toBe('5 pieces. The rule says exactly 5 pieces. Kept.');
    expect(es.rule(line('broken', 6, five), five, 0)).toBe('6 piezas. La regla dice exactamente 5 piezas.');
    expect(en.rule(line('broken', 6400, base), base, 58)).toBe(
      'Area on the table 64.0 cm². The rule says at most 60 cm².',
    );
    expect(es.rule(line('kept', 5950, base), base, 58)).toBe(
      'Área sobre la mesa: 59,5 cm². La regla dice como máximo 60 cm². Cumplida.',
    );
  });

  it('is never told as broken with a number that looks like the limit', () => {
    expect(en.rule(line('broken', 6002, base), base, 58)).toBe(
      'Area on the table 60.02 cm². The rule says at most 60 cm².',
    );
  });

  it('says so when it was not measured', () => {
    expect(en.rule(line('not-measured', null, base), base, 0)).toBe(
      'Area on the table: not measured. The rule says at most 60 cm².',
    );
  });

  it('that a person judges is told by its own text, with what it costs', () => {
    expect(en.rule(line('broken', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape" was not kept. It costs 2 points.');
    expect(en.rule(line('kept', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape" was kept.');
    expect(es.rule(line('not-judged', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape": nadie lo ha valorado todavía.');
  });

  it('on the stock names the kind', () => {
    expect(en.stock({ kind: 'cube-5', used: 4, stock: 3 })).toBe('large cube: it uses 4, the kit has 3.');
  });
});

describe('a rule about pieces', () => {
  const must = { kind: 'must' } as const;
  const shapes: Requirement = { id: 'r', kind: 'only-kinds', kinds: ['cube-5', 'cone'], consequence: must };
  const earned: Requirement = { id: 'r', kind: 'only-earned', consequence: { kind: 'costs', points: 3 } };

  it('tells every kind of which there are too many', () => {
    const drums = { kind: 'drum', used: 2, allowed: 0 };
    expect(en.rule({ ...line('broken', null, shapes), breaches: [drums, { ...drums, kind: 'ball' }] }, shapes, 0)).toBe(
      'Only these kinds may be used: large cube and cone. drum: it uses 2. ball: it uses 2.',
    );
    const cubes = { kind: 'cube-5', used: 4, allowed: 3 };
    expect(es.rule({ ...line('broken', null, earned), breaches: [cubes] }, earned, 0)).toBe(
      'Solo se pueden usar piezas que el grupo ha ganado. large cube: usa 4, el grupo tiene 3. Cuesta 3 puntos.',
    );
  });

  it('is kept, or cannot be looked at, and then says what is missing', () => {
    expect(es.rule(line('kept', null, shapes), shapes, 0)).toBe(
      'Solo se pueden usar estos tipos: large cube y cone. Cumplida.',
    );
    const unknown = (measure: string) => ({ ...line('not-measured', null, earned), measure });
    expect(en.rule(unknown('pieces'), earned, 0)).toBe(
      'Only pieces that the group earned may be used. Not measured: no pieces were listed. Whether it costs 3 points is not known.',
    );
    expect(en.rule(unknown('earned:pieces'), earned, 0)).toBe(
      'Only pieces that the group earned may be used. Not measured: it is not known what the group earned. Whether it costs 3 points is not known.',
    );
  });
});

describe('what hangs on a rule', () => {
  const bonus: Requirement = { ...NO_TAPE, consequence: { kind: 'earns', points: 5 } };

  it('that costs is not known while its measure was not measured', () => {
    const low: Requirement = { ...rule('height', 'at-most', 300), consequence: { kind: 'costs', points: 3 } };
    expect(en.rule(line('not-measured', null, low), low, 0)).toBe(
      'Height: not measured. The rule says at most 30 cm. Whether it costs 3 points is not known.',
    );
    expect(es.rule(line('not-measured', null, low), low, 0)).toBe(
      'Altura: sin medir. La regla dice como máximo 30 cm. No se sabe si cuesta 3 puntos.',
    );
    const must = rule('height', 'at-most', 300);
    expect(en.rule(line('not-measured', null, must), must, 0)).toBe(
      'Height: not measured. The rule says at most 30 cm.',
    );
  });

  it('that earns is told when it is kept, and not when it is broken', () => {
    expect(en.rule(line('kept', null, bonus), bonus, 0)).toBe('"No tape" was kept. It earns 5 points.');
    expect(es.rule(line('kept', null, bonus), bonus, 0)).toBe('"No tape": se ha cumplido. Gana 5 puntos.');
    expect(en.rule(line('broken', null, bonus), bonus, 0)).toBe('"No tape" was not kept.');
    expect(en.rule(line('kept', null, NO_TAPE), NO_TAPE, 0)).toBe('"No tape" was kept.');
  });

  it('is told with what the person noted', () => {
    expect(en.rule({ ...line('broken', null, NO_TAPE), note: 'one strip inside' }, NO_TAPE, 0)).toBe(
      '"No tape" was not kept. It costs 2 points. Note: one strip inside',
    );
  });

  it('is announced with the rule', () => {
    expect(en.statedRule(rule('pieces', 'exactly', 5))).toBe('exactly 5 pieces (must be kept)');
    expect(en.statedRule(rule('base-area', 'at-most', 2400))).toBe('area on the table at most 24 cm² (must be kept)');
    expect(en.statedRule(bonus)).toBe('No tape (earns 5 points if kept)');
    expect(es.statedRule(NO_TAPE)).toBe('No tape (cuesta 2 puntos si no se cumple)');
    const shapes: Requirement = { ...bonus, kind: 'only-kinds', kinds: ['cube-5'] };
    expect(en.statedRule(shapes)).toBe('only large cube (earns 5 points if kept)');
    expect(es.statedRule({ id: 'r', kind: 'only-earned', consequence: { kind: 'must' } })).toBe(
      'solo piezas que el grupo ha ganado (hay que cumplirla)',
    );
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
  const earned = (
    value: number | null,
    times: number | null,
    points: number | null,
    limited: PointsLine['limited'] = null,
  ) => ({
    row: 'p',
    measure: 'height',
    value,
    times,
    points,
    limited,
  });

  it('that a row may take are not known while its measure was not measured', () => {
    expect(en.points(earned(null, null, null), row('base-area', -1, 100), 0)).toBe(
      'Area on the table: not measured. What it takes away is not known.',
    );
    expect(es.points(earned(null, null, null), row('base-area', -1, 100), 0)).toBe(
      'Área sobre la mesa: sin medir. No se sabe cuánto quita.',
    );
  });

  it('are a product', () => {
    expect(en.points(earned(12, 12, 24), row('faces', 2, 1), 0)).toBe('12 faces × 2 points = 24 points');
    expect(en.points(earned(28, 2, 2), row('earned:faces', 1, 10), 0)).toBe(
      '28 faces earned. 1 point for every 10 faces earned, rounded down: 2 × 1 point = 2 points',
    );
    expect(en.points(earned(437, 43, 43), row('height', 1, 10), 3)).toBe(
      'Height 43.5 cm. 1 point for every 1 cm, rounded down: 43 × 1 point = 43 points',
    );
    expect(es.points(earned(437, 43.7, 21.85), row('height', 0.5, 10, { rounding: 'none' }), 3)).toBe(
      'Altura: 43,5 cm. 0,5 puntos por cada 1 cm, sin redondear: 43,7 × 0,5 puntos = 21,85 puntos',
    );
  });

  it('on marks are the mark times the rate', () => {
    expect(en.points(earned(3.5, 3.5, 7), row('judged:idea', 2, 1, { rounding: 'none' }), 0)).toBe(
      'Idea 3.5 of 4: 3.5 × 2 points = 7 points',
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

  it('are announced row by row', () => {
    expect(en.statedRow(row('height', 1, 10, { capPoints: 30, floorPoints: 2 }))).toBe(
      'Height: 1 point for every 1 cm, rounded down, at most 30 points, at least 2 points',
    );
    expect([1, 2].map((per) => en.statedRow(row('judged:idea', 2, per, { rounding: 'none' })))).toEqual([
      'Idea: 2 points for each mark',
      'Idea: 2 points for every 2 marks',
    ]);
    expect(es.statedRow(row('judged:idea', 2, 1, { rounding: 'none' }))).toBe('Idea: 2 puntos por cada 1 de nota');
    expect(es.statedRow(row('full-sets', 5, 1, { rounding: 'none' }))).toBe(
      'Juegos completos: 5 puntos por cada 1 juego completo',
    );
  });

  it('say that there was nothing measured, and what a person gave', () => {
    expect(en.points(earned(null, null, 0), row('volume', 1, 1000), 0)).toBe('Volume: not measured, 0 points');
    expect(en.adjustment({ points: -2, by: 'Ms Reid', reason: 'ran indoors', at: '' })).toBe(
      '−2 points by Ms Reid: ran indoors',
    );
  });
});
