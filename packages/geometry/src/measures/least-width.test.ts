// The least width of hulls against the widths in many directions, from what each figure reaches by itself. mm.

import { expect, it } from 'vitest';
import { diceOf, times } from '../../../../tests/reference/dice.ts';
import { disc, ngon } from '../../../../tests/reference/outline-shapes.ts';
import { share } from '../../../../tests/tools/share.ts';
import type { Outline } from '../kernel/outline.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { hullOf } from '../outline/index.ts';
import { leastWidthMm } from './least-width.ts';

const DIRECTIONS = 20_000;

/** The narrowest of many directions; a little wider than the true one. */
function narrowest(outlines: readonly Outline[]): number {
  const rims = outlines.flatMap((one): (readonly [Vec2, number])[] =>
    one.kind === 'disc' ? [[one.centre, one.radiusMm]] : one.points.map((point) => [point, 0]),
  );
  const reach = (c: number, s: number): number => Math.max(...rims.map(([[x, y], r]) => x * c + y * s + r));
  const widths = Array.from({ length: DIRECTIONS }, (_, k) => {
    const [c, s] = [Math.cos((k * Math.PI) / DIRECTIONS), Math.sin((k * Math.PI) / DIRECTIONS)];
    return reach(c, s) + reach(-c, -s);
  });
  return Math.min(...widths);
}

const SEED = 20260411;
it(`discs and polygons by lot, against ${DIRECTIONS} directions (seed ${SEED})`, () => {
  for (let k = 0; k < share(400, 40); k += 1) {
    const { between, whole, oneOf } = diceOf(SEED + k);
    const outlines = times(whole(1, 6), () =>
      oneOf([disc, (x: number, y: number, r: number) => ngon(x, y, r, whole(3, 7), between(0, 7))])(
        between(0, 90),
        between(0, 90),
        between(1, 30),
      ),
    );
    const [width, around] = [leastWidthMm(hullOf(outlines)), narrowest(outlines)];
    // At half a step off its line a figure at most 200 mm across is wider by 200 x pi / 40 000.
    expect(around - width, `case ${k}: wider`).toBeLessThanOrEqual((200 * Math.PI) / (2 * DIRECTIONS));
    expect(around - width, `case ${k}: narrower`).toBeGreaterThanOrEqual(-1e-9);
  }
});

it('of a point, a line and nothing is 0', () => {
  const polygon = (...points: Vec2[]): Outline => ({ kind: 'polygon', points });
  expect(leastWidthMm(hullOf([]))).toBe(0);
  expect(leastWidthMm(hullOf([polygon([3, 5])]))).toBe(0);
  expect(leastWidthMm(hullOf([polygon([3, 5], [10, 22.3])]))).toBe(0);
});
