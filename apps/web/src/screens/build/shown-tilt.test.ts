import { expect, it } from 'vitest';
import { shownTiltRad } from './shown-tilt.ts';

it.each([
  [21.8, 21],
  [45, 45],
  [10.04, 10],
  [9.96, 9.9],
  [8.1, 8.1],
  [0.04, 0],
])('a tilt of %d° is shown as the sentence says it: %d°', (degrees, shown) => {
  expect((shownTiltRad((degrees * Math.PI) / 180) * 180) / Math.PI).toBeCloseTo(shown, 9);
});
