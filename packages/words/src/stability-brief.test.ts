// A verdict in a line or two, as the strip under a build says it.

import type { Failure, Stability } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { wordsFor } from './at-once.ts';
import { readerWith } from './in-class.ts';
import type { Reader } from './reader.ts';

const reader: Reader = { ...readerWith('mm'), ruler: { id: 'mm', unit: 'cm', stepMm: 1 } };
const KINDS = ['cube', 'box', 'prism', 'cylinder', 'cone'];
const STANDING: Stability = {
  verdict: 'steady',
  stands: true,
  method: 'recursion',
  tipsAt: tilt(10.5),
  slidesAt: tilt(21.8),
  standsTo: tilt(10.5),
  joints: null,
  first: [],
  rolling: [],
  notPredicted: [],
  closedGaps: [],
  mend: null,
  steadyingMove: null,
};
const FALLING: Stability = {
  ...STANDING,
  verdict: 'falls',
  stands: false,
  tipsAt: null,
  slidesAt: null,
  standsTo: null,
};

function tilt(degrees: number) {
  const tiltRad = (degrees * Math.PI) / 180;
  return { tiltRad, push: Math.tan(tiltRad), direction: [1, 0] as const };
}

function goes(pieces: readonly number[]): Failure {
  return {
    pieces,
    on: 1,
    hinge: {
      ends: [
        [0, -5, 9],
        [0, 5, 9],
      ],
      towards: [1, 0],
      pastMm: 9,
    },
  };
}

describe('a verdict in short', () => {
  const english = (stability: Stability) => wordsFor('en').inClass(reader).stabilityBrief(stability, KINDS);

  it('says how far the table may be tilted', () => {
    expect(english(STANDING)).toEqual({
      title: 'Steady',
      sentence: 'You can tilt the table 10° before it tips.',
      mend: null,
    });
  });

  it('says which pieces go over, how far past the edge, and the move', () => {
    const mend = { piece: 2, moved: [2, 3, 4], side: 'left' as const, byMm: 11 };
    expect(english({ ...FALLING, first: [goes([2, 3, 4])], mend })).toEqual({
      title: 'Falls',
      sentence: 'Pieces 3, 4 and 5 go over: the balance point is 0.9 cm past the edge.',
      mend: 'Move pieces 3, 4 and 5 by 1.1 cm to the left and it just stands.',
    });
  });

  it('of one piece speaks of one', () => {
    expect(english({ ...FALLING, first: [goes([4])] }).sentence).toMatch(/^Piece 5 goes over: /);
    expect(english({ ...FALLING, first: [{ pieces: [4], on: null, hinge: null }] }).sentence).toBe(
      'Piece 5 has nothing under it.',
    );
    expect(english({ ...FALLING, first: [{ pieces: [3, 4], on: 2, hinge: null }] }).sentence).toBe(
      'Pieces 4 and 5 slip off.',
    );
  });

  it('never says past the edge of a balance point that is still inside, and names a point a point', () => {
    const at = (pastMm: number, halfMm: number): Stability => ({
      ...FALLING,
      first: [
        {
          pieces: [2],
          on: 1,
          hinge: {
            ends: [
              [0, -halfMm, 9],
              [0, halfMm, 9],
            ],
            towards: [1, 0],
            pastMm,
          },
        },
      ],
    });
    expect(english(at(-0.3, 0)).sentence).toBe('Piece 3 goes over.');
    expect(english(at(0.3, 0)).sentence).toBe(
      'Piece 3 goes over: the balance point is less than 0.1 cm past the point it turns over.',
    );
    expect(english(at(0.3, 5)).sentence).toBe(
      'Piece 3 goes over: the balance point is less than 0.1 cm past the edge.',
    );
  });

  it('in Spanish too', () => {
    const spanish = wordsFor('es')
      .inClass(reader)
      .stabilityBrief({ ...FALLING, first: [goes([2, 3, 4])] }, KINDS);
    expect(spanish.sentence).toBe('Las piezas 3, 4 y 5 vuelcan: el punto de equilibrio pasa el borde por 0,9 cm.');
  });

  it('sends a close one to the real table', () => {
    const close = english({ ...STANDING, verdict: 'too-close-to-call', standsTo: tilt(2.5), tipsAt: tilt(2.5) });
    expect(close.sentence).toBe('You can tilt the table 2.5° before it tips. Too close to call: try the real one.');
  });
});
