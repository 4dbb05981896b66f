// What the boundary walk works on: convex pieces, each a polygon or a true disc, about a local origin; mm.
// An outline that is not convex comes in as several pieces that share their inner sides.

import { signedAreaMm2 } from '../kernel/polygon.ts';
import { ROUND_SIDE_SHARE, ROUND_TURN_RAD } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import type { Box } from './box.ts';
import { boxAround, boxAroundPoints, boxOfSide } from './box.ts';
import type { Edge, Rim, Side } from './edge.ts';
import { sideBetween } from './edge.ts';

/** Some sides that follow each other, with their box: a many-sided piece is looked at run by run. */
export interface Run extends Box {
  readonly sides: readonly Side[];
}

interface PieceBase extends Box {
  /** Index of the outline it comes from. */
  readonly owner: number;
  readonly areaMm2: number;
  readonly edges: readonly Edge[];
}

export interface PolygonPiece extends PieceBase {
  readonly kind: 'polygon';
  readonly edges: readonly Side[];
  readonly runs: readonly Run[];
}

export interface DiscPiece extends PieceBase {
  readonly kind: 'disc';
  readonly rim: Rim;
}

export type Piece = PolygonPiece | DiscPiece;

/** Tells of the side of a ring that starts at a corner whether it is straight, or stands for a piece of a curve. */
export type CanFace = (corner: number) => boolean;

/** A convex ring, counter-clockwise, as a piece. */
export function polygonPiece(ring: readonly Vec2[], canFace: CanFace, owner: number): PolygonPiece {
  const sides = ring.map((at, i) => sideBetween(at, nextOf(ring, i), i, canFace(i)));
  const { minX, minY, maxX, maxY } = boxAroundPoints(ring);
  const runs = sides.length <= FEW_SIDES ? [{ sides, minX, minY, maxX, maxY }] : runsOf(sides);
  return { kind: 'polygon', owner, areaMm2: signedAreaMm2(ring), edges: sides, runs, minX, minY, maxX, maxY };
}

export function discPiece(centre: Vec2, radiusMm: number, owner: number): DiscPiece {
  const [x, y] = centre;
  const rim: Rim = { kind: 'rim', x, y, radiusMm, index: 0 };
  return {
    kind: 'disc',
    owner,
    areaMm2: Math.PI * radiusMm * radiusMm,
    edges: [rim],
    rim,
    minX: x - radiusMm,
    minY: y - radiusMm,
    maxX: x + radiusMm,
    maxY: y + radiusMm,
  };
}

/** Which sides of a ring can face another across a gap: see ROUND_TURN_RAD. A ring of few sides stands for no curve. */
export function facingOf(ring: readonly Vec2[]): CanFace {
  if (ring.length <= FEW_SIDES) return () => true;
  const sides = ring.map((at, i) => sideBetween(at, nextOf(ring, i), i, true));
  const shortMm = ROUND_SIDE_SHARE * sides.reduce((total, side) => total + side.lengthMm, 0);
  const canFace = sides.map(
    (side, i) =>
      side.lengthMm >= shortMm || !turnsLittle(sides.at(i - 1) ?? side, side) || !turnsLittle(side, nextOf(sides, i)),
  );
  return (corner) => canFace[corner] ?? true;
}

function nextOf<T>(ring: readonly T[], i: number): T {
  const next = ring[i + 1] ?? ring[0];
  if (next === undefined) throw new RangeError('a ring without corners');
  return next;
}

function turnsLittle(a: Side, b: Side): boolean {
  return Math.abs(a.ux * b.uy - a.uy * b.ux) < Math.sin(ROUND_TURN_RAD) && a.ux * b.ux + a.uy * b.uy > 0;
}

/** Runs of about the square root of the number of sides. */
function runsOf(sides: readonly Side[]): readonly Run[] {
  const length = Math.ceil(Math.sqrt(sides.length));
  const runs: Run[] = [];
  for (let start = 0; start < sides.length; start += length) {
    const some = sides.slice(start, start + length);
    runs.push({ sides: some, ...boxAround(some.map(boxOfSide)) });
  }
  return runs;
}

const FEW_SIDES = 12;
