// What is said of builds that the statics have judged. Figures are worked out by hand beside each build. mm, grams.

import type { LaidPiece, StabilityQuestion } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { FULL, judged, LIMITS, question, SHELL } from '../../../tests/reference/judged-builds.ts';
import { box, cube, cylinder, put } from '../../../tests/reference/stacked-builds.ts';
import { wordsFor } from './at-once.ts';
import { inClass } from './in-class.ts';
import type { StabilityWords } from './stability.ts';

const SPECS = {
  cube: cube(50),
  post: box(30, 30, 60),
  low: box(30, 30, 58.5),
  slab: box(150, 30, 10),
  log: cylinder(20, 70),
};
const ask = (pieces: readonly LaidPiece[], more: Partial<StabilityQuestion> = {}, material = FULL): StabilityQuestion =>
  question(pieces, SPECS, material, 0.5, more);
const twoCubes = (offMm: number): readonly LaidPiece[] => [put('cube', 0, 0), put('cube', offMm, 0)];
const gate = (shiftMm: number, right = 'post'): readonly LaidPiece[] => [
  put('post', -50, 0),
  put(right, 50, 0),
  put('slab', shiftMm, 0),
];

const en = inClass('en', 'mm');
const es = inClass('es', 'half-cm');
const said = (asked: StabilityQuestion, words = en): StabilityWords =>
  words.stability(
    judged(asked),
    asked.pieces.map(({ kind }) => kind),
  );

describe('a tower', () => {
  it('that falls: what goes first, joint by joint, and the move that holds it', () => {
    // 29.4 - 25 = 4.4 past the edge. Both: centre at 14.7, 10.3 inside, 50 high: atan(10.3 / 50) = 11.6 degrees.
    const { verdict, lines } = said(ask(twoCubes(29.4)));
    expect(verdict).toBe('Falls: by the sums it cannot stand.');
    expect(lines).toEqual([
      'Goes first: the cube (piece 2), tipping to the right over the edge of the part that rests on the cube (piece 1). The centre of the weight is 4 mm past the edge.',
      'The cube (piece 1) on the table: the centre of the weight above is 10 mm inside the edge; it tips at 11°, slides at 26°.',
      'The cube (piece 2) on the cube (piece 1): the centre of the weight above is 4 mm past the edge; it does not hold.',
      'Move the cube (piece 2) 5 mm to the left: then by the sums it stands, though maybe only just.',
    ]);
  });

  it('that falls by less than a division of the ruler is too close to call, and no length is shown as 0', () => {
    const { verdict, lines } = said(ask(twoCubes(25.6)));
    expect(verdict).toBe('Too close to call: by the sums it falls, but a shift of 1 mm would hold it.');
    expect(lines[0]).toContain('less than 1 mm past the edge');
    expect(lines.at(-1)).toContain('1 mm to the left');
    expect(said(ask(twoCubes(29.4), { rulerStepMm: 5 }), es).verdict).toBe(
      'Demasiado justo para decidir: según los cálculos se cae, pero se sostendría con un movimiento de 0,5 cm.',
    );
  });

  it('that wobbles: what it bears, rounded down, and the move that makes it steady', () => {
    // Upper: 3 inside, 25 high: atan 0.12 = 6.84 degrees. Slides at atan 0.5 = 26.57. 25 tan 10 = 4.41: 1.41 more.
    const { verdict, lines } = said(ask(twoCubes(22)), es);
    expect(verdict).toBe(
      'Tambaleante: según los cálculos se sostiene, pero se cae con una inclinación de menos de 10°.',
    );
    expect(lines.slice(0, 4)).toEqual([
      'Se sostiene hasta una inclinación de 6,8° (como un empujón de lado de 12 % de su peso). Después vuelca.',
      'Vuelca a 6,8° (como un empujón de lado de 12 % de su peso), donde menos aguanta es hacia la derecha, sin contar que resbale.',
      'Resbala a 26° (como un empujón de lado de 50 % de su peso), sin contar que vuelque.',
      'Lo primero que cedería: la pieza 2 (cube), volcando hacia la derecha sobre el borde de la parte que se apoya en la pieza 1 (cube). El centro del peso está menos de 0,5 cm por dentro del borde.',
    ]);
    expect(said(ask(twoCubes(22))).lines.at(-1)).toBe(
      'To make it steady, move the cube (piece 2) 2 mm to the left: then by the sums it bears a tilt of 10°.',
    );
  });

  it('of one piece has no joints to tell, and slides without a side', () => {
    expect(said(ask([put('cube', 0, 0)]))).toMatchObject({
      verdict: 'Steady: by the sums it stands, even on a table tilted by 10°.',
      lines: [
        'Stands up to a tilt of 26° (like a push of 50 % of its weight sideways). Then it slides.',
        expect.stringMatching(/^Tips at 45° \(like a push of 100 % of its weight sideways\), weakest to the /),
        'Slides at 26° (like a push of 50 % of its weight sideways), with tipping left out.',
        'Would give way first: the cube (piece 1), slipping on the table.',
      ],
    });
  });
});

describe('a bridge', () => {
  it('that falls tips over the outer edge of a post', () => {
    // Posts from -35 to -5 and from 5 to 35, a slab from -36 to 114 on both: its middle, 39, is 4 past the right one.
    const pieces = [put('post', -20, 0), put('post', 20, 0), put('slab', 39, 0)];
    expect(said(ask(pieces)).lines).toEqual([
      'Goes first: the slab (piece 3), tipping to the right over the edge of the part that rests on the post (piece 2). The centre of the weight is 4 mm past the edge.',
      'Move the slab (piece 3) 4 mm to the left: then by the sums it stands, though maybe only just.',
    ]);
  });

  it('on posts of 60 and 58.5 says that the gap between was taken as closed', () => {
    const asked = ask(gate(20, 'low'), { slackMm: 2 });
    expect(said(asked).lines).toContain(
      'The slab (piece 3) is taken to rest on the low (piece 2) too, though a gap of 1.5 mm is left.',
    );
    expect(said(asked, es).lines).toContain(
      'La pieza 3 (slab) cuenta como apoyada también en la pieza 2 (low), aunque queda un hueco de 0,15 cm.',
    );
  });

  it('too large for the small solver says that its margin is not known', () => {
    const nine = [-300, 0, 300].flatMap((x) => gate(0).map((piece) => ({ ...piece, xMm: piece.xMm + x })));
    expect(said(ask(nine, { limits: { ...LIMITS, trials: 0 } }))).toMatchObject({
      verdict: 'By the sums it stands. How steady it is was not worked out: that part of the program is not loaded.',
      lines: [],
    });
  });
});

describe('the limits', () => {
  it('are few, stand beside every verdict, and end with the real test and the caution', () => {
    const builds = [ask(twoCubes(3)), ask(gate(70)), ask([put('log', 0, 0, { resting: 'side' })], {}, SHELL)];
    for (const asked of builds) {
      const { limits } = said(asked);
      expect(limits).toHaveLength(6);
      expect(limits.slice(-2)).toEqual([
        'The real test on the table decides.',
        wordsFor('en').cautions['stands-or-falls'],
      ]);
      expect(limits[2]).toBe('Under 3° it is too close to call.');
    }
  });
});
