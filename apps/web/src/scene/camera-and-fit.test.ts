// The camera as numbers: places to canvas and back, dragging, turning, and what is in sight after a fit.

import type { Body, Vec3 } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear, expectPointNear } from '../../../../tests/tools/within.ts';
import { rectangleCorners } from '../drawing/sheet.ts';
import type { ViewName } from '../drawing/view.ts';
import { VIEWS } from '../drawing/view.ts';
import type { Camera } from './camera.ts';
import { between, dragPoint, rayThrough, toCanvas } from './camera.ts';
import type { FitRequest } from './fit.ts';
import { fitCamera } from './fit.ts';
import { dropMm, isOver, onTheWay, wayTo } from './motion.ts';
import { roomOf } from './room.ts';

const NAMES: readonly ViewName[] = ['corner', 'front', 'side', 'above'];

const camera = (name: ViewName): Camera => ({
  view: VIEWS[name],
  pxPerMm: 1.5,
  centre: [30, 70],
  widthPx: 800,
  heightPx: 500,
});

/** A box of points: x to x + w, and so on. */
const box = ([x, y, z]: Vec3, [w, d, h]: Vec3): Body => [
  {
    kind: 'points',
    points: [0, w].flatMap((dx) => [0, d].flatMap((dy) => [0, h].map((dz): Vec3 => [x + dx, y + dy, z + dz]))),
  },
];

describe('places', () => {
  it('lie where a plan and an elevation have them', () => {
    // 1.5 px a mm about the middle (400, 250), where the view plane has (30, 70).
    expectPointNear(toCanvas(camera('front'), [40, 999, 90]), [415, 220], 1e-9);
    expectPointNear(toCanvas(camera('side'), [999, 40, 90]), [415, 220], 1e-9);
    expectPointNear(toCanvas(camera('above'), [40, 90, 999]), [415, 220], 1e-9);
  });

  it.each(NAMES)('%s: the line of sight through a place goes through the point that is seen there', (name) => {
    const point: Vec3 = [35, -22, 61];
    const { origin, direction } = rayThrough(camera(name), toCanvas(camera(name), point));
    const along = direction.reduce((sum, value, k) => sum + value * (point[k]! - origin[k]!), 0);
    expectPointNear(
      origin.map((value, k) => value + direction[k]! * along),
      point,
      1e-8,
    );
    expect(along).toBeGreaterThan(0);
  });

  it.each([
    ['corner', 2],
    ['above', 2],
    ['front', 1],
    ['side', 0],
  ] as const)('%s: dragging keeps the point under the pointer and its coordinate %i', (name, kept) => {
    const through: Vec3 = [10, 20, 50];
    const dragged = dragPoint(camera(name), [500, 200], through);
    expectPointNear(toCanvas(camera(name), dragged), [500, 200], 1e-6);
    expectNear(dragged[kept], through[kept], { absolute: 1e-9 });
  });
});

describe('the way from one view to another', () => {
  const [from, to] = [camera('corner'), camera('above')];

  it('begins and ends where it should, and is over after 160 ms', () => {
    const way = wayTo(to, { camera: from, to: null }, 1000);
    expect(onTheWay(way, 990).camera).toEqual(between(from, to, 0));
    expect(onTheWay(way, 1080).camera).toEqual(between(from, to, 0.5));
    expect(onTheWay(way, 1160)).toEqual({ camera: to, to: null });
  });

  it('is no way at all from nowhere, or to where it stands or goes', () => {
    expect(wayTo(to, null, 1000)).toEqual({ camera: to, to: null });
    const still = { camera: to, to: null };
    expect(wayTo({ ...to }, still, 1000)).toBe(still);
    const way = wayTo(to, { camera: from, to: null }, 1000);
    expect(wayTo({ ...to }, way, 1050)).toBe(way);
  });

  it('a drop takes 180 ms, and is quickest at its end', () => {
    const drop = { piece: 3, sinceMs: 500 };
    expect([dropMm(drop, 500), dropMm(drop, 590), dropMm(drop, 680)]).toEqual([60, 45, 0]);
    expect([isOver(drop, 679), isOver(drop, 680)]).toEqual([false, true]);
  });
});

describe('the fit', () => {
  const request = (name: ViewName, bodies: readonly Body[], more: Partial<FitRequest> = {}): FitRequest => ({
    view: VIEWS[name],
    room: roomOf(bodies),
    inset: { top: 36, right: 120, bottom: 12, left: 12 },
    unit: 'cm',
    heightLabelPx: 80,
    widthPx: 822,
    heightPx: 504,
    ...more,
  });

  it.each(
    NAMES.flatMap(
      (name) =>
        [
          [name, 40],
          [name, 400],
          [name, 900],
        ] as const,
    ),
  )('%s, %i mm high: all of the build lies inside, clear of what lies over the sides', (name, high) => {
    const fort = [box([-140, -60, 0], [80, 50, high]), box([70, 20, 0], [90, 30, 30])];
    const asked = request(name, fort);
    const shown = fitCamera(asked);
    for (const [x, y] of rectangleCorners(asked.room.ground)) {
      for (const z of [0, high]) {
        const [px, py] = toCanvas(shown, [x, y, z]);
        expect(px).toBeGreaterThanOrEqual(12 - 1e-6);
        expect(px).toBeLessThanOrEqual(822 - 120 + 1e-6);
        expect(py).toBeGreaterThanOrEqual(36 - 1e-6);
        expect(py).toBeLessThanOrEqual(504 - 12 + 1e-6);
      }
    }
  });

  it('does not follow every small move', () => {
    const at = (x: number): Camera => fitCamera(request('corner', [box([x, 0, 0], [50, 50, 50])]));
    expect(at(-20)).toEqual(at(-5));
    expect(at(-20)).not.toEqual(at(90));
  });

  it('of an empty table shows its middle', () => {
    expect(roomOf([])).toEqual({ ground: { minX: -50, minY: -50, maxX: 50, maxY: 50 }, heightMm: 200 });
    const [x, y] = toCanvas(fitCamera(request('above', [])), [0, 0, 0]);
    expectPointNear([x, y], [12 + (822 - 132) / 2, 36 + (504 - 48) / 2], 1e-6);
  });

  it('stays finite on a canvas without room', () => {
    const { pxPerMm, centre } = fitCamera(request('corner', [], { widthPx: 60, heightPx: 20 }));
    expect([pxPerMm, ...centre].every(Number.isFinite)).toBe(true);
    expect(pxPerMm).toBeGreaterThan(0);
  });
});
