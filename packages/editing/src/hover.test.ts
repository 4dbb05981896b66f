// What a hand sees of the piece it holds, where it may not be put. By hand, mm.

import { describe, expect, it } from 'vitest';
import { benchOf } from '../../../tests/reference/edited-builds.ts';
import { box, put } from '../../../tests/reference/stacked-builds.ts';
import { dragOf } from './drag.ts';
import { hoverAt } from './hover.ts';
import type { Pieces } from './types.ts';

const bench = benchOf({ brick: box(40, 20, 10) }, 2);
const two: Pieces = [put('brick', 0, 0), { ...put('brick', 0, 0), turnRad: Math.PI / 2 }];

/** The cosine of a quarter turn is 6e-17 in doubles, and the brick is 40 mm long; the sum of both ends is rounded too. */
const TURNED_MM = 7e-15;

describe('a piece held over a place', () => {
  it('of which none is left is seen where it is held, though it settles nowhere', () => {
    const what = { kind: 'brick', resting: null };
    const drag = dragOf(two, what, bench);
    const refused = drag.at({ xMm: 70, yMm: 5, surfaceMm: 0, lineUp: 'free' });
    expect(refused.ok ? [] : refused.issues.map(({ code }) => code)).toEqual(['none-left']);
    expect(hoverAt(two, what, { xMm: 70, yMm: 5, surfaceMm: 20 }, bench)).toMatchObject({
      index: 2,
      bottomMm: 20,
      topMm: 30,
      shift: [70, 5, 20],
    });
  });

  it('keeps its turn and its face, and never sinks into the table', () => {
    const held = hoverAt(two, 1, { xMm: -30, yMm: 0, surfaceMm: -4 }, bench);
    expect(held).toMatchObject({ bottomMm: 0, topMm: 10 });
    const [xMm, yMm, zMm] = held?.shift ?? [];
    expect([xMm, zMm]).toEqual([-30, 0]);
    expect(Math.abs(yMm ?? Number.NaN)).toBeLessThanOrEqual(TURNED_MM);
    // A quarter turn: what was 40 mm to the right is 40 mm to the back.
    const { points } = held?.outline.kind === 'polygon' ? held.outline : { points: [] };
    expect(Math.abs(Math.max(...points.map(([, y]) => y)) - 20)).toBeLessThanOrEqual(TURNED_MM);
  });

  it('is none for a piece that is not there, a kind that is not known, a place no table has', () => {
    const here = { xMm: 0, yMm: 0, surfaceMm: 0 };
    expect(hoverAt(two, 7, here, bench)).toBeNull();
    expect(hoverAt(two, { kind: 'stone', resting: null }, here, bench)).toBeNull();
    expect(hoverAt(two, 0, { ...here, xMm: Number.NaN }, bench)).toBeNull();
  });
});
