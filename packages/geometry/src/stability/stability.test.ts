// What the one entry says of whole builds: verdicts, reasons, moves, slack, friction of pairs, and what needs a solver.
// Figures are worked out by hand beside each build. mm, grams.

import { describe, expect, it } from 'vitest';
import { FULL, judged, LIMITS, question, SHELL } from '../../../../tests/reference/judged-builds.ts';
import { box, cube, cylinder, put, sphere } from '../../../../tests/reference/stacked-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { LaidPiece } from '../stack/types.ts';
import type { LinearSolver } from './linear-solver.ts';
import { moveBy } from './mend.ts';
import { tiltTowards, withoutPiece } from './on-request.ts';
import type { StabilityQuestion } from './question.ts';
import type { Stability } from './stability.ts';
import { stabilityOf } from './stability.ts';

const SPECS = {
  cube: cube(50),
  post: box(30, 30, 60),
  low: box(30, 30, 58.5),
  slab: box(150, 30, 10),
  log: cylinder(20, 70),
  ball: sphere(25),
};
const MM = { absolute: 1e-9 };
const ask = (pieces: readonly LaidPiece[], more: Partial<StabilityQuestion> = {}, friction = 0.5): StabilityQuestion =>
  question(pieces, SPECS, FULL, friction, more);
const twoCubes = (offMm: number): readonly LaidPiece[] => [put('cube', 0, 0), put('cube', offMm, 0)];
const gate = (shiftMm: number, right = 'post'): readonly LaidPiece[] => [
  put('post', -50, 0),
  put(right, 50, 0),
  put('slab', shiftMm, 0),
];

describe('verdicts of an upper cube shifted further and further', () => {
  // It tips at atan((25 - shift) / 25) once the shift is beyond a third of 50.
  it.each([
    [17, 'steady'],
    [21.9, 'wobbly'],
    [24, 'too-close-to-call'],
    [25.6, 'too-close-to-call'],
    [29.4, 'falls'],
  ] as const)('by %s: %s', (offMm, verdict) => {
    expect(judged(ask(twoCubes(offMm))).verdict).toBe(verdict);
  });
  it('falling by 4.4 it names piece, edge and distance, and the move of 5 that holds it', () => {
    const answer = judged(ask(twoCubes(29.4)));
    expect(answer).toMatchObject({
      stands: false,
      tipsAt: null,
      mend: { piece: 1, moved: [1], side: 'left', byMm: 5 },
    });
    expect(answer.first).toHaveLength(1);
    expect(answer.first[0]).toMatchObject({ pieces: [1], on: 0 });
    expectNear(answer.first[0]!.hinge!.pastMm, 4.4, MM);
    expectNear(answer.first[0]!.hinge!.ends[0][0], 25, MM);
    expect(judged(ask(moveBy(twoCubes(29.4), answer.mend!))).stands).toBe(true);
  });
  it('wobbly by 3 inside it names the joint, and the move of 2 that gives 10 degrees', () => {
    const answer = judged(ask(twoCubes(22)));
    expectNear(answer.standsTo!.push, 3 / 25, MM);
    expectNear(answer.first[0]!.hinge!.pastMm, -3, MM);
    // 25 tan 10 = 4.408: 1.41 more, by whole mm.
    expect(answer.steadyingMove).toEqual({ piece: 1, moved: [1], side: 'left', byMm: 2 });
    expect(answer.joints?.map(({ upper, lower }) => [upper, lower])).toEqual([
      [0, 'table'],
      [1, 0],
    ]);
    expectNear(answer.joints![0]!.insideMm, 25 - 11, MM);
  });
  it('a ruler of half inches gives moves of half inches', () => {
    expect(judged(ask(twoCubes(29.4), { rulerStepMm: 12.7 })).mend).toMatchObject({ byMm: 12.7 });
  });
});

describe('slack', () => {
  it('a slab on posts of 60 and 58.5 falls without it and is a bridge with 2 mm of it', () => {
    expect(judged(ask(gate(20, 'low'))).stands).toBe(false);
    expect(judged(ask(gate(20, 'low'), { slackMm: 2 })).stands).toBe(true);
    expect(judged(ask(gate(20, 'low'), { slackMm: 1 })).stands).toBe(false);
  });
  it('says how far it closed, and counts nothing that touches anyway', () => {
    const [gap, ...more] = judged(ask(gate(20, 'low'), { slackMm: 2 })).closedGaps;
    expect(more).toEqual([]);
    expectNear(gap!.gapMm, 1.5, MM);
    expect(judged(ask(gate(20, 'post'), { slackMm: 2 })).closedGaps).toEqual([]);
  });
});

describe('slack over a card', () => {
  const specs = { cube: cube(50), card: box(50, 50, 1.5) };
  const onCard = (cardMm: number) =>
    judged(question([put('cube', 0, 0), put('card', cardMm, 0), put('cube', 0, 0)], specs, FULL, 0.5, { slackMm: 2 }));
  it('does not reach through it: what lies on the card rests on the card alone', () => {
    expect(onCard(0)).toMatchObject({ verdict: 'steady', method: 'recursion', closedGaps: [] });
  });
  it('does not carry what hangs over its edge', () => {
    // The card ends at -35 + 25 = -10.
    const { stands, first } = onCard(-35);
    expect(stands).toBe(false);
    expect(first.flatMap(({ pieces }) => pieces)).toContain(2);
  });
  it('carries on a post beside that is lower by more than a card', () => {
    const kinds = { post: SPECS.post, low: SPECS.low, slab: SPECS.slab, card: box(30, 30, 1) };
    const pieces = [
      put('post', -50, 0),
      put('low', 50, 0),
      put('card', -50, 0),
      put('card', 50, 0),
      put('slab', 20, 0),
    ];
    const { stands, closedGaps } = judged(question(pieces, kinds, FULL, 0.5, { slackMm: 2 }));
    expect(stands).toBe(true);
    expect(closedGaps).toMatchObject([{ upper: 4, lower: 3 }]);
  });
});

describe('not predicted', () => {
  it('says why: what people see, and folded paper that rolls', () => {
    expect(
      judged(ask(twoCubes(3).map((piece, k) => (k === 1 ? { ...piece, held: 'taped' as const } : piece)))),
    ).toMatchObject({
      verdict: 'not-predicted',
      stands: true,
      notPredicted: [{ piece: 1, why: 'taped' }],
    });
    const paper = question([put('log', 0, 0, { resting: 'side' })], SPECS, SHELL, 0.4);
    expect(judged(paper)).toMatchObject({ verdict: 'not-predicted', notPredicted: [{ piece: 0, why: 'paper-rolls' }] });
    const upright = question([put('log', 0, 0)], SPECS, SHELL, 0.4);
    expect(judged(upright)).toMatchObject({ verdict: 'steady', notPredicted: [] });
  });
});

describe('friction of a pair', () => {
  const mixed = (pairs: StabilityQuestion['pairs']): Stability => {
    const asked = ask([put('cube', 0, 0), put('post', 0, 0)], { pairs, table: { material: 'desk', friction: 0.45 } });
    const stuff = new Map(asked.stuff);
    stuff.set('post', { material: FULL, surface: { material: 'felt', friction: 0.3 } });
    return judged({ ...asked, stuff });
  };
  it('is the smaller of the two unless stated for the pair, in either order; the table counts as its own', () => {
    const slides = (pairs: StabilityQuestion['pairs']): readonly number[] =>
      mixed(pairs).joints!.map(({ slidesAtRad }) => Math.tan(slidesAtRad));
    const expectSlides = (pairs: StabilityQuestion['pairs'], expected: readonly number[]): void => {
      slides(pairs).forEach((mu, k) => {
        expectNear(mu, expected[k]!, { absolute: 1e-15 });
      });
    };
    expectSlides([], [0.45, 0.3]);
    expectSlides([{ between: ['felt', 'all'], friction: 0.9 }], [0.45, 0.9]);
    expectSlides([{ between: ['all', 'desk'], friction: 0.2 }], [0.2, 0.3]);
  });
});

describe('the solver', () => {
  const refused: LinearSolver = {
    name: 'never asked',
    open: () => {
      throw new Error('the fast path decides');
    },
  };
  it('is not asked where the recursion decides', () => {
    expect(judged(ask(twoCubes(22), { solver: refused })).method).toBe('recursion');
  });
  it('is needed beyond eight pieces that share their loads', () => {
    const nine = [-300, 0, 300].flatMap((x) => gate(0).map((piece) => ({ ...piece, xMm: piece.xMm + x })));
    const answer = judged(ask(nine, { limits: { ...LIMITS, trials: 0 } }));
    expect(answer).toMatchObject({ stands: true, verdict: 'needs-solver', standsTo: null });
    expect(judged(ask(gate(0))).verdict).toBe('steady');
  });
  it('a falling build of any size is judged without it', () => {
    const fallen = [-300, 0]
      .flatMap((x) => gate(0).map((piece) => ({ ...piece, xMm: piece.xMm + x })))
      .concat(gate(70).map((piece) => ({ ...piece, xMm: piece.xMm + 300 })));
    expect(judged(ask(fallen)).verdict).toBe('falls');
  });
  it('no pieces are no question', () => {
    expect(() => stabilityOf(ask([]))).toThrow(RangeError);
  });
  it('a refused layout gives its issues', () => {
    expect(stabilityOf(ask([put('no-such-kind', 0, 0)]))).toMatchObject({
      ok: false,
      issues: [{ code: 'kind-unknown' }],
    });
  });
});

describe('on request', () => {
  const towards = (asked: StabilityQuestion, direction: readonly [number, number]): number => {
    const answer = tiltTowards(asked, direction);
    return answer.ok && answer.value !== null ? answer.value.push : Number.NaN;
  };
  it('one direction of a tower: the upper cube, shifted by 10, over the near and the far edge', () => {
    // Whole: centre at 5, 50 high. Upper alone: inside 15 of the joint's edge at 25, and 25 the other way (its own edge).
    expectNear(towards(ask(twoCubes(10), {}, 9), [1, 0]), Math.min(20 / 50, 15 / 25), MM);
    expectNear(towards(ask(twoCubes(10), {}, 9), [-1, 0]), Math.min(30 / 50, 25 / 25), MM);
    expectNear(towards(ask(twoCubes(10), {}, 0.3), [-1, 0]), 0.3, MM);
  });
  it('along a log it tips over its end, across it not at all', () => {
    const log = ask([put('log', 0, 0, { resting: 'side' })], {}, 9);
    const pushes = [towards(log, [0, 1]), towards(log, [1, 0])].sort((a, b) => a - b);
    expectNear(pushes[0]!, 0, MM);
    expectNear(pushes[1]!, 35 / 20, MM);
  });
  it('one direction of a gate: across it over the long sides', () => {
    // Two posts of 27000 g/2 at 30 and a slab of 22500 at 65: (54000 x 30 + 45000 x 65) / 99000... by volumes.
    const centre = (2 * 54000 * 30 + 45000 * 65) / (2 * 54000 + 45000);
    expectNear(towards(ask(gate(0), {}, 9), [0, 1]), 15 / centre, { absolute: 1e-6 });
  });
  it('which piece can be taken out of a gate with a cube on it', () => {
    const build = ask([...gate(0), put('cube', 0, 0)]);
    const without = (piece: number) => {
      const answer = withoutPiece(build, piece);
      if (!answer.ok) throw new Error('refused');
      return answer.value;
    };
    expect(without(3)).toMatchObject({ verdict: 'steady', stands: true, first: [] });
    expect(without(0)).toMatchObject({ verdict: 'falls', first: [{ pieces: [2, 3], on: 1 }] });
    expect(without(2)).toMatchObject({ verdict: 'falls', first: [{ pieces: [3], on: null }] });
  });
});
