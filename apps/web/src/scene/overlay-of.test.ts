// What is drawn of a judgement, on builds whose figures are worked out by hand. Cubes of 50 mm, all of one stuff.

import type { LaidPiece, Posed, Stability, StabilityQuestion } from '@cairnmark/geometry';
import { makeSolid, noTabs, pose, stabilityOf } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { overlayOf } from './overlay-of.ts';

const cube = makeSolid({ solid: 'cube', sizes: { edge: 50 } });
if (!cube.ok) throw new RangeError('a cube of 5 cm');

function judged(xs: readonly number[], friction = 0.6): readonly [Stability, Posed] {
  const pieces = xs.map((xMm): LaidPiece => ({ kind: 'cube', resting: 'base', xMm, yMm: 0, turnRad: 0 }));
  const question: StabilityQuestion = {
    pieces,
    solids: new Map([['cube', cube.ok ? cube.value : (undefined as never)]]),
    stuff: new Map([
      ['cube', { material: { kind: 'full', densityGPerCm3: 1 }, surface: { material: 'wood', friction } }],
    ]),
    table: { material: 'table', friction },
    pairs: [],
    tabsOf: noTabs,
    rulerStepMm: 1,
    slackMm: 0,
    solver: null,
    limits: { pivots: 100_000, solves: 100, trials: 100 },
  };
  const [answer, posed] = [stabilityOf(question), pose(question, pieces)];
  if (!answer.ok || !posed.ok) throw new RangeError('a build of cubes');
  return [answer.value, posed.value];
}

describe('the overlay', () => {
  it('of a cube that hangs out too far', () => {
    const overlay = overlayOf(...judged([0, 30]));
    expect([overlay.falls, overlay.isBad, overlay.marks.length]).toEqual([true, true, 1]);
    const [mark] = overlay.marks;
    expect(mark?.pieces).toEqual([1]);
    expectPointNear(mark!.balance, [30, 0, 75], 1e-9);
    // 25 mm below the edge that it turns over, past which it hangs.
    expectPointNear(mark!.plumbFoot, [30, 0, 25], 1e-9);
    expect(mark?.hinge?.map(([x, , z]) => [x, z])).toEqual([
      [25, 50],
      [25, 50],
    ]);
    const xs = mark!.heldUp[0]!.map(([x]) => x);
    expectNear(Math.min(...xs), 5, { absolute: 1e-9 });
    expectNear(Math.max(...xs), 25, { absolute: 1e-9 });
    const [tail, head] = [mark!.arrow[0]!, mark!.arrow.at(-1)!];
    expect(tail[0]).toBeGreaterThan(30);
    expect(head[0]).toBeGreaterThan(tail[0]);
    expect(head[2]).toBeLessThan(tail[2]);
  });

  it('of two that hang out on either side: each goes its own way', () => {
    const overlay = overlayOf(...judged([0, 300, 30, 270]));
    expect(overlay.marks.map(({ pieces }) => pieces).sort()).toEqual([[2], [3]]);
    const ways = overlay.marks.map(({ pieces, arrow }) => [pieces[0], Math.sign(arrow.at(-1)![0] - arrow[0]![0])]);
    expect(ways.sort()).toEqual([
      [2, 1],
      [3, -1],
    ]);
  });

  it('of a tower that stands: nothing pale, the line ends on the ground it stands on', () => {
    const overlay = overlayOf(...judged([0, 0, 0]));
    expect([overlay.falls, overlay.isBad]).toEqual([false, false]);
    const [mark] = overlay.marks;
    expect(mark?.pieces).toEqual([0, 1, 2]);
    expectPointNear(mark!.balance, [0, 0, 75], 1e-9);
    expectPointNear(mark!.plumbFoot, [0, 0, 0], 1e-9);
    expect(mark?.arrow.length).toBeGreaterThan(2);
  });

  it('of a build that would slide has a straight arrow and no edge', () => {
    const overlay = overlayOf(...judged([0], 0.05));
    const [mark] = overlay.marks;
    expect(mark?.hinge).toBeNull();
    const [tail, head] = [mark!.arrow[0]!, mark!.arrow.at(-1)!];
    expectNear(head[2], tail[2], { absolute: 1e-9 });
    expectNear(Math.hypot(head[0] - tail[0], head[1] - tail[1]), 40, { absolute: 1e-9 });
  });
});
