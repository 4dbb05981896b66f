// Judging whether a build stands, held against letting it stand in a simulation of stiff bodies for five seconds, and
// against linear programmes. Towers of cubes and walls of bricks in running bond; mm. The simulation is the plainest
// there is: a cuboid a piece, 60 steps a second, no sleeping.

import type { LaidPiece, StabilityQuestion, StaticProblem } from '@cairnmark/geometry';
import { judge, judgeByProgrammes, pose, stabilityOf, standsLevel } from '@cairnmark/geometry';
import Rapier from '@dimforge/rapier3d-compat';
import { HIGHS } from '../reference/highs.ts';
import { FULL, LIMITS, question } from '../reference/judged-builds.ts';
import { box, put } from '../reference/stacked-builds.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'Does it stand: times faster than five seconds of simulation, and than linear programmes';

const SPECS = { brick: box(100, 50, 50), block: box(60, 60, 50) };
const FRICTION = 0.6;
const ROUNDS = 3;
const FRAME_MS = 1000 / 60;

export async function run(report: Report): Promise<void> {
  await Rapier.init();
  for (const pieces of [2, 5, 12, 30]) await tower(pieces, report);
  for (const [pieces, courses] of [
    [5, 2],
    [12, 4],
    [30, 6],
  ] as const)
    wall(pieces, courses, report);
}

async function tower(count: number, report: Report): Promise<void> {
  const pieces = Array.from({ length: count }, (_, k) => put('block', 3 * (k % 2), 5 * (k % 3)));
  const asked = question(pieces, SPECS, FULL, FRICTION, { solver: HIGHS });
  const problem = problemOf(asked);
  const times = interleave(
    {
      recursion: () => judge(problem, HIGHS, LIMITS),
      programmes: () => judgeByProgrammes(problem, HIGHS, LIMITS),
      whole: () => stabilityOf(asked),
      simulation: () => simulated(problem, pieces),
    },
    ROUNDS,
  );
  const label = `tower of ${count}`;
  report({
    label: `${label}: simulation / margin`,
    value: times.simulation / times.recursion,
    unit: 'x',
    target: '30 or more',
  });
  report({ label: `${label}: simulation / all with explanation`, value: times.simulation / times.whole, unit: 'x' });
  report({
    label: `${label}: programmes / margin`,
    value: times.programmes / times.recursion,
    unit: 'x',
    target: 'above 1',
  });
  if (count === 5)
    report({ label: `${label}: share of a frame at 60 Hz`, value: (100 * times.whole) / FRAME_MS, unit: '%' });
}

function wall(count: number, courses: number, report: Report): void {
  const pieces = bond(count, courses);
  const asked = question(pieces, SPECS, FULL, FRICTION, { solver: HIGHS });
  const problem = problemOf(asked);
  const times = interleave(
    {
      verdict: () => `${standsLevel(problem, LIMITS)}`,
      margin: () => judge(problem, HIGHS, LIMITS),
      whole: () => stabilityOf(asked),
      simulation: () => simulated(problem, pieces),
    },
    ROUNDS,
  );
  const label = `wall of ${count}`;
  const target = count === 30 ? { target: '2 or more' } : {};
  report({ label: `${label}: simulation / margin`, value: times.simulation / times.margin, unit: 'x', ...target });
  report({ label: `${label}: simulation / all with explanation`, value: times.simulation / times.whole, unit: 'x' });
  report({ label: `${label}: simulation / verdict alone`, value: times.simulation / times.verdict, unit: 'x' });
}

/** Courses of bricks that each cover a joint of the course below. */
function bond(count: number, courses: number): readonly LaidPiece[] {
  const each = Math.ceil(count / courses);
  return Array.from({ length: count }, (_, k) => {
    const course = Math.floor(k / each);
    return put('brick', 100 * (k % each) + 30 * (course % 2), 0);
  });
}

function problemOf(asked: StabilityQuestion): StaticProblem {
  const posed = pose(asked, asked.pieces);
  if (!posed.ok) throw new Error('refused');
  return posed.value.problem;
}

/** Height of the topmost piece after five seconds. Unit: 100 mm, so that a piece is about one long. */
function simulated({ bodies }: StaticProblem, pieces: readonly LaidPiece[]): number {
  const world = new Rapier.World({ x: 0, y: 0, z: -98.1 });
  world.createCollider(Rapier.ColliderDesc.cuboid(100, 100, 1).setTranslation(0, 0, -1).setFriction(FRICTION));
  const moving = bodies.map(({ centre: [x, y, z] }, k) => {
    const at = Rapier.RigidBodyDesc.dynamic()
      .setTranslation(x / 100, y / 100, z / 100)
      .setCanSleep(false);
    const body = world.createRigidBody(at);
    const [length, width, height] = pieces[k]?.kind === 'brick' ? [1, 0.5, 0.5] : [0.6, 0.6, 0.5];
    world.createCollider(Rapier.ColliderDesc.cuboid(length / 2, width / 2, height / 2).setFriction(FRICTION), body);
    return body;
  });
  for (let step = 0; step < 300; step += 1) world.step();
  const top = Math.max(...moving.map((body) => body.translation().z));
  world.free();
  return top;
}
