// How far a piece of a tower, with all that stands on it, has to be moved before its joints can bear a push, and how far
// it can be at the most: what a move does to centres of mass and edges is linear as long as every piece keeps its level.
// Necessary, not sufficient: a layout within the range is still dropped and judged. Frame of the table, mm.

import { convexHull } from '../kernel/hull.ts';
import { HANGING_MM, SAME_POINT_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { dot2, flatten, scale2, sub2 } from '../kernel/vec.ts';
import type { PlacedPiece, Stack } from '../stack/types.ts';
import { bodyAt } from './equilibrium.ts';
import { featureAlong } from './feature.ts';
import { pieceAt } from './patches.ts';
import type { Joint } from './recursion.ts';
import type { Disc, StaticProblem } from './types.ts';

export interface ShiftRange {
  readonly leastMm: number;
  readonly mostMm: number;
}

/** A tower of level joints as it stands. */
export interface Tower {
  readonly stack: Stack;
  readonly problem: StaticProblem;
  readonly joints: readonly Joint[];
}

/** What is moved: a piece and all on it, along a unit vector of the plan. */
export interface Shift {
  readonly piece: number;
  readonly moved: readonly number[];
  readonly towards: Vec2;
  /** True when a piece that stays could come to carry one that moves, or the other way round. */
  readonly meets: boolean;
}

/**
 * `push`: what every joint is to bear, in shares of gravity. null: no such move helps, however long. Where a piece
 * that stays could come to carry one that moves, or the other way round, any move may help.
 */
export function shiftRange(tower: Tower, shift: Shift, push: number): ShiftRange | null {
  if (shift.meets) return ANY_SHIFT;
  let range: ShiftRange | null = ANY_SHIFT;
  for (const joint of tower.joints) {
    if (joint.patch.friction < push) return null;
    const at = flatten(joint.centre);
    const insetMm = joint.leverMm * push - HANGING_MM;
    for (const { ground, share } of groundsOf(tower, joint, shift)) {
      range = range && common(range, withinGround(ground, at, scale2(shift.towards, share), insetMm));
    }
  }
  return range;
}

/** Nothing is known of how far it has to be. */
export const ANY_SHIFT: ShiftRange = { leastMm: 0, mostMm: Number.POSITIVE_INFINITY };

/** What a load has to stay over, and which share of the move its centre of mass makes relative to that. */
interface Bound {
  readonly ground: Ground;
  readonly share: number;
}

/** A convex polygon, counter-clockwise, or the true circle on which its corners lie. */
interface Ground {
  readonly corners: readonly Vec2[];
  readonly disc: Disc | null;
}

function groundsOf({ stack, problem }: Tower, joint: Joint, { piece, moved }: Shift): readonly Bound[] {
  const { patch, above, massG } = joint;
  if (patch.upper === piece) {
    const foot = { ground: faceOf(pieceAt(stack, piece), -1), share: 0 };
    return patch.lower === 'table' ? [foot] : [foot, { ground: faceOf(pieceAt(stack, patch.lower), 1), share: 1 }];
  }
  // A circle on a square as wide leaves corners that all but coincide: the hull keeps one of them, and no fruitless edge.
  const ground = { corners: convexHull(patch.points.map(flatten), SAME_POINT_MM), disc: patch.disc };
  if (moved.includes(patch.upper) || !above.includes(piece)) return [{ ground, share: 0 }];
  const movedG = moved.reduce((sum, index) => sum + bodyAt(problem, index).massG, 0);
  return [{ ground, share: movedG / massG }];
}

function faceOf({ body }: PlacedPiece, upward: 1 | -1): Ground {
  const { points, disc } = featureAlong(body, [0, 0, upward], SAME_POINT_MM);
  return { corners: convexHull(points.map(flatten), SAME_POINT_MM), disc };
}

/** For which lengths of the move the point stays inside, at least `insetMm` from every edge. */
function withinGround({ corners, disc }: Ground, at: Vec2, along: Vec2, insetMm: number): ShiftRange | null {
  if (disc !== null) return withinDisc(sub2(at, flatten(disc.centre)), along, disc.radiusMm - insetMm);
  // A segment or a point: the judgement itself has to say.
  if (corners.length < 3) return ANY_SHIFT;
  return corners.reduce<ShiftRange | null>((range, from, k) => {
    const to = corners[(k + 1) % corners.length] ?? from;
    const [x, y] = sub2(to, from);
    const outward = scale2([y, -x], 1 / Math.hypot(x, y));
    const roomMm = -dot2(sub2(at, from), outward) - insetMm;
    return range && common(range, upTo(roomMm, dot2(along, outward)));
  }, ANY_SHIFT);
}

/** The lengths m >= 0 with rate m <= room. */
function upTo(roomMm: number, rate: number): ShiftRange | null {
  if (Math.abs(rate) < NO_RATE) return roomMm >= 0 ? ANY_SHIFT : null;
  const limitMm = roomMm / rate;
  if (rate < 0) return { leastMm: Math.max(0, limitMm), mostMm: Number.POSITIVE_INFINITY };
  return limitMm < 0 ? null : { leastMm: 0, mostMm: limitMm };
}

/** No unit. Slower than this a point does not move. */
const NO_RATE = 1e-12;

/** The lengths m >= 0 with |from + m along| <= radius. */
function withinDisc(from: Vec2, along: Vec2, radiusMm: number): ShiftRange | null {
  const rateSq = dot2(along, along);
  const insideSq = radiusMm < 0 ? Number.NEGATIVE_INFINITY : radiusMm ** 2 - dot2(from, from);
  if (rateSq < NO_RATE ** 2) return insideSq >= 0 ? ANY_SHIFT : null;
  const half = dot2(from, along) / rateSq;
  const rootSq = half ** 2 + insideSq / rateSq;
  if (!(rootSq >= 0)) return null;
  const root = Math.sqrt(rootSq);
  return root < half ? null : { leastMm: Math.max(0, -half - root), mostMm: root - half };
}

function common(a: ShiftRange, b: ShiftRange | null): ShiftRange | null {
  if (b === null) return null;
  const [leastMm, mostMm] = [Math.max(a.leastMm, b.leastMm), Math.min(a.mostMm, b.mostMm)];
  return leastMm <= mostMm ? { leastMm, mostMm } : null;
}
