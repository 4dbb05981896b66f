// What of a footprint is hatched: only what hangs out past the ground, wherever it lies.

import type { DrawnPart, Outline, Vec2 } from '@cairnmark/geometry';
import { describe, expect, it } from 'vitest';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Segment } from './hatch.ts';
import { hatchPast, rimPast } from './hatch.ts';

const box = (x: number, y: number, w: number, d: number): readonly Vec2[] => [
  [x, y],
  [x + w, y],
  [x + w, y + d],
  [x, y + d],
];
const part = (outer: readonly Vec2[], ...holes: (readonly Vec2[])[]): DrawnPart => ({ outer, holes });
const ground = (points: readonly Vec2[]): Outline => ({ kind: 'polygon', points });

const total = (segments: readonly Segment[]): number =>
  segments.reduce((sum, [[x, y], [u, v]]) => sum + Math.hypot(u - x, v - y), 0);

describe('hatching', () => {
  it('covers as much as its area over the distance of its lines', () => {
    const lines = hatchPast([part(box(0, 0, 300, 200))], [], 1);
    expectNear(total(lines), 60_000, { relative: 0.01 });
    for (const [[x, y], [u, v]] of lines) expectNear(u - x, v - y, { absolute: 1e-9 });
  });

  it('leaves out holes, and the ground', () => {
    const ring = part(box(0, 0, 300, 200), [...box(50, 50, 100, 100)].reverse());
    expectNear(total(hatchPast([ring], [], 1)), 50_000, { relative: 0.02 });
    expectNear(total(hatchPast([ring], [ground(box(150, 0, 150, 200))], 1)), 20_000, { relative: 0.03 });
    expect(hatchPast([part(box(10, 10, 30, 30))], [ground(box(10, 10, 30, 30))], 2)).toEqual([]);
  });

  it('of a disc on a disc is a ring', () => {
    const rim = Array.from({ length: 256 }, (_, k): Vec2 => {
      const angle = (2 * Math.PI * k) / 256;
      return [50 * Math.cos(angle), 50 * Math.sin(angle)];
    });
    const lines = hatchPast([part(rim)], [{ kind: 'disc', centre: [0, 0], radiusMm: 30 }], 0.5);
    expectNear(total(lines) / 2, Math.PI * (50 ** 2 - 30 ** 2), { relative: 0.02 });
  });

  it('of nothing is nothing', () => {
    expect(hatchPast([], [ground(box(0, 0, 9, 9))], 5)).toEqual([]);
    expect(rimPast([], [])).toEqual([]);
  });

  it('has a rim where it does not run along the base', () => {
    const rim = rimPast([part(box(0, 0, 100, 40))], [ground(box(0, 0, 60, 40))]);
    expectNear(total(rim), 40 + 40 + 40, { absolute: 4 });
    expect(rim.every(([[x], [u]]) => x >= 59 && u >= 59)).toBe(true);
  });
});
