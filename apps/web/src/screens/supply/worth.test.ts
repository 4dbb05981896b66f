import { evaluate, supplyOf } from '@cairnmark/engine';
import type { PointsRow, SupplyEvent } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { attempt, challenge, group, numbersOnly, STATICS } from '../../../../../tests/reference/small-class.ts';
import { countedFacts, countingOf, worthOf } from './worth.ts';

const row = (measure: string, points: number, more: Partial<PointsRow> = {}): PointsRow => ({
  id: measure.replace(':', '-'),
  measure,
  points,
  per: 1,
  rounding: 'none',
  ...more,
});
const RULE = { ends: { kind: 'stock-empty' }, handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;
const AT = challenge({
  supply: RULE,
  points: [
    row('height', 1),
    row('earned:pieces', 1),
    row('earned:faces', 2),
    row('earned:full-sets', 10, { capPoints: 15 }),
    row('earned:penalties', -1),
  ],
});
const TERNS = group('terns');
const stroke = (id: string, what: SupplyEvent['what']): SupplyEvent => ({ id, group: 'terns', what });
const EVENTS = [
  stroke('a', { kind: 'earned', piece: 'slab', count: 3 }),
  stroke('b', { kind: 'earned', piece: 'cube', count: 2 }),
  stroke('c', { kind: 'lost', piece: 'slab', count: 1, reason: 'crushed' }),
  stroke('d', { kind: 'penalty', points: 4, reason: 'ran' }),
];
const supply = (events = EVENTS, at = AT) => {
  const has = supplyOf(events, at, TERNS);
  if (has === null) throw new Error('no supply game');
  return has;
};

describe('what a supply is worth', () => {
  it('comes from the rows about it, capped as they say', () => {
    const { lines, total } = worthOf(supply(), AT, TERNS);
    // 4 boxes with 6 faces each; 2 full sets would give 20.
    expect(lines.map(({ line }) => [line.measure, line.times, line.points, line.limited])).toEqual([
      ['earned:pieces', 4, 4, null],
      ['earned:faces', 24, 48, null],
      ['earned:full-sets', 2, 15, 'cap'],
      ['earned:penalties', 4, -4, null],
    ]);
    expect(total).toBe(63);
  });

  it('is what the report of a build says of these rows', () => {
    const told = evaluate(attempt({ layout: numbersOnly() }), { challenge: AT, group: TERNS, events: EVENTS }, STATICS);
    if (!told.ok) throw new Error('refused');
    const of = told.value.points.filter(({ measure }) => measure.startsWith('earned:'));
    expect(worthOf(supply(), AT, TERNS).lines.map(({ line }) => line)).toEqual(of);
  });

  it('is nothing where the challenge gives no points for it', () => {
    expect(worthOf(supply(), challenge({ supply: RULE }), TERNS)).toEqual({ lines: [], total: 0 });
  });
});

describe('how faces, edges and corners were counted', () => {
  it('kind by kind, and together as the points say', () => {
    expect(countingOf('earned:faces', supply(), AT, TERNS)).toEqual({
      kinds: [
        { kind: 'slab', pieces: 2, each: 6, all: 12 },
        { kind: 'cube', pieces: 2, each: 6, all: 12 },
      ],
      together: 24,
    });
    expect(countingOf('earned:edges', supply([]), AT, TERNS)).toEqual({ kinds: [], together: 0 });
  });

  it('is shown of what gives points, else of faces, edges and corners', () => {
    expect(countedFacts(AT)).toEqual(['earned:faces']);
    expect(countedFacts(challenge())).toEqual(['earned:faces', 'earned:edges', 'earned:corners']);
  });
});
