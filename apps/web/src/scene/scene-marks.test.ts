// What is drawn over the canvas: the ruler reads true, and texts name the right marks.

import type { LaidPiece, PlacedPiece } from '@cairnmark/geometry';
import { buildStack, makeSolid } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { ViewName } from '../drawing/view.ts';
import { VIEWS } from '../drawing/view.ts';
import type { Camera } from './camera.ts';
import { toCanvas } from './camera.ts';
import { fitCamera } from './fit.ts';
import type { ScenePicture } from './picture.ts';
import { roomOf } from './room.ts';
import { rulerDrawing } from './ruler-drawing.ts';
import { boxesToAvoid, marksOf, namedOf } from './scene-marks.ts';

const box = makeSolid({ solid: 'rectangular-prism', sizes: { length: 70, width: 50, height: 30 } });
if (!box.ok) throw new RangeError('a box of 7 by 5 by 3 cm');
const solids = new Map([['box', box.value]]);

function pieces(places: readonly (readonly [number, number])[]): readonly PlacedPiece[] {
  const laid = places.map(([xMm, yMm]): LaidPiece => ({ kind: 'box', resting: 'base', xMm, yMm, turnRad: 0 }));
  const stack = buildStack(laid, solids, 0);
  if (!stack.ok) throw new RangeError('boxes');
  return stack.value.pieces;
}

const picture = (of: readonly PlacedPiece[]): ScenePicture => ({
  pieces: of,
  picked: null,
  ghost: null,
  why: null,
  unit: 'cm',
  heightText: '9.0 cm',
});

function camera(view: ViewName, of: readonly PlacedPiece[]): Camera {
  const inset = { top: 0, right: 0, bottom: 0, left: 0 };
  const room = roomOf(of.map(({ body }) => body));
  return fitCamera({ view: VIEWS[view], room, inset, unit: 'cm', heightLabelPx: 80, widthPx: 800, heightPx: 500 });
}

describe('the ruler', () => {
  const tower = pieces([
    [12, 7],
    [12, 7],
    [12, 7],
  ]);
  const room = roomOf(tower.map(({ body }) => body));

  it.each(['corner', 'front', 'side'] as const)(
    '%s: stands level with the highest point, right of the build',
    (view) => {
      const shown = camera(view, tower);
      const ruler = rulerDrawing(picture(tower), shown, room);
      const corners = tower.flatMap(({ flatFaces }) =>
        flatFaces.flatMap((f) => (f.kind === 'polygon' ? f.corners : [])),
      );
      const rightmostPx = Math.max(...corners.map((corner) => toCanvas(shown, corner)[0]));
      const rise = shown.pxPerMm * Math.cos(shown.view.elevationRad);
      const foot = ruler!.box.top + ruler!.box.height;
      // 90 mm above its foot the ruler is level with the top of the tower.
      expectNear(foot - 90 * rise, ruler!.heightAt![1], { absolute: 1e-6 });
      expect(ruler!.box.left).toBeGreaterThan(rightmostPx);
      expect(ruler!.box.height).toBeGreaterThan(90 * rise);
    },
  );

  it('is not there from above, and reads nothing without a build or a text', () => {
    expect(rulerDrawing(picture(tower), camera('above', tower), room)).toBeNull();
    const empty = rulerDrawing(picture([]), camera('corner', []), roomOf([]));
    expect(empty?.heightAt).toBeNull();
    const silent = rulerDrawing({ ...picture(tower), heightText: null }, camera('corner', tower), room);
    expect(silent?.heightAt).toBeNull();
  });
});

describe('marks and texts', () => {
  const two = pieces([
    [0, 0],
    [20, 0],
  ]);
  const room = roomOf(two.map(({ body }) => body));
  const mark = {
    pieces: [1],
    balance: [20, 0, 45],
    plumbFoot: [20, 0, 30],
    heldUp: [
      [
        [-15, -25, 30],
        [35, -25, 30],
        [35, 25, 30],
        [-15, 25, 30],
      ],
    ],
    hinge: [
      [35, -25, 30],
      [35, 25, 30],
    ],
    arrow: [
      [60, 0, 70],
      [90, 0, 50],
    ],
  } as const;
  const labels = { balance: 'B', heldUp: 'H', edge: 'T', point: 'P' };
  const why = (falls: boolean): ScenePicture => ({
    ...picture(two),
    why: { overlay: { falls, isBad: falls, marks: [mark] }, labels },
  });
  const shown = camera('corner', two);

  it('are in ink when it stands, and bad when it falls', () => {
    const looks = (falls: boolean): string =>
      marksOf(why(falls), shown, room)
        .marks.map(({ look }) => look)
        .join(';');
    expect(looks(false)).toContain('balance ink');
    expect(looks(false)).not.toContain('bad');
    expect(looks(true)).toContain('hinge bad');
  });

  it('name a point where it turns over one, and an edge where it turns over that', () => {
    const corner = { ...mark, hinge: [mark.hinge[0], mark.hinge[0]] } as const;
    const over = { ...picture(two), why: { overlay: { falls: true, isBad: true, marks: [corner] }, labels } };
    expect(namedOf(over, shown).map(({ text }) => text)).toEqual(['B', 'H', 'P']);
  });

  it('name what can be seen: what holds up is hidden while it stands', () => {
    expect(namedOf(why(false), shown).map(({ text }) => text)).toEqual(['B', 'T']);
    const named = namedOf(why(true), shown);
    expect(named.map(({ text }) => text)).toEqual(['B', 'H', 'T']);
    expect(named[1]?.anchor).toEqual(toCanvas(shown, [10, 0, 30]));
  });

  it('mark every group of pieces that goes over, and name the first for certain', () => {
    const other = { ...mark, pieces: [0], balance: [-20, 0, 15], hinge: null } as const;
    const both: ScenePicture = {
      ...picture(two),
      why: { overlay: { falls: true, isBad: true, marks: [mark, other] }, labels },
    };
    const looks = marksOf(both, shown, room).marks.map(({ look }) => look);
    expect(looks.filter((look) => look === 'balance bad').length).toBe(2);
    expect(namedOf(both, shown).map(({ text, isSpare }) => [text, isSpare])).toEqual([
      ['B', false],
      ['H', false],
      ['T', false],
      ['B', true],
      ['H', true],
    ]);
  });

  it('name a ghost, and keep clear of it', () => {
    const ghost = { piece: pieces([[-90, 0]])[0]!, isRefused: true, label: 'G' };
    const ghostly = { ...picture(two), ghost };
    expect(namedOf(ghostly, shown).map(({ text, look }) => [text, look])).toEqual([['G', 'bad']]);
    expect(boxesToAvoid(ghostly, shown, [null]).length).toBe(3);
  });

  it('show the edge of the table only where one looks level', () => {
    const looks = (view: ViewName): readonly string[] =>
      marksOf(picture(two), camera(view, two), room).marks.map(({ look }) => look);
    expect(looks('front')).toContain('table-line');
    expect(looks('corner')).not.toContain('table-line');
  });
});
