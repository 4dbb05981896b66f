// Labels never cover each other, stay inside, and keep clear of what matters where there is room.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, LabelRequest } from './label-layout.ts';
import { layOutLabels, leaderFrom } from './label-layout.ts';

const FRAME: Box = { left: 10, top: 20, width: 600, height: 400 };
const label = (x: number, y: number): LabelRequest => ({ anchor: [x, y], width: 110, height: 34 });

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.left + b.width && b.left < a.left + a.width && a.top < b.top + b.height && b.top < a.top + a.height;

const inside = (a: Box, b: Box): boolean =>
  a.left >= b.left && a.top >= b.top && a.left + a.width <= b.left + b.width && a.top + a.height <= b.top + b.height;

describe('labels', () => {
  it('stand beside a tower, not on it', () => {
    const tower: Box = { left: 270, top: 60, width: 70, height: 330 };
    const boxes = layOutLabels([label(305, 150), label(300, 300), label(310, 320)], [tower], FRAME);
    for (const box of boxes) expect(box !== null && inside(box, FRAME) && !overlap(box, tower)).toBe(true);
  });

  const seed = 20260514;
  it(`never overlap and never leave the frame (seed ${seed})`, () => {
    const anchor = fc.tuple(fc.integer({ min: 0, max: 620 }), fc.integer({ min: 0, max: 430 }));
    fc.assert(
      fc.property(fc.array(anchor, { maxLength: 6 }), (anchors) => {
        const boxes = layOutLabels(
          anchors.map(([x, y]) => label(x, y)),
          [],
          FRAME,
        );
        boxes.forEach((box, k) => {
          if (box === null) return;
          expect(inside(box, FRAME)).toBe(true);
          for (const other of boxes.slice(0, k)) if (other !== null) expect(overlap(box, other)).toBe(false);
        });
      }),
      { seed, numRuns: 60 },
    );
  });

  it('have no place where none is left', () => {
    const narrow: Box = { left: 0, top: 0, width: 130, height: 60 };
    const [first, second] = layOutLabels([label(60, 30), label(60, 30)], [], narrow);
    expect(first).not.toBeNull();
    expect(second).toBeNull();
    expect(layOutLabels([label(5, 5)], [], { ...narrow, width: 100 })).toEqual([null]);
  });

  it('a spare one is left out where it would cover something, cross a line or stand far off', () => {
    const spare = { ...label(320, 200), isSpare: true };
    expect(layOutLabels([spare], [], FRAME)[0]).not.toBeNull();
    expect(layOutLabels([spare], [FRAME], FRAME)).toEqual([null]);
    // The same label is placed all the same when it is not spare.
    expect(layOutLabels([label(320, 200)], [FRAME], FRAME)[0]).not.toBeNull();
  });

  it('are tied to what they name from the side that faces it', () => {
    const box: Box = { left: 100, top: 100, width: 80, height: 30 };
    expect(leaderFrom(box, [300, 115])).toEqual([180, 115]);
    expect(leaderFrom(box, [20, 300])).toEqual([100, 124]);
    expect(leaderFrom(box, [140, 20])).toEqual([140, 100]);
  });
});
