// Judging whether a build stands, held against letting it stand in a simulation of stiff bodies for five seconds, and
// against linear programmes. Towers of blocks and walls of bricks in running bond; mm. The simulation is the plainest
// there is: a cuboid a piece, 60 steps a second, no sleeping.

import type { LaidPiece, StabilityQuestion, StaticProblem } from '@cairnmark/geometry';
import {
  contactColumns,
  frictionCone,
  judge,
  judgeByProgrammes,
  pose,
  stabilityOf,
  weights,
} from '@cairnmark/geometry';
import Rapier from '@dimforge/rapier3d-compat';
import { HIGHS } from '../reference/highs.ts';
import { FULL, LIMITS, question } from '../reference/judged-builds.ts';
import { box, put } from '../reference/stacked-builds.ts';
import type { Report } from './measure.ts';
import { interleave } from './measure.ts';

export const name = 'Does it stand: times faster than five seconds of simulation, and than linear programmes';

/** Sizes in mm. */
const SIZES = { brick: [100, 50, 50], half: [50, 50, 50], block: [60, 60, 50] } as const;
const SPECS = { brick: box(...SIZES.brick), half: box(...SIZES.half), block: box(...SIZES.block) };
const FRICTION = 0.6;
const ROUNDS = 15;
const FRAME_MS = 1000 / 60;

export async function run(report: Report): Promise<void> {
  await Rapier.init();
  for (const count of [2, 5, 12, 30]) tower(count, report);
  wall(5, bond(2, 2), report);
  wall(12, bond(5, 2), report);
  wall(30, bond(4, 7), report);
}

function tower(count: number, report: Report): void {
  const pieces = Array.from({ length: count }, (_, k) => put('block', 3 * (k % 2), 5 * (k % 3)));
  const asked = question(pieces, SPECS, FULL, FRICTION, { solver: HIGHS });
  const problem = problemOf(asked);
  const times = interleave(
    {
      margin: () => judge(problem, HIGHS, LIMITS),
      programmes: () => judgeByProgrammes(problem, HIGHS, LIMITS),
      whole: () => stabilityOf(asked),
      simulation: () => simulated(problem, pieces),
    },
    ROUNDS,
  );
  const row = (label: string, value: number, target?: string): void =>
    report({ label: `tower of ${count}: ${label}`, value, unit: 'x', ...(target === undefined ? {} : { target }) });
  row('simulation / margin', times.simulation / times.margin, '30 or more');
  row('simulation / all with explanation', times.simulation / times.whole);
  row('programmes / margin', times.programmes / times.margin, 'above 1');
  if (count === 5)
    report({ label: 'tower of 5: share of a frame at 60 Hz', value: (100 * times.whole) / FRAME_MS, unit: '%' });
}

function wall(count: number, pieces: readonly LaidPiece[], report: Report): void {
  const asked = question(pieces, SPECS, FULL, FRICTION, { solver: HIGHS });
  const problem = problemOf(asked);
  const times = interleave(
    {
      verdict: () => judge(problem, null, LIMITS),
      feasibility: () => feasible(problem),
      margin: () => judge(problem, HIGHS, LIMITS),
      whole: () => stabilityOf(asked),
      simulation: () => simulated(problem, pieces),
    },
    ROUNDS,
  );
  const row = (label: string, value: number, target?: string): void =>
    report({ label: `wall of ${count}: ${label}`, value, unit: 'x', ...(target === undefined ? {} : { target }) });
  row('simulation / margin', times.simulation / times.margin, count === 30 ? '2 or more' : undefined);
  row('simulation / all with explanation', times.simulation / times.whole);
  row('one programme / verdict', times.feasibility / times.verdict);
}

/** A wall with straight ends: every second course begins and ends with half a brick. */
function bond(courses: number, bricks: number): readonly LaidPiece[] {
  const whole = Array.from({ length: bricks }, (_, k) => put('brick', 100 * k, 0));
  const broken = [put('half', -25, 0), ...whole.slice(1).map((piece, k) => ({ ...piece, xMm: 100 * k + 50 }))];
  broken.push(put('half', 100 * bricks - 75, 0));
  return Array.from({ length: courses }, (_, course) => (course % 2 === 0 ? whole : broken)).flat();
}

function problemOf(asked: StabilityQuestion): StaticProblem {
  const posed = pose(asked, asked.pieces);
  if (!posed.ok) throw new Error('refused');
  return posed.value.problem;
}

/** One feasibility question to the solver: can forces on the contacts carry the weights? */
function feasible(problem: StaticProblem): string {
  const matrix = contactColumns(problem, frictionCone(0));
  const session = HIGHS.open({ matrix, right: weights(problem, [0, 0]), free: 0 });
  try {
    return session.maximise(new Float64Array(matrix.columns), LIMITS.pivots).status;
  } finally {
    session.close();
  }
}

/** mm: the unit of the simulation, so that a piece is about one long. */
const UNIT = 100;

/** Height of the topmost piece after five seconds. */
function simulated({ bodies }: StaticProblem, pieces: readonly LaidPiece[]): number {
  const world = new Rapier.World({ x: 0, y: 0, z: -9810 / UNIT });
  world.createCollider(Rapier.ColliderDesc.cuboid(100, 100, 1).setTranslation(0, 0, -1).setFriction(FRICTION));
  const moving = pieces.map(({ kind }, k) => {
    const [x, y, z] = bodies[k]?.centre ?? [0, 0, 0];
    const [length, width, height] = kind === 'block' ? SIZES.block : kind === 'half' ? SIZES.half : SIZES.brick;
    const at = Rapier.RigidBodyDesc.dynamic().setTranslation(x / UNIT, y / UNIT, z / UNIT);
    const body = world.createRigidBody(at.setCanSleep(false));
    const shape = Rapier.ColliderDesc.cuboid(length / 2 / UNIT, width / 2 / UNIT, height / 2 / UNIT);
    world.createCollider(shape.setFriction(FRICTION), body);
    return body;
  });
  for (let step = 0; step < 300; step += 1) world.step();
  const top = Math.max(...moving.map((body) => body.translation().z));
  world.free();
  return top;
}
