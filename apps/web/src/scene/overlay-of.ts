// Why a build stands or falls, as things to draw: the balance point of the pieces that move, the plumb line under it, where
// they are held up, the edge they turn over, and which way. From the judgement of the engine. mm, frame of the table.

import type { Failure, Posed, Stability, Vec2, Vec3 } from '@cairnmark/geometry';
import { centreOf } from '@cairnmark/geometry';
import { slideArrow, turnArrow } from './arrow.ts';

export interface StabilityOverlay {
  /** True when it falls by the bare equations: then the pieces that move are drawn pale. */
  readonly falls: boolean;
  /** True when that is the verdict: then the marks are drawn as what is wrong. */
  readonly isBad: boolean;
  readonly marks: readonly OverlayMark[];
}

/** Pieces that move as one, or would move first. */
export interface OverlayMark {
  readonly pieces: readonly number[];
  readonly balance: Vec3;
  /** The lower end of the plumb line from the balance point. */
  readonly plumbFoot: Vec3;
  /** Where what does not move holds them up: polygons, lines and points. */
  readonly heldUp: readonly (readonly Vec3[])[];
  /** Two ends of the edge they turn over, or one point twice; null when they slide or drop. */
  readonly hinge: readonly [Vec3, Vec3] | null;
  /** Which way they go, from tail to head; no points when that is not known. */
  readonly arrow: readonly Vec3[];
}

export function overlayOf(stability: Stability, posed: Posed): StabilityOverlay {
  const falls = stability.stands === false;
  const downhill = falls ? null : (stability.standsTo?.direction ?? null);
  return {
    falls,
    isBad: stability.verdict === 'falls',
    marks: stability.first.map((failure) => markOf(failure, posed, downhill)),
  };
}

function markOf({ pieces, hinge }: Failure, { stack, problem }: Posed, downhill: Vec2 | null): OverlayMark {
  const moving = new Set(pieces);
  const balance = centreOf(problem, pieces);
  const heldUp = problem.patches
    .filter(({ upper, lower }) => moving.has(upper) && (lower === 'table' || !moving.has(lower)))
    .map(({ points }) => points);
  const bodies = stack.pieces.filter(({ index }) => moving.has(index)).map(({ body }) => body);
  const levels = (hinge?.ends ?? heldUp.flat()).map(([, , z]) => z);
  const levelMm = levels.length === 0 ? 0 : Math.min(...levels);
  // Past the edge the line goes on down, beside what it hangs out over.
  const footMm = hinge !== null && hinge.pastMm > 0 ? Math.max(0, levelMm - HANGS_ON_MM) : levelMm;
  return {
    pieces,
    balance,
    plumbFoot: [balance[0], balance[1], Math.min(footMm, balance[2])],
    heldUp,
    hinge: hinge?.ends ?? null,
    arrow: hinge === null ? slideArrow(bodies, downhill) : turnArrow(bodies, hinge),
  };
}

const HANGS_ON_MM = 25;
