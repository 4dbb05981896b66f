import type { Rotation, Vec3 } from '@cairnmark/geometry';
import { add3, after, facingDown, IDENTITY, rotate, turnAboutZ } from '@cairnmark/geometry';
import { expect, it } from 'vitest';
import { expectNear, expectPointNear } from '../../tools/within.ts';
import type { Pose } from './pose.ts';
import { motion, seenFrom, turnOf } from './pose.ts';

const ROUNDING = 1e-12;
const pose = (rotation: Rotation, place: Vec3): Pose => ({ place, turn: turnOf(rotation) });
/** Half turns and more about each axis: each of the four numbers is the largest of one. */
const TURNS: readonly Rotation[] = [
  IDENTITY,
  turnAboutZ(3),
  facingDown([0, 0, 1], [1, 0, 0]),
  facingDown([0, 0, 1], [-1, 0, 0]),
  after(turnAboutZ(0.7), facingDown([0, -1, 0], [1, 0, 0])),
];

it.each([0.3, 1.5, 3])('a turn of %d and a way of (3, 4, 12) are told as such', (angle) => {
  const { movedMm, turnedRad } = motion(pose(IDENTITY, [1, 2, 3]), pose(turnAboutZ(angle), [4, 6, 15]));
  expectNear(movedMm, 13, { absolute: ROUNDING });
  expectNear(turnedRad, angle, { absolute: ROUNDING });
});

it.each(TURNS)('what moves as one with its support does not move as seen from it: %j ...', (...numbers) => {
  const all = numbers as unknown as Rotation;
  const [lower, upper] = [pose(turnAboutZ(0.4), [5, 7, 0]), pose(turnAboutZ(-1), [8, 3, 40])];
  const carried = (r: Rotation, place: Vec3): Pose => pose(after(all, r), add3(rotate(all, place), [11, -13, 17]));
  const now = seenFrom(carried(turnAboutZ(0.4), [5, 7, 0]), carried(turnAboutZ(-1), [8, 3, 40]));
  const { movedMm, turnedRad } = motion(seenFrom(lower, upper), now);
  expectNear(movedMm, 0, { absolute: 100 * ROUNDING });
  // An angle near none is the root of what rounding leaves of a cosine, taken from its sine.
  expectNear(turnedRad, 0, { absolute: 100 * ROUNDING });
});

it('the lower one sees the upper one in its own frame', () => {
  const quarter = pose(turnAboutZ(Math.PI / 2), [10, 0, 0]);
  expectPointNear(seenFrom(quarter, pose(IDENTITY, [10, 5, 2])).place, [5, 0, 2], ROUNDING);
  expect(seenFrom(quarter, quarter).place).toEqual([0, 0, 0]);
});
