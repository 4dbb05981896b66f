// Every text about standing and falling is reached by some answer of the statics, in both languages, with nothing open.

import type { Failure, Hinge, Mend, NotPredicted, Stability, Tilt, WithoutPiece } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import type { Catalogue } from './catalogue.ts';
import { classWords } from './class-words.ts';
import { english } from './en/index.ts';
import { spanish } from './es/index.ts';
import { BANDS, watched } from './in-class.ts';
import type { Reader } from './reader.ts';

const inMm: Reader = {
  ruler: { id: 'mm', unit: 'mm', stepMm: 1 },
  bands: BANDS,
  unitOf: () => 'mm',
  kindName: (kind) => kind,
  criterionName: (id) => id,
  groupName: (id) => id,
};
const KINDS = ['cube', 'cone', 'ball'];
const DEGREE = Math.PI / 180;
const tilt = (degrees: number, turn = 0): Tilt => ({
  tiltRad: degrees * DEGREE,
  push: Math.tan(degrees * DEGREE),
  direction: [Math.cos(turn * DEGREE), Math.sin(turn * DEGREE)],
});
const move = (piece: number, moved: readonly number[]): Mend => ({ piece, moved, side: 'left', byMm: 14 });
const hinge = (lengthMm: number, pastMm: number): Hinge => ({
  ends: [
    [25, 0, 50],
    [25, lengthMm, 50],
  ],
  towards: [1, 0],
  pastMm,
});
const goes = (on: Failure['on'], over: Failure['hinge'] = null): Failure => ({ pieces: [1, 2], on, hinge: over });
const WHY: readonly NotPredicted['why'][] = ['taped', 'glued', 'leaning', 'nested', 'paper-rolls'];

const UNKNOWN: Stability = {
  verdict: 'not-decided',
  stands: null,
  method: 'least-squares-and-programmes',
  tipsAt: null,
  slidesAt: null,
  standsTo: null,
  joints: null,
  first: [],
  rolling: [],
  notPredicted: [],
  closedGaps: [],
  mend: null,
  steadyingMove: null,
};
const STANDS: Stability = {
  ...UNKNOWN,
  verdict: 'steady',
  stands: true,
  tipsAt: tilt(17),
  slidesAt: tilt(21),
  standsTo: tilt(17),
};
const ANSWERS: readonly Stability[] = [
  UNKNOWN,
  { ...UNKNOWN, stands: true },
  { ...UNKNOWN, stands: true, verdict: 'needs-solver' },
  {
    ...UNKNOWN,
    stands: false,
    verdict: 'falls',
    first: [goes(null), goes('table'), goes(0, hinge(30, 7)), goes(0, hinge(0, 7)), { ...goes(0), pieces: [0, 1, 2] }],
    joints: [
      { upper: 1, lower: 0, tipsAt: tilt(0), slidesAtRad: 0.3, insideMm: -7 },
      { upper: 0, lower: 'table', tipsAt: tilt(5), slidesAtRad: 0.3, insideMm: 3 },
    ],
  },
  {
    ...UNKNOWN,
    stands: false,
    verdict: 'falls',
    first: [[1, 2], [2]].flatMap((pieces) =>
      [goes(null), goes(0), goes(0, hinge(30, 7)), goes(0, hinge(0, -1))].map((failure) => ({ ...failure, pieces })),
    ),
  },
  { ...UNKNOWN, stands: false, verdict: 'too-close-to-call', mend: move(1, [1]) },
  { ...UNKNOWN, stands: false, verdict: 'falls', mend: move(1, [1, 2]) },
  { ...UNKNOWN, verdict: 'not-predicted', notPredicted: WHY.map((why, k) => ({ piece: k % 3, why })) },
  { ...STANDS, verdict: 'rolls-at-a-touch', standsTo: tilt(0), rolling: [2] },
  { ...STANDS, closedGaps: [{ upper: 2, lower: 1, gapMm: 1.52 }] },
  { ...STANDS, first: [goes(0, hinge(30, -3)), goes(0, hinge(0, -3))], standsTo: tilt(14) },
  { ...STANDS, verdict: 'wobbly', slidesAt: tilt(4), standsTo: tilt(4), steadyingMove: move(2, [2]) },
  { ...STANDS, verdict: 'too-close-to-call', tipsAt: tilt(0.04), standsTo: tilt(0.04) },
];
const WITHOUT: readonly WithoutPiece[] = ANSWERS.map(({ verdict, stands, first }) => ({ verdict, stands, first }));

/** All that is said of all these, and the texts it was said with. */
function everything(words: Catalogue): { readonly sentences: readonly string[]; readonly used: ReadonlySet<string> } {
  const { texts: stability, used } = watched(words.stability);
  const said = classWords({
    words: { ...words, stability },
    reader: inMm,
  });
  const sentences = [
    ...ANSWERS.flatMap((answer) => {
      const { verdict, lines, limits } = said.stability(answer, KINDS);
      const brief = said.stabilityBrief(answer, KINDS);
      const short = [brief.sentence, brief.mend ?? ''].filter((sentence) => sentence !== '');
      return [verdict, ...lines, ...limits, ...short];
    }),
    ...WITHOUT.map((answer) => said.withoutPiece(answer, 1, KINDS)),
    said.withoutPiece({ verdict: 'steady', stands: true, first: [] }, 0, ['cube']),
    ...[0, 30, 45, 90, 135, 180, 225, 270, 315].map((turn) => said.tiltTowards(tilt(7, turn))),
    said.tiltTowards(tilt(0)),
    said.tiltTowards(null),
  ];
  return { sentences, used };
}

describe('the texts about standing and falling', () => {
  it.each([
    ['English', english],
    ['Spanish', spanish],
  ] as const)('%s: each is reached, and none leaves anything open', (_, words) => {
    const { sentences, used } = everything(words);
    expect([...used].sort()).toEqual(Object.keys(words.stability).sort());
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^[\p{Lu}¿].*\.$/u);
      expect(sentence).not.toMatch(/[{}]|\?|undefined|NaN|null| {2}|\b0 mm/);
    }
  });

  it('a sentence that ends a figure has its unit', () => {
    for (const words of [english, spanish]) {
      for (const sentence of everything(words).sentences) {
        // Numbers of pieces stand behind their word; the guess of the friction has no unit.
        const bare = sentence.replace(/\b(pieces?|piezas?) \d+(( and| y) \d+)?|0[.,]4/gi, '');
        for (const [, after] of bare.matchAll(/\d+(?:[.,]\d+)?(.{0,3})/g)) expect(after).toMatch(/^(°| %| mm)/);
      }
    }
  });

  it('a build that is not predicted is told no figure, whatever the sums say', () => {
    const { lines } = classWords({ words: english, reader: inMm }).stability(
      { ...STANDS, verdict: 'not-predicted', notPredicted: [{ piece: 1, why: 'glued' }], mend: move(1, [1]) },
      KINDS,
    );
    expect(lines).toEqual(['Glued: the cone (piece 2).']);
  });

  it('a piece that the build has not is a mistake of the caller', () => {
    expect(() => classWords({ words: english, reader: inMm }).withoutPiece(UNKNOWN, 3, KINDS)).toThrow(RangeError);
  });
});
