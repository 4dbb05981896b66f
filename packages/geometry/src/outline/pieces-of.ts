// Outlines made ready for the boundary walk: moved to a local origin, cleaned, cut into convex pieces, largest first.

import type { Outline, PolygonOutline } from '../kernel/outline.ts';
import { ringLengthMm, signedAreaMm2 } from '../kernel/polygon.ts';
import { COINCIDENT_RELATIVE, COORDINATE_ROUNDING, NODE_RELATIVE } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { sub2 } from '../kernel/vec.ts';
import type { Box } from './box.ts';
import { boxAround, boxAroundPoints } from './box.ts';
import { cleanRing, counterClockwise, isConvexRing } from './clean-ring.ts';
import type { Piece } from './piece.ts';
import { discPiece, facingOf, polygonPiece } from './piece.ts';
import { trapezoidsOf } from './trapezoids.ts';

/** Where the local origin lies, and how near two things must be to be one; mm. */
export interface LocalFrame {
  readonly origin: Vec2;
  /** By how much coordinates may be rounded: discs that overlap by less are tangent. */
  readonly roundingMm: number;
  /** Boundaries nearer than this coincide. */
  readonly noiseMm: number;
  /** Ends of boundary pieces nearer than this are one node. */
  readonly nodeMm: number;
}

/**
 * The frame in which the walk works: about the middle of all outlines.
 * Throws RangeError on a coordinate or radius that is not finite: such input is refused before it gets here.
 */
export function frameOf(outlines: readonly Outline[]): LocalFrame {
  const box = boxAround(outlines.map(boxOfOutline));
  if (box.minX > box.maxX) return { origin: [0, 0], roundingMm: 0, noiseMm: 0, nodeMm: 0 };
  const size = Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  if (!Number.isFinite(size)) throw new RangeError('an outline with a coordinate that is not finite');
  const roundingMm = COORDINATE_ROUNDING * Math.max(size, -box.minX, -box.minY, box.maxX, box.maxY);
  const noiseMm = Math.max(COINCIDENT_RELATIVE * size, roundingMm);
  return {
    origin: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2],
    roundingMm,
    noiseMm,
    nodeMm: Math.max(NODE_RELATIVE * size, 2 * noiseMm),
  };
}

/** The pieces of all outlines, largest first. Outlines without area give none. */
export function piecesOf(outlines: readonly Outline[], frame: LocalFrame): readonly Piece[] {
  return outlines.flatMap((outline, owner) => piecesOfOne(outline, owner, frame)).sort((a, b) => b.areaMm2 - a.areaMm2);
}

function boxOfOutline(outline: Outline): Box {
  if (outline.kind === 'polygon') return boxAroundPoints(outline.points);
  const { centre, radiusMm } = outline;
  return {
    minX: centre[0] - radiusMm,
    minY: centre[1] - radiusMm,
    maxX: centre[0] + radiusMm,
    maxY: centre[1] + radiusMm,
  };
}

function piecesOfOne(outline: Outline, owner: number, frame: LocalFrame): readonly Piece[] {
  if (outline.kind === 'polygon') return polygonPieces(outline, owner, frame);
  return outline.radiusMm > frame.noiseMm
    ? [discPiece(sub2(outline.centre, frame.origin), outline.radiusMm, owner)]
    : [];
}

function polygonPieces(outline: PolygonOutline, owner: number, { origin, noiseMm }: LocalFrame): readonly Piece[] {
  const local = outline.points.map((point) => sub2(point, origin));
  const ring = counterClockwise(cleanRing(local, noiseMm));
  const canFace = facingOf(ring);
  if (isConvexRing(ring)) return hasArea(ring, noiseMm) ? [polygonPiece(ring, canFace, owner)] : [];
  return trapezoidsOf(ring, canFace, noiseMm)
    .filter((part) => hasArea(part.ring, noiseMm))
    .map((part) => polygonPiece(part.ring, part.canFace, owner));
}

function hasArea(ring: readonly Vec2[], noiseMm: number): boolean {
  return ring.length >= 3 && signedAreaMm2(ring) > noiseMm * ringLengthMm(ring);
}
