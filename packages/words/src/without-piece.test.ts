// A gate with a cube on it: which piece can be taken out? mm, grams.

import type { LaidPiece, StabilityQuestion } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { FULL, judgedWithout, question } from '../../../tests/reference/judged-builds.ts';
import { box, cube, put } from '../../../tests/reference/stacked-builds.ts';
import { inClass } from './in-class.ts';

const SPECS = { cube: cube(50), post: box(30, 30, 60), slab: box(150, 30, 10) };
const GATE: readonly LaidPiece[] = [put('post', -50, 0), put('post', 50, 0), put('slab', 0, 0), put('cube', 0, 0)];
const ask = (pieces: readonly LaidPiece[]): StabilityQuestion => question(pieces, SPECS, FULL, 0.5);

function without(pieces: readonly LaidPiece[], piece: number, language: 'en' | 'es' = 'en'): string {
  const kinds = pieces.map(({ kind }) => kind);
  return inClass(language, 'mm').withoutPiece(judgedWithout(ask(pieces), piece), piece, kinds);
}

describe('without a piece', () => {
  it('the rest stands, and how well', () => {
    expect(without(GATE, 3)).toBe('Without the cube (piece 4) the rest stands, and is steady.');
    // Upper cube of three: 22 off the one below, 3 inside: atan(3 / 25) = 6.8 degrees.
    const tower = [put('cube', 0, 0), put('cube', 22, 0), put('cube', 22, 0)];
    expect(without(tower, 2, 'es')).toBe('Sin la pieza 3 (cube) el resto se sostiene, pero se tambalea.');
  });

  it('it falls, and what goes first; pieces keep the numbers of the whole build', () => {
    expect(without(GATE, 2)).toBe(
      'Without the slab (piece 3) it falls, by the sums. Goes first: the cube (piece 4), with nothing underneath.',
    );
    // The centre of slab and cube is at 0, the inner edge of the right post at 35.
    expect(without(GATE, 0)).toBe(
      'Without the post (piece 1) it falls, by the sums. Goes first: the slab (piece 3) and the cube (piece 4), tipping to the left over the edge of the part that rests on the post (piece 2). The centre of the weight is 35 mm past the edge.',
    );
  });

  it('of several that are held together it is not predicted, whatever the sums say', () => {
    const taped = GATE.map((piece, k) => (k === 3 ? { ...piece, held: 'taped' as const } : piece));
    expect(without(taped, 0)).toBe('Without the post (piece 1): not predicted.');
  });

  it('nothing is left of a build of one', () => {
    expect(without([put('cube', 0, 0)], 0)).toBe('Without the cube (piece 1) nothing is left.');
  });
});
