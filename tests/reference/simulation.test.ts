// Our verdicts on random stacks against an independent simulation of stiff bodies. What we call too close to call, and
// what rolls at a touch, may go either way.

import { expect, it } from 'vitest';
import { freshSeed, share } from '../tools/share.ts';
import type { Compared, Judged } from './simulation/comparison.ts';
import { bears3Degrees, buildOf, comparedStacks, isSaidToFall, judgedStacks } from './simulation/comparison.ts';
import { STACKS } from './simulation/random-stacks.ts';
import { simulate } from './simulation/world.ts';

const COUNT = share(STACKS.count, 20);

it(`what bears 3 degrees keeps its pose and what falls leaves it: ${COUNT} stacks (seed ${STACKS.seed})`, () => {
  const stacks = comparedStacks(STACKS.seed, COUNT);
  expect(stacks.length).toBe(COUNT);
  expect(disagreeing(stacks)).toEqual([]);
  // The family is worth nothing if all of it stands or all of it falls, or if it holds towers alone.
  const standing = stacks.filter(bears3Degrees);
  expect(standing.length / COUNT).toBeGreaterThan(0.15);
  expect(stacks.filter(isSaidToFall).length / COUNT).toBeGreaterThan(0.15);
  expect(standing.filter(({ said }) => said.joints === null).length / COUNT).toBeGreaterThan(0.05);
});

it('the same on fresh stacks', () => {
  const seed = freshSeed('simulated stacks');
  expect(disagreeing(comparedStacks(seed, share(100, 6))), `seed ${seed}`).toEqual([]);
});

const TILTED = share(200, 10);

const DEGREE = Math.PI / 180;
/** Within a degree of its margin a stack sags by as much as counts as leaving its pose. */
const SHORT_RAD = 2 * DEGREE;
const PAST_RAD = 1 * DEGREE;

it(`tilted to 2 degrees short of its margin a stack keeps its pose, to 1 past it leaves it: those of ${TILTED} stacks that bear 3 degrees (seed ${STACKS.seed})`, () => {
  const stacks = judgedStacks(STACKS.seed, TILTED).filter(bears3Degrees);
  expect(stacks.length / TILTED).toBeGreaterThan(0.15);
  for (const stack of stacks) {
    expect(leavesTilted(stack, -SHORT_RAD), `stack ${stack.number}, short of its margin`).toBe(false);
    expect(leavesTilted(stack, PAST_RAD), `stack ${stack.number}, past its margin`).toBe(true);
  }
});

/** Every stack on which the two contradict each other, with all that is needed to see who is right. */
function disagreeing(stacks: readonly Compared[]): readonly unknown[] {
  return stacks
    .filter((stack) => (stack.simulated.leftItsPose ? bears3Degrees(stack) : isSaidToFall(stack)))
    .map(({ number, class: said, simulated, pieces }) => ({ number, said, ...simulated, pieces }));
}

/** With the table tilted in the direction in which it bears least, to its margin and so much more. */
function leavesTilted({ pieces, said }: Judged, moreRad: number): boolean {
  const { tiltRad, direction } = said.standsTo!;
  const push = Math.tan(tiltRad + moreRad);
  return simulate(buildOf(pieces), [push * direction[0], push * direction[1]]).leftItsPose;
}
