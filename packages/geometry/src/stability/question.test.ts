// A weighed piece whose centre of mass was typed on its very skin: all figures stay numbers that a file can hold. mm, grams.

import { describe, expect, it } from 'vitest';
import { FULL, judged, question } from '../../../../tests/reference/judged-builds.ts';
import { cube, put } from '../../../../tests/reference/stacked-builds.ts';
import type { Stability } from './stability.ts';

const SPECS = { block: cube(50), dome: { solid: 'hemisphere', sizes: { radius: 30 } } } as const;

const weighed = (kind: keyof typeof SPECS, resting: string, centreMm: number): Stability =>
  judged(question([put(kind, 0, 0, { resting, weighed: { massG: 70, centreMm } })], SPECS, FULL, 0.5));

describe('a centre of mass on the skin of a piece', () => {
  it.each([
    ['block', 'base', 0],
    ['dome', 'flat', 0],
    ['dome', 'dome', 30],
  ] as const)('%s on its %s with the centre at the contact slides before it tips', (kind, resting, centreMm) => {
    const answer = weighed(kind, resting, centreMm);
    expect(Number.isFinite(answer.tipsAt?.push)).toBe(true);
    expect(answer.tipsAt!.tiltRad).toBeLessThan(Math.PI / 2);
    expect(answer.standsTo).toEqual(answer.slidesAt);
    expect(answer.verdict).toBe('steady');
  });
});
