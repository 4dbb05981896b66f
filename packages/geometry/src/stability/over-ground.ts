// A quick look at a move before it is tried: pieces that went together have to stay over the ground they stand on. What
// they stand on, and how high their centre of mass lies over it, is the same after a move that keeps all levels.
// Necessary, not sufficient. Frame of the table, mm.

import { convexHull } from '../kernel/hull.ts';
import { HANGING_MM, LEVEL_NORMAL, SAME_LEVEL_MM, SAME_POINT_MM } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add2, dot2, flatten, scale2, sub2 } from '../kernel/vec.ts';
import type { Stack } from '../stack/types.ts';
import { bodyAt } from './equilibrium.ts';
import { featureAlong } from './feature.ts';
import { centreOf } from './hinge.ts';
import { pieceAt } from './patches.ts';
import type { Shift } from './shift-range.ts';
import type { Disc, Patch, StaticProblem } from './types.ts';

/** What bears a lump, once a piece and all on it were moved; true: nothing is against it, as far as this look goes. */
export type Look = (shift: Shift, byMm: number) => boolean;

/**
 * For the pieces of one lump, in a build that is to bear `push` in all directions. null: of this lump nothing can be said
 * so simply (it carries others, or stands on several levels).
 */
export function lookAt(stack: Stack, problem: StaticProblem, pieces: readonly number[], push: number): Look | null {
  const lump = new Set(pieces);
  const under = problem.patches.filter(({ upper, lower }) => lump.has(upper) && !isIn(lump, lower));
  const carries = problem.patches.some(({ upper, lower }) => !lump.has(upper) && isIn(lump, lower));
  const levelMm = under[0]?.points[0]?.[2];
  if (carries || levelMm === undefined || !under.every((patch) => liesAt(patch, levelMm))) return null;
  const centre = centreOf(problem, pieces);
  const massG = sum(problem, pieces);
  const insetMm = (centre[2] - levelMm) * push - HANGING_MM;
  return ({ moved, towards, meets }, byMm) => {
    if (meets) return true;
    const shift = scale2(towards, byMm);
    const going = moved.filter((index) => lump.has(index));
    const at = add2(flatten(centre), scale2(shift, sum(problem, going) / massG));
    return isInside(groundOf(stack, under, moved, shift), at, insetMm);
  };
}

const isIn = (lump: ReadonlySet<number>, lower: Patch['lower']): boolean => lower !== 'table' && lump.has(lower);

const liesAt = ({ normal, points }: Patch, levelMm: number): boolean =>
  normal[2] >= LEVEL_NORMAL && points.every(([, , z]) => Math.abs(z - levelMm) <= SAME_LEVEL_MM);

function sum(problem: StaticProblem, pieces: readonly number[]): number {
  return pieces.reduce((total, index) => total + bodyAt(problem, index).massG, 0);
}

/**
 * The ground under a lump, a hull that can be too large but never too small: where a moved piece slides over one that
 * stays, all of the face of that one is taken.
 */
function groundOf(stack: Stack, under: readonly Patch[], moved: readonly number[], shift: Vec2): readonly Vec2[] {
  const corners = under.flatMap(({ upper, lower, points, disc }) => {
    if (!moved.includes(upper)) return around(points, disc);
    if (lower === 'table' || moved.includes(lower)) return around(points, disc).map((point) => add2(point, shift));
    const face = featureAlong(pieceAt(stack, lower).body, [0, 0, 1], SAME_POINT_MM);
    return around(face.points, face.disc);
  });
  return convexHull(corners, SAME_POINT_MM);
}

const around = (points: readonly Vec3[], disc: Disc | null): readonly Vec2[] =>
  points.map((point) => (disc === null ? flatten(point) : outwards(flatten(point), flatten(disc.centre))));

/** The corner of a polygon round the circle on which the corners of a contact lie: 48 of them, 1.01 times as far out. */
const outwards = (corner: Vec2, centre: Vec2): Vec2 => add2(centre, scale2(sub2(corner, centre), AROUND));
const AROUND = 1.01;

function isInside(hull: readonly Vec2[], at: Vec2, insetMm: number): boolean {
  // A segment or a point: the judgement itself has to say.
  if (hull.length < 3) return true;
  return hull.every((from, k) => {
    const [x, y] = sub2(hull[(k + 1) % hull.length] ?? from, from);
    return -dot2(sub2(at, from), [y, -x]) / Math.hypot(x, y) >= insetMm;
  });
}
