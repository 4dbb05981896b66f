// The fast path. When every body rests on exactly one other body, or on the table, through one level patch, each joint
// carries all that stands above it. It holds a push as long as the push line through their common centre of mass meets
// the joint inside its patch, and as long as the push is no more than the friction: push = distance / height, at most mu.
// Statics of rigid bodies; frame of the table, mm and grams.

import { LEVEL_NORMAL } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add3, scale3 } from '../kernel/vec.ts';
import { nearestEdgeOf, reachTowards } from './nearest-edge.ts';
import type { Margin, Patch, StaticProblem } from './types.ts';

/** What one joint says: how far inside its patch the load above it stands, and which push it bears. */
export interface Joint {
  readonly patch: Patch;
  /** Bodies that this joint carries, the one that rests on it first. */
  readonly above: readonly number[];
  readonly massG: number;
  readonly centre: Vec3;
  /** Distance from the load's centre to the nearest edge of the patch, mm; negative when it hangs over. */
  readonly insideMm: number;
  readonly edge: readonly [Vec3, Vec3];
  /** Unit vector in plan from the patch out over that edge. */
  readonly outward: Vec2;
  /** Height of the load's centre over the joint, mm. */
  readonly leverMm: number;
  readonly tips: Margin;
}

/** One joint a body, or null when the build is not of this kind (bridges, slanted contacts, side contacts). */
export function jointsOfTree(problem: StaticProblem): readonly Joint[] | null {
  const below = new Map<number, Patch>();
  for (const patch of problem.patches) {
    if (patch.normal[2] < LEVEL_NORMAL || below.has(patch.upper)) return null;
    below.set(patch.upper, patch);
  }
  if (below.size !== problem.bodies.length) return null;
  const carried = carriedBy(below);
  return [...below.values()].map((patch) => joint(problem, patch, carried.get(patch.upper) ?? []));
}

/** The push that all joints bear in one direction (a unit vector). */
export function pushTowardsOfTree(joints: readonly Joint[], towards: Vec2): number {
  return joints.reduce((least, { patch, centre, leverMm }) => {
    const tips = reachTowards(patch, [centre[0], centre[1]], towards) / leverMm;
    return Math.min(least, tips, patch.friction);
  }, Number.POSITIVE_INFINITY);
}

/** For each body, itself and all that stands on it, directly or not. */
function carriedBy(below: ReadonlyMap<number, Patch>): ReadonlyMap<number, readonly number[]> {
  const carried = new Map<number, number[]>([...below.keys()].map((body) => [body, [body]]));
  for (const body of below.keys()) {
    let patch = below.get(body);
    while (patch !== undefined && patch.lower !== 'table') {
      carried.get(patch.lower)?.push(body);
      patch = below.get(patch.lower);
    }
  }
  return carried;
}

function joint(problem: StaticProblem, patch: Patch, above: readonly number[]): Joint {
  let massG = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const index of above) {
    const body = problem.bodies[index];
    if (body === undefined) throw new RangeError(`no body ${index}`);
    massG += body.massG;
    moment = add3(moment, scale3(body.centre, body.massG));
  }
  const centre = scale3(moment, 1 / massG);
  const { insideMm, edge, outward } = nearestEdgeOf(patch, [centre[0], centre[1]]);
  const leverMm = centre[2] - edge[0][2];
  const tips = { push: Math.max(0, insideMm) / leverMm, direction: outward };
  return { patch, above, massG, centre, insideMm, edge, outward, leverMm, tips };
}
