import { describe, expect, it } from 'vitest';
import { wordsFor } from './at-once.ts';

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

describe('what to know before reading the places', () => {
  const names = {
    challenge: (id: string) => (id === 'tall' ? 'Tall Light' : 'Harbour Wall'),
    criterion: (challenge: string, id: string) => `${id} of ${challenge}`,
    group: (id: string) => (id === 'terns' ? 'Terns' : 'Puffins'),
  };

  it('is that points of different units were added', () => {
    const warning = {
      code: 'points-of-different-units',
      challenges: ['tall', 'wall'],
      units: ['mm', 'mm2', 'furlong'],
    } as const;
    expect(wordsFor('en').dayWarning(warning, names)).toBe(
      'The points of Tall Light and Harbour Wall are added up as they are, but they come from different things: lengths, areas and furlong. Look whether one of them outweighs the rest.',
    );
    expect(wordsFor('es').dayWarning(warning, names)).toContain('longitudes, áreas y furlong');
  });

  it('is that judges marked different groups', () => {
    const warning = {
      code: 'judges-of-different-groups',
      challenge: 'wall',
      criterion: 'idea',
      judges: [
        { judge: 'Ada', groups: ['puffins', 'terns'] },
        { judge: 'Ben', groups: ['terns'] },
      ],
    } as const;
    expect(wordsFor('en').dayWarning(warning, names)).toBe(
      'Harbour Wall, idea of wall: the judges did not mark the same groups (Ada: Puffins and Terns; Ben: Terns). A strict judge may have met only some of them.',
    );
    expect(wordsFor('es').dayWarning(warning, names)).toContain('(Ada: Puffins y Terns; Ben: Terns)');
  });
});
