// How far a point of the plan lies inside a convex patch, and over which edge it would leave it first. mm.

import { HANGING_MM } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import type { Disc, Patch } from './types.ts';

export interface EdgeDistance {
  /** Distance to the nearest edge, positive inside; for a segment or a point minus the distance to it (0 on it). */
  readonly insideMm: number;
  readonly edge: readonly [Vec3, Vec3];
  /** Unit vector in plan, out of the patch over that edge. */
  readonly outward: Vec2;
}

/** The edge of a patch that is nearest to the point. */
export function nearestEdgeOf({ points, disc }: Pick<Patch, 'points' | 'disc'>, at: Vec2): EdgeDistance {
  return disc === null ? nearestEdge(points, at) : toRim(disc, at);
}

/** `corners`: a convex polygon counter-clockwise seen from above, the two ends of a segment, or one point. */
function nearestEdge(corners: readonly Vec3[], at: Vec2): EdgeDistance {
  const [first] = corners;
  if (first === undefined) throw new RangeError('a patch has at least one corner');
  const flat = corners.length < 3;
  let best: EdgeDistance | null = null;
  corners.forEach((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? first;
    const candidate = flat ? toSegment(from, to, at) : toLine(from, to, at);
    if (candidate !== null && (best === null || candidate.insideMm < best.insideMm)) best = candidate;
  });
  return best ?? toSegment(first, first, at);
}

/** The rim of a disc; its nearest point stands for the edge. */
function toRim({ centre, radiusMm }: Disc, at: Vec2): EdgeDistance {
  const off: Vec2 = [at[0] - centre[0], at[1] - centre[1]];
  const distance = Math.hypot(off[0], off[1]);
  const outward: Vec2 = distance === 0 ? [1, 0] : [off[0] / distance, off[1] / distance];
  const rim: Vec3 = [centre[0] + radiusMm * outward[0], centre[1] + radiusMm * outward[1], centre[2]];
  return { insideMm: radiusMm - distance, edge: [rim, rim], outward };
}

/**
 * How far the point can go along `towards` (a unit vector) before it leaves the patch, mm; 0 when it is not inside. Along
 * a segment it can go to the end, off it not at all.
 */
export function reachTowards({ points, disc }: Pick<Patch, 'points' | 'disc'>, at: Vec2, towards: Vec2): number {
  return disc === null ? reachInPolygon(points, at, towards) : reachInDisc(disc, at, towards);
}

function reachInDisc({ centre, radiusMm }: Disc, at: Vec2, towards: Vec2): number {
  const off: Vec2 = [at[0] - centre[0], at[1] - centre[1]];
  const along = off[0] * towards[0] + off[1] * towards[1];
  const insideSq = radiusMm ** 2 - off[0] ** 2 - off[1] ** 2;
  return insideSq <= 0 ? 0 : Math.sqrt(along ** 2 + insideSq) - along;
}

function reachInPolygon(corners: readonly Vec3[], at: Vec2, towards: Vec2): number {
  const [first] = corners;
  if (first === undefined) throw new RangeError('a patch has at least one corner');
  let reachMm = Number.POSITIVE_INFINITY;
  corners.forEach((from, i) => {
    const side = toLine(from, corners[(i + 1) % corners.length] ?? first, at);
    const facing = side === null ? 0 : side.outward[0] * towards[0] + side.outward[1] * towards[1];
    if (side !== null && facing > ALONG) reachMm = Math.min(reachMm, Math.max(0, side.insideMm) / facing);
  });
  const ends = corners.map((corner) => (corner[0] - at[0]) * towards[0] + (corner[1] - at[1]) * towards[1]);
  return Math.max(0, reachMm === Number.POSITIVE_INFINITY ? Math.max(...ends) : reachMm);
}

/** No unit (sine of an angle). A direction nearer than this to that of an edge runs along it. */
const ALONG = 1e-9;

/** Signed distance to the line of an edge that has the patch on its left. */
function toLine(from: Vec3, to: Vec3, at: Vec2): EdgeDistance | null {
  const along: Vec2 = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(along[0], along[1]);
  if (length === 0) return null;
  const outward: Vec2 = [along[1] / length, -along[0] / length];
  return { insideMm: -((at[0] - from[0]) * outward[0] + (at[1] - from[1]) * outward[1]), edge: [from, to], outward };
}

/** A patch without area holds nothing upright: whatever its place, the load can leave it sideways at once. */
function toSegment(from: Vec3, to: Vec3, at: Vec2): EdgeDistance {
  const along: Vec2 = [to[0] - from[0], to[1] - from[1]];
  const lengthSq = along[0] ** 2 + along[1] ** 2;
  const share = lengthSq === 0 ? 0 : ((at[0] - from[0]) * along[0] + (at[1] - from[1]) * along[1]) / lengthSq;
  const k = Math.min(1, Math.max(0, share));
  const off: Vec2 = [at[0] - from[0] - k * along[0], at[1] - from[1] - k * along[1]];
  const distance = Math.hypot(off[0], off[1]);
  const length = Math.sqrt(lengthSq);
  const across: Vec2 = length === 0 ? [1, 0] : [along[1] / length, -along[0] / length];
  // On the line to within rounding: what is left of the distance points anywhere, along the line too.
  const isOn = distance <= HANGING_MM;
  const outward: Vec2 = isOn ? across : [off[0] / distance, off[1] / distance];
  return { insideMm: isOn ? 0 : -distance, edge: [from, to], outward };
}
