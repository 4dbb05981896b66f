// What rolls, and what the statics of stiff, unglued pieces do not cover. mm, grams.

import type { LaidPiece, Material } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { FULL, judged, question, SHELL } from '../../../tests/reference/judged-builds.ts';
import { cube, cylinder, put, sphere } from '../../../tests/reference/stacked-builds.ts';
import { inClass } from './in-class.ts';
import type { StabilityWords } from './stability.ts';

const SPECS = { cube: cube(50), log: cylinder(20, 70), ball: sphere(25) };
const said = (pieces: readonly LaidPiece[], material: Material, language: 'en' | 'es'): StabilityWords =>
  inClass(language, 'mm').stability(
    judged(question(pieces, SPECS, material, 0.5)),
    pieces.map(({ kind }) => kind),
  );

describe('what rolls', () => {
  it('of wood is named, and its figures, all 0, are not', () => {
    expect(said([put('cube', 0, 0), put('ball', 0, 0, { resting: 'round' })], FULL, 'en')).toMatchObject({
      verdict: 'Rolls at a touch: nothing stops it from rolling. Touching with a round side: the ball (piece 2).',
      lines: [],
    });
  });

  it('of paper is not predicted, and no figure is claimed', () => {
    expect(said([put('log', 0, 0, { resting: 'side' })], SHELL, 'es')).toMatchObject({
      verdict: 'Sin predicción, solo medida: los cálculos valen para piezas rígidas que solo se apoyan unas en otras.',
      lines: ['Papel doblado sobre un lado redondo, que se abolla en vez de rodar: la pieza 1 (log).'],
    });
  });
});

describe('pieces that people hold together', () => {
  it('are named by reason, and nothing else is said', () => {
    const held = ['taped', 'leaning', 'taped'] as const;
    const pieces = held.map((how) => put('cube', 0, 0, { held: how }));
    expect(said(pieces, FULL, 'en').lines).toEqual([
      'Taped: the cube (piece 1) and the cube (piece 3).',
      'Leaning: the cube (piece 2).',
    ]);
  });
});
