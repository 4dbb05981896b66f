import type { MeasuredFact } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { attempt, laid, reportOn } from '../../../tests/reference/small-class.ts';
import { inClass } from './in-class.ts';

/** A slab of 60 x 40 x 30 carries a cube of 50; or, longer, two slabs carry one. Expected values by hand. */
const measured = (id: string, ...pieces: readonly string[]): MeasuredFact => {
  const { facts } = reportOn(attempt({ layout: laid(...pieces) }));
  const predicted = facts.find((fact) => fact.id === id)?.predicted;
  if (predicted?.status !== 'measured') throw new RangeError(`no ${id} in the small class`);
  return predicted;
};

const rows = (id: string, ...pieces: readonly string[]): readonly string[] =>
  inClass('en', 'mm')
    .workingRows(measured(id, ...pieces))
    .map(({ what, how, result, whole }) => `${whole ? '= ' : ''}${what} | ${how} | ${result}`);

describe('a working as rows', () => {
  it('stands as the tower does, the top piece first', () => {
    expect(rows('height', 'slab', 'cube')).toEqual(['cube |  | 5.0 cm', 'slab |  | 3.0 cm', '= Height |  | 8.0 cm']);
  });

  it('shows the formula of each piece, with numbers put in', () => {
    expect(rows('volume', 'slab', 'cube')).toEqual([
      'slab | V = l × w × h = 6.0 cm × 4.0 cm × 3.0 cm | 72.0 cm³',
      'cube | V = a³ = (5.0 cm)³ | 125 cm³',
      '= Volume |  | 197 cm³',
    ]);
  });

  it('multiplies what comes several times, and names it once', () => {
    expect(rows('volume', 'slab', 'slab', 'cube')).toEqual([
      'slab | V = l × w × h = 6.0 cm × 4.0 cm × 3.0 cm | 72.0 cm³',
      ' | 2 × 72.0 cm³ | 144 cm³',
      'cube | V = a³ = (5.0 cm)³ | 125 cm³',
      '= Volume |  | 269 cm³',
    ]);
    expect(rows('pieces', 'slab', 'slab', 'cube')).toEqual(['slab | 2 × 1 | 2', 'cube |  | 1', '= Pieces |  | 3']);
  });

  it('names the way where no formula gives the number', () => {
    expect(rows('footprint-perimeter', 'slab')).toEqual([
      '= Perimeter from above | by walking round the outline | 200',
    ]);
    expect(rows('kinds', 'slab', 'cube').at(-1)).toBe('= Kinds of piece |  | 2 kinds');
  });

  it('tells the letters of the surface, and keeps the unit of a quotient', () => {
    expect(rows('touchable-surface', 'slab', 'cube')).toEqual([
      ' | all surfaces S, less both sides of C, where pieces touch flat, and less T, what lies flat on the table | ',
      '= Surface you can touch | U = S − 2 × C − T = 258 cm² − 2 × 20.0 cm² − 24.0 cm² | 194 cm²',
    ]);
    // 197 / 258 = 0.7636.
    expect(rows('volume-per-paper', 'slab', 'cube')).toEqual([
      '= Volume for its paper | k = V / S = 197 cm³ / 258 cm² | 0.764 cm³ per cm²',
    ]);
  });

  it('is named as the class words do: units', () => {
    const words = inClass('en', 'mm');
    expect(words.unit('volume').name).toBe('cm³');
    expect(words.unit('volume-per-paper').name).toBe('cm³ per cm²');
    expect(words.unit('pieces').name).toBe('');
  });
});
