// A paper ball of gores. Closed forms, and the figures of an earlier trial: twelve gores of a ball of 60 mm need 230 cm of
// cutting, and stand out at the seams by 3.5 percent.

import { describe, expect, test } from 'vitest';
import { expectNear } from '../../../tests/tools/within.ts';
import { makeGores } from './gores.ts';
import { flattenPath, pathAreaMm2 } from './path/measure.ts';

describe('gores', () => {
  test('twelve for a ball of 60 mm: 230 cm to cut, 3.5 percent out at the seams', () => {
    const { gore, count, seamRadiusMm } = makeGores(30, 12);
    const points = flattenPath(gore, 1e-4);
    const wayMm = points.reduce((sum, [x, y], k) => {
      const [nextX, nextY] = points[(k + 1) % points.length]!;
      return sum + Math.hypot(nextX - x, nextY - y);
    }, 0);
    expectNear((count * wayMm) / 10, 230, { absolute: 0.5 }, 'cm');
    expectNear(seamRadiusMm / 30 - 1, 0.035, { absolute: 5e-4 });
  });

  test('from pole to pole half the way round; the outline follows the cosine', () => {
    const { gore, lengthMm, widthMm, paperMm2 } = makeGores(30, 7);
    expectNear(lengthMm, 94.24777960769379, { relative: 1e-15 });
    expectNear(pathAreaMm2(gore) * 7, paperMm2, { relative: 1e-5 });
    for (const [x, y] of flattenPath(gore, 1e-3)) {
      expectNear(Math.abs(x), (widthMm / 2) * Math.cos(y / 30), { absolute: 1.3e-5 * widthMm });
    }
  });

  test('the more gores, the nearer to the ball, from above', () => {
    const papers = [6, 12, 24, 48].map((count) => makeGores(30, count).paperMm2 / (4 * Math.PI * 30 ** 2));
    expect(papers).toEqual([...papers].sort((a, b) => b - a));
    expect(papers.at(-1)).toBeGreaterThan(1);
    expect(papers.at(-1)).toBeLessThan(1.002);
  });

  test.each([
    [30, 3],
    [30, 4.5],
    [0, 12],
    [Number.NaN, 12],
  ])('%s mm and %s gores are refused', (radiusMm, count) => {
    expect(() => makeGores(radiusMm, count)).toThrow(RangeError);
  });
});
