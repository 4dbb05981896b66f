// What is asked beside the verdict follows the same rules as the verdict. mm, grams.

import { describe, expect, it } from 'vitest';
import { FULL, judged, judgedWithout, question, SHELL } from '../../../../tests/reference/judged-builds.ts';
import { box, cube, cylinder, put } from '../../../../tests/reference/stacked-builds.ts';
import { tiltTowards } from './on-request.ts';

const SPECS = {
  dome: { solid: 'hemisphere', sizes: { radius: 30 } },
  pin: box(7, 5, 40),
  block: cube(50),
  log: cylinder(15, 60),
} as const;

describe('without a piece', () => {
  it('a hemisphere on its dome rights itself again once its load is gone', () => {
    const asked = question([put('dome', 0, 0, { resting: 'dome' }), put('pin', 0, 0)], SPECS, FULL, 0.5);
    expect(judged(asked).verdict).toBe('rolls-at-a-touch');
    expect(judgedWithout(asked, 1)).toMatchObject({ verdict: 'steady', stands: true });
  });
  it('folded paper on which nothing rolls any more is predicted', () => {
    const asked = question([put('dome', 0, 0, { resting: 'flat' }), put('block', 0, 0)], SPECS, SHELL, 0.5);
    expect(judged(asked).verdict).toBe('not-predicted');
    expect(judgedWithout(asked, 1).verdict).toBe('steady');
  });
  it('what people saw of a piece goes with it, and stays with the others', () => {
    const pieces = [put('block', 0, 0), put('block', 3, 0, { held: 'taped' }), put('block', 5, 0)];
    const asked = question(pieces, SPECS, FULL, 0.5);
    expect(judgedWithout(asked, 2).verdict).toBe('not-predicted');
    expect(judgedWithout(asked, 1).verdict).toBe('falls');
  });
  it('a weighed piece keeps its own mass when one before it is taken out', () => {
    const slab = { ...SPECS, slab: box(150, 40, 10) };
    const pieces = [
      put('pin', 0, 90),
      put('block', 0, 0),
      put('slab', 45, 0),
      // Slab of 30 g and cube of 10 g: their centre at 33.75, past the edge at 25. A cube of its usual 62.5 g would hold.
      put('block', 0, 0, { weighed: { massG: 10 } }),
    ];
    expect(judgedWithout(question(pieces, slab, FULL, 0.5), 0)).toMatchObject({ verdict: 'falls' });
  });
});

describe('tilted to one side', () => {
  it.each([
    ['taped', FULL, [put('block', 0, 0), put('block', 7, 0, { held: 'taped' })]],
    ['rolling paper', SHELL, [put('log', 0, 0, { resting: 'side' })]],
  ] as const)('says nothing of what is not predicted: %s', (_, material, pieces) => {
    const asked = question(pieces, SPECS, material, 0.5);
    expect(judged(asked).verdict).toBe('not-predicted');
    expect(tiltTowards(asked, [1, 0])).toEqual({ ok: true, value: null });
  });
});
