import { describe, expect, it } from 'vitest';
import { decimalsOf, earnedFor, paperOf } from './earned.ts';

// Points for 100 cm2 of the demo kit: cube 5 / 150 cm2, cuboid 3 / 158 cm2. By hand: 3.33 and 1.899.
describe('every value of a column has the same number of decimals', () => {
  it.each([
    ['quotients: 1.9 is shown as 1.90 beside 3.33', [500 / 150, 300 / 158], 2],
    ['half points: 4 is shown as 4.0 beside 4.5', [4, 4.5], 1],
    ['whole points, and what is not known', [26, 5, null], 0],
    ['what only looks broken: rounded, it is whole', [3.0000001, 7], 0],
    ['points below 0', [-1.25, 3], 2],
  ])('%s', (_, values, decimals) => {
    expect(decimalsOf(values)).toBe(decimals);
  });
});

// 10 in2 are 10 x 25.4 x 25.4 mm2 = 6451.6 mm2 (international yard and pound agreement, 1959).
it('a class that reads inches is told of 10 in² of paper', () => {
  const reads = (name: string) =>
    ({ unit: () => ({ name, size: 1 }) }) as unknown as Parameters<typeof paperOf>[0]['inClass'];
  const earned = { favourites: ['cube'], lead: 1, gap: 1, share: null };
  const earnings = {
    perPiece: { ...earned, values: [5, 3] },
    per100Cm2: { ...earned, values: [500 / 150, null] },
    per10Minutes: null,
  };
  expect(paperOf({ inClass: reads('in²') }).areaMm2).toBe(6451.6);
  const [cube, unknown] = earnedFor('paper', { earnings, inClass: reads('in²') })?.values ?? [];
  // 5 points for 150 cm2 are 5 x 64.516 / 150 for 64.516 cm2. Doubles keep 15 digits.
  expect(Math.abs((cube ?? 0) - 2.150533333333333)).toBeLessThan(1e-12);
  expect(unknown).toBeNull();
  expect(earnedFor('paper', { earnings, inClass: reads('cm²') })?.values).toEqual([500 / 150, null]);
  expect(earnedFor('piece', { earnings, inClass: reads('in²') })?.values).toEqual([5, 3]);
});
