import type { Supply } from '@cairnmark/scoring';
import { describe, expect, it } from 'vitest';
import { wordsFor } from './at-once.ts';
import { inClass } from './in-class.ts';

const en = inClass('en', 'half-cm');
const es = inClass('es', 'half-cm');
const SUPPLY: Supply = {
  group: 'terns',
  pieces: { 'cube-5': 5, drum: 0, cone: 2 },
  dropped: 1,
  lost: 3,
  penaltyPoints: 2.5,
  byRound: [
    { round: 1, pieces: 3 },
    { round: 2, pieces: 7 },
  ],
  byCarrier: [{ carrier: 'first runner', pieces: 1 }],
};
const EMPTY: Supply = { ...SUPPLY, pieces: {}, dropped: 0, lost: 0, penaltyPoints: 0, byRound: [], byCarrier: [] };

describe('the supply of a group', () => {
  it('is told by kind, by round and by carrier, with what was lost, dropped and fined', () => {
    expect(en.supply(SUPPLY)).toEqual([
      '7 pieces: 5 × large cube and 2 × cone.',
      'Earned round by round: 3 pieces in round 1 and 7 pieces in round 2.',
      'Earned by carrier: 1 piece by first runner.',
      'Lost: 3 pieces.',
      'Dropped on the way: 1 piece.',
      'Penalties: 2.5 points.',
    ]);
    expect(es.supply(SUPPLY)[5]).toBe('Penalizaciones: 2,5 puntos.');
  });

  it('of nothing is nothing', () => {
    expect(en.supply(EMPTY)).toEqual(['No pieces.']);
    expect(es.supply({ ...EMPTY, pieces: { drum: 0 } })).toEqual(['Ninguna pieza.']);
  });
});

describe('the rules of the game', () => {
  const rest = { handOver: 'at-a-touch', dropped: 'must-be-fetched' } as const;

  it('say how it ends, who goes when, and what becomes of a dropped piece', () => {
    const ends = { kind: 'time', seconds: 300 } as const;
    expect(wordsFor('en').game({ ...rest, ends })).toEqual([
      'The game ends after 5 minutes.',
      'The next one goes at a touch of hands.',
      'A piece that is dropped must be fetched.',
    ]);
  });

  it('tell a time that is no whole minutes in seconds', () => {
    const [ends] = wordsFor('es').game({ ...rest, ends: { kind: 'time', seconds: 90 } });
    expect(ends).toBe('El juego acaba después de 90 segundos.');
    expect(wordsFor('en').game({ ...rest, ends: { kind: 'turns', turns: 1 } })[0]).toBe('The game ends after 1 turn.');
  });
});
