// Pointing at pieces: what lies first on a line of sight, through the same models that are drawn.

import type { LaidPiece } from '@cairnmark/geometry';
import { buildStack, makeSolid } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import { VIEWS } from '../drawing/view.ts';
import { Materials } from './materials.ts';
import { pickAlong } from './pick.ts';
import type { ScenePicture } from './picture.ts';
import { PieceModels } from './piece-models.ts';

const ball = makeSolid({ solid: 'sphere', sizes: { radius: 30 } });
const box = makeSolid({ solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 40 } });
if (!ball.ok || !box.ok) throw new RangeError('a ball and a box');
const solids = new Map([
  ['ball', ball.value],
  ['box', box.value],
]);

const laid = (kind: string, xMm: number, resting: string): LaidPiece => ({ kind, resting, xMm, yMm: 0, turnRad: 0.4 });
const stack = buildStack(
  [laid('box', 0, 'base'), laid('ball', 200, ball.value.restings[0]!.id), laid('box', 0, 'base')],
  solids,
  0,
);
if (!stack.ok) throw new RangeError('two boxes and a ball');

const { pieces } = stack.value;
const picture: ScenePicture = { pieces, picked: null, ghost: null, why: null, unit: 'cm', heightText: null };
const models = new PieceModels(new Materials());
models.show(picture);
models.aim(VIEWS.corner);

const down = (x: number, y: number) => ({ origin: [x, y, 1000], direction: [0, 0, -1] }) as const;

describe('pointing from above', () => {
  it('meets the upper box, where that is in hand the lower one, and else the table', () => {
    const without = (...gone: readonly number[]) => {
      const others = new PieceModels(new Materials());
      others.show({ ...picture, pieces: pieces.filter(({ index }) => !gone.includes(index)) });
      return pickAlong(down(5, 5), others.surfaces());
    };
    const [upper, lower] = [without(), without(2)];
    expect([upper?.piece, lower?.piece]).toEqual([2, 0]);
    expectNear(upper!.surfaceMm, 80, { absolute: 1e-4 });
    expectNear(lower!.surfaceMm, 40, { absolute: 1e-4 });
    expect(without(0, 2)).toEqual({ piece: null, point: [5, 5, 0], surfaceMm: 0 });
  });

  it('meets a ball where its surface is', () => {
    const met = pickAlong(down(210, 0), models.surfaces());
    expect(met?.piece).toBe(1);
    // 10 mm beside its middle; 64 facets lie at most 0.04 mm inside.
    expectNear(met!.surfaceMm, 30 + Math.sqrt(30 ** 2 - 10 ** 2), { absolute: 0.05 });
  });

  it('meets pieces where they are now', () => {
    const moved = buildStack([laid('box', 300, 'base')], solids, 0);
    if (!moved.ok) throw new RangeError('one box');
    const others = new PieceModels(new Materials());
    others.show(picture);
    others.show({ ...picture, pieces: moved.value.pieces });
    expect(pickAlong(down(5, 5), others.surfaces())?.piece).toBeNull();
    const met = pickAlong(down(305, 5), others.surfaces());
    expect(met?.piece).toBe(0);
    // Places are doubles, surfaces single numbers: 1e-7 of 1 m.
    expectNear(met!.surfaceMm, 40, { absolute: 1e-4 });
  });

  it('never meets the ghost', () => {
    const others = new PieceModels(new Materials());
    others.show({ ...picture, pieces: [], ghost: { piece: pieces[0]!, isRefused: false, label: null } });
    expect(pickAlong(down(5, 5), others.surfaces())?.piece).toBeNull();
  });

  it('looking level past everything meets nothing', () => {
    expect(pickAlong({ origin: [0, -1000, 500], direction: [0, 1, 0] }, models.surfaces())).toBeNull();
    expect(pickAlong({ origin: [0, -1000, 50], direction: [0, 1, 0] }, models.surfaces())?.piece).toBe(2);
  });
});
