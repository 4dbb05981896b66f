// One answer by every way: the recursion of towers against linear programmes, and least squares against linear
// programmes, on seeded builds of bricks. Lengths in brick lengths.

import { expect, it } from 'vitest';
import { brick, wall } from '../../../../tests/reference/brick-problems.ts';
import { HIGHS } from '../../../../tests/reference/highs.ts';
import { LIMITS } from '../../../../tests/reference/judged-builds.ts';
import { seeded } from '../../../../tests/reference/seeded.ts';
import { share } from '../../../../tests/tools/share.ts';
import { expectNear } from '../../../../tests/tools/within.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { frictionCone } from './cone.ts';
import { contactColumns, weights, withPushes } from './equilibrium.ts';
import { firstMotion } from './first-motion.ts';
import { judge, judgeByProgrammes } from './judge.ts';
import { leastPush } from './margin.ts';
import { simplex } from './simplex.ts';
import type { StaticProblem } from './types.ts';

const SEED = 40961;
const PLAN: readonly Vec2[] = [
  [1, 0],
  [0, 1],
];

/** Two to nine bricks on each other, some of them set back, deep or light; friction from slippery to rough. */
function tower(random: () => number): StaticProblem {
  const count = 2 + Math.floor(8 * random());
  let [left, bottom] = [0, 0];
  const bricks = Array.from({ length: count }, () => {
    const height = 0.2 + random();
    const one = brick(left, bottom, {
      width: 0.7 + 0.6 * random(),
      height,
      depth: 0.5 + random(),
      massG: 0.1 + 5 * random(),
    });
    left += 0.5 * (random() - 0.5);
    bottom += height;
    return one;
  });
  return wall(bricks, 0.05 + random());
}

/** Three to twelve bricks in courses of bridges: some stand, some do not. */
function fort(random: () => number): StaticProblem {
  const courses = 2 + Math.floor(3 * random());
  const bricks = Array.from({ length: courses }, (_, course) => {
    const columns = course % 2 === 0 ? 3 : 2;
    return Array.from({ length: columns }, (_, k) =>
      brick(1.05 * k + (course % 2) * 0.52 + 0.5 * (random() - 0.5), course * 0.25, { depth: 0.4 + 0.2 * random() }),
    );
  }).flat();
  return wall(bricks, 0.2 + 0.6 * random());
}

it(`recursion and programmes: same verdict and same margins on seeded towers (seed ${SEED})`, () => {
  const random = seeded(SEED);
  const seen = { stand: 0, fall: 0, slide: 0 };
  for (let k = 0; k < share(2000, 100); k += 1) {
    const problem = tower(random);
    const [byJoints, byProgrammes] = [judge(problem, null, LIMITS), judgeByProgrammes(problem, HIGHS, LIMITS)];
    expect(byJoints.method).toBe('recursion');
    expect(byProgrammes.stands, `tower ${k}`).toBe(byJoints.stands);
    if (byJoints.stands !== true) seen.fall += 1;
    else {
      seen.stand += 1;
      if (byJoints.slides!.push < byJoints.tips!.push) seen.slide += 1;
      for (const figure of ['tips', 'slides', 'standsTo'] as const) {
        // Where the pushes borne are capped by friction alone, HiGHS and the recursion agree to rounding.
        expectNear(byProgrammes[figure]!.push, byJoints[figure]!.push, { absolute: 1e-8 }, `tower ${k}, ${figure}`);
      }
    }
  }
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(share(2000, 100) / 20);
});

it(`least squares and programmes: same verdict on seeded walls and forts (seed ${SEED})`, () => {
  const random = seeded(SEED + 1);
  const seen = { stand: 0, fall: 0 };
  for (let k = 0; k < share(1000, 60); k += 1) {
    const problem = fort(random);
    const motion = firstMotion(problem, frictionCone(0), [0, 0], LIMITS.pivots)!;
    const model = {
      matrix: withPushes(contactColumns(problem, frictionCone(0)), PLAN),
      right: weights(problem, [0, 0]),
      free: 2,
    };
    const least = leastPush(model, HIGHS, LIMITS, 0.01, []);
    // Within 1e-5 of falling, either may be right.
    if (least.kind === 'margin' && least.margin.push < 1e-5) continue;
    if (motion.worst > 1e-8 && motion.worst < 1e-5) continue;
    const stands = motion.worst <= 1e-8;
    expect(least.kind === 'margin', `fort ${k}: ${motion.worst}`).toBe(stands);
    seen[stands ? 'stand' : 'fall'] += 1;
  }
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(share(1000, 60) / 20);
});

it(`the small solver and HiGHS: same margins on seeded forts (seed ${SEED})`, () => {
  const random = seeded(SEED + 2);
  let compared = 0;
  for (let k = 0; k < share(200, 25); k += 1) {
    const problem = fort(random);
    if (problem.bodies.length > 8) continue;
    const [small, large] = [judgeByProgrammes(problem, simplex, LIMITS), judgeByProgrammes(problem, HIGHS, LIMITS)];
    expect(small.stands).toBe(large.stands);
    if (small.stands !== true) continue;
    compared += 1;
    expectNear(small.tips!.push, large.tips!.push, { absolute: 1e-6 }, `fort ${k}, tips`);
    // Where the build wedges, the worst direction on round cones is found to 0.1 degrees by either.
    expectNear(small.standsTo!.push, large.standsTo!.push, { absolute: 2e-3 }, `fort ${k}, standsTo`);
  }
  expect(compared).toBeGreaterThan(3);
});

it(`friction is that of the round cone within 0.1 degrees on seeded forts (seed ${SEED})`, () => {
  const random = seeded(SEED + 3);
  const seen = { friction: 0, tipping: 0 };
  for (let k = 0; k < share(60, 15); k += 1) {
    const problem = fort(random);
    const { tips, standsTo, stands } = judgeByProgrammes(problem, HIGHS, LIMITS);
    if (stands !== true) continue;
    // Cones of 96 edges hold 0.9995 of the round one: 0.015 degrees short at the most where friction bears the push.
    const cone = { edges: 96, turnRad: 0 };
    const model = { matrix: withPushes(contactColumns(problem, cone), PLAN), right: weights(problem, [0, 0]), free: 2 };
    const fine = leastPush(model, HIGHS, { ...LIMITS, solves: 400 }, 5e-4, []);
    const push = fine.kind === 'margin' ? fine.margin.push : 0;
    expectNear(Math.atan(standsTo!.push), Math.atan(push), { absolute: (0.1 * Math.PI) / 180 }, `fort ${k}`);
    seen[standsTo!.push < tips!.push ? 'friction' : 'tipping'] += 1;
  }
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(0);
});
