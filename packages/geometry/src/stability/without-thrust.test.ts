// The short cut for builds in which nothing wedges: it gives the exact margin where loads are shared evenly,
// never promises too much elsewhere, and says nothing of slanted contacts. Lengths in brick lengths.

import { expect, it } from 'vitest';
import { brick, wall } from '../../../../tests/reference/brick-problems.ts';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { LIMITS } from '../../../../tests/reference/judged-builds.ts';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { length2 } from '../kernel/vec.ts';
import { bearsAllRound } from './all-round.ts';
import { evenShares } from './even-shares.ts';
import { ColumnWriter } from './sparse-columns.ts';
import type { StaticProblem } from './types.ts';
import { leastWithoutThrust } from './without-thrust.ts';

const SEED = 7753;

/** Running bond of courses of three and of two with halves, 0.25 high and 0.6 deep. */
const bond = (courses: number): StaticProblem =>
  wall(
    Array.from({ length: courses }, (_, course) => {
      const bottom = 0.25 * course;
      if (course % 2 === 0) return [0, 1, 2].map((left) => brick(left, bottom, { depth: 0.6 }));
      const halves = [0, 2.5].map((left) => brick(left, bottom, { width: 0.5, depth: 0.6 }));
      return [...halves, ...[0.5, 1.5].map((left) => brick(left, bottom, { depth: 0.6 }))];
    }).flat(),
    0.5,
  );

const without = (problem: StaticProblem): number => leastWithoutThrust(problem, HIGHS, LIMITS, [])?.push ?? Number.NaN;

it('a wall of five courses bears 0.3 / 0.625: over its long side, half of its depth at half of its height', () => {
  expectNear(without(bond(5)), 0.3 / 0.625, { absolute: 1e-9 });
});

it('a block off the middle of a slab bears what the slab under it bears', () => {
  // Slab of 3 x 1 x 0.2 and mass 0.6; block of 0.5 cubed, mass 0.125, its middle at 1.95. Centre at 1.5776 and 0.1603 high.
  const problem = wall(
    [brick(0, 0, { width: 3, height: 0.2 }), brick(1.7, 0.2, { width: 0.5, height: 0.5, depth: 0.5 })],
    1,
  );
  const high = (0.6 * 0.1 + 0.125 * 0.45) / 0.725;
  const aside = (0.6 * 1.5 + 0.125 * 1.95) / 0.725;
  expectNear(without(problem), Math.min(0.5 / high, (3 - aside) / high, 0.25 / 0.25), { absolute: 1e-9 });
});

it('it says nothing of slanted contacts', () => {
  const problem = bond(2);
  const patches = problem.patches.map((patch, k) => (k === 4 ? { ...patch, normal: [0.6, 0, 0.8] as const } : patch));
  expect(leastWithoutThrust({ ...problem, patches }, HIGHS, LIMITS, [])).toBe(null);
});

it(`what it says to be borne is borne, on seeded forts (seed ${SEED})`, () => {
  const random = seeded(SEED);
  let some = 0;
  for (let k = 0; k < share(400, 40); k += 1) {
    const bricks = Array.from({ length: 3 }, (_, course) =>
      Array.from({ length: course === 1 ? 2 : 3 - course }, (_, i) =>
        brick(1.05 * i + 0.5 * course + 0.3 * (random() - 0.5), 0.25 * course, { depth: 0.4 + 0.2 * random() }),
      ),
    ).flat();
    const borne: Vec2[] = [];
    const least = leastWithoutThrust(wall(bricks, 9), HIGHS, LIMITS, borne)?.push ?? 0;
    if (least > 0) some += 1;
    // With friction as large as the push and no larger.
    const bears = (push: number, directions: number, first: Vec2): boolean | null =>
      bearsAllRound(wall(bricks, push), push * (1 - 1e-6), directions, first, LIMITS);
    expect(bears(least, 8, [3, 5]), `fort ${k}`).toBe(true);
    for (const at of borne) expect(bears(length2(at), 1, at), `fort ${k}`).toBe(true);
  }
  expect(some).toBeGreaterThan(share(400, 40) / 20);
});

it('even shares: 3 x + 5 y + 7 z = 83 has (3, 5, 7) for its shortest answer, said once or twice', () => {
  const columns = new ColumnWriter(2);
  for (const factor of [3, 5, 7]) {
    columns.put(0, factor);
    columns.put(1, 2 * factor);
    columns.close();
  }
  const matrix = columns.finish();
  for (const right of [[83], [83, 166]])
    evenShares(matrix, Float64Array.from(right)).forEach((value, k) => {
      expectNear(value, [3, 5, 7][k]!, { absolute: 1e-12 });
    });
});
