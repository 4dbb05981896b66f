// A hemisphere on its dome rolls a long way before it has leant over: over what it lies on, and on what carries that.
// Held against its balance looked up roll by roll. mm, grams.

import { describe, expect, it } from 'vitest';
import { FULL, judged, question } from '../../../../tests/reference/judged-builds.ts';
import { box, cone, cube, put, sphere } from '../../../../tests/reference/stacked-builds.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { LaidPiece } from '../stack/types.ts';
import type { Stability } from './stability.ts';

const RADIUS = 30;
const SPECS = {
  dome: { solid: 'hemisphere', sizes: { radius: RADIUS } },
  block: cube(50),
  cone: cone(20, 40),
  ball: sphere(25),
  bar: { solid: 'triangular-prism', sizes: { a: 50, b: 50, c: 50, height: 60 } },
  pillar: box(70, 70, 300),
} as const;
const GRIPPY = 50;
const dome = (xMm: number, more: Partial<LaidPiece> = {}): LaidPiece =>
  put('dome', xMm, 0, { resting: 'dome', ...more });
const of = (...pieces: readonly LaidPiece[]): Stability => judged(question(pieces, SPECS, FULL, GRIPPY));

/** Centre of mass of a full hemisphere below the centre of its ball: 3/8 of the radius. */
const BELOW = (3 / 8) * RADIUS;
const ROLLS = Array.from({ length: 20_001 }, (_, k) => (k / 20_000) * (Math.PI / 2));

/** The push that holds the dome in balance when it has rolled by that angle: the line of its weight meets the contact. */
const balancing = (rollRad: number): number => (BELOW * Math.sin(rollRad)) / (RADIUS - BELOW * Math.cos(rollRad));

describe('a hemisphere on its dome', () => {
  it.each([0.5, 3, 11, 24])('with %s to the edge tips when it has rolled there', (roomMm) => {
    const within = ROLLS.filter((rollRad) => RADIUS * rollRad <= roomMm);
    const expected = Math.max(...within.map(balancing));
    // The table of rolls is 0.00008 rad wide, and a push grows by 0.6 for each.
    expectNear(of(put('block', 0, 0), dome(25 - roomMm)).tipsAt!.push, expected, { absolute: 6e-5 });
  });
  it.each(['cone', 'ball'] as const)('on a %s is on the point of rolling off', (under) => {
    const answer = of(put(under, 0, 0, under === 'ball' ? { resting: 'round' } : {}), dome(0));
    expect(answer).toMatchObject({ verdict: 'rolls-at-a-touch', standsTo: { push: 0 } });
    expect(answer.rolling).toContain(1);
  });
  it('along the ridge of a bar is on the point of rolling off', () => {
    expect(of(put('bar', 0, 0, { resting: 'side-a' }), dome(0)).verdict).toBe('rolls-at-a-touch');
  });
  it('carries its weight to the edge of a pillar as it rolls: the pillar bears no more than that', () => {
    const heavy = 3000;
    const answer = of(put('pillar', 0, 0, { weighed: { massG: 1000 } }), dome(0, { weighed: { massG: heavy } }));
    const [half, high] = [35, 300];
    // Moments about the foot of the pillar, for each roll under the push that balances it.
    const bears = (rollRad: number): boolean => {
      const push = balancing(rollRad);
      return 1000 * (half - (high / 2) * push) + heavy * (half - RADIUS * rollRad - high * push) >= 0;
    };
    const truly = Math.max(...ROLLS.filter(bears).map(balancing));
    expect(answer.tipsAt!.push).toBeLessThanOrEqual(truly + 1e-4);
    expect(answer.tipsAt!.push).toBeGreaterThan(0.9 * truly);
  });
});
