// The union of outlines as polygons with holes, for drawing only; no score is taken from it. mm.
// The rings are welded, rounded to whole steps of a grid, and joined by the library polygon-clipping, discs as 64-gons.
// The library can fail on what nearly coincides: several ways are tried, and none is believed unless its area fits.

import type { Outline } from '../kernel/outline.ts';
import { ringLengthMm, signedAreaMm2 } from '../kernel/polygon.ts';
import type { Issue, Result } from '../kernel/result.ts';
import { failure, success } from '../kernel/result.ts';
import { DRAWN_GRID_MM } from '../kernel/tolerance.ts';
import type { Vec2 } from '../kernel/vec.ts';
import { counterClockwise } from './clean-ring.ts';
import type { ClippedUnion, GridRing } from './clip-union.ts';
import { WAYS_TO_UNITE } from './clip-union.ts';
import { FULL_TURN, xAt, yAt } from './edge.ts';
import type { Piece } from './piece.ts';
import { frameOf, piecesOf } from './pieces-of.ts';
import { unionFacts } from './union-facts.ts';
import { welded } from './weld.ts';

/** A part of a drawn union: its outer ring counter-clockwise, its holes clockwise. */
export interface DrawnPart {
  readonly outer: readonly Vec2[];
  readonly holes: readonly (readonly Vec2[])[];
}

/** No way of joining the outlines gave an area that fits; `details` hold how many outlines there are, and their area. */
export type DrawnUnionIssue = Issue<'union-not-drawn'>;

/**
 * The union for drawing. Boundaries nearer than `weldMm` are drawn as one. Throws RangeError on a coordinate that is not
 * finite.
 */
export function drawnUnion(
  outlines: readonly Outline[],
  weldMm: number,
): Result<readonly DrawnPart[], DrawnUnionIssue> {
  const frame = frameOf(outlines);
  const pieces = [...piecesOf(outlines, frame)].sort((a, b) => a.minX - b.minX);
  const rings = pieces.map(cornersOf);
  const { areaMm2 } = unionFacts(outlines, { contactMm: 0, gapAllowanceMm: 0 });
  const [leastMm2, mostMm2] = areaBounds(areaMm2, pieces, rings, weldMm);
  for (const drawn of [welded(rings, weldMm), rings]) {
    for (const unite of WAYS_TO_UNITE) {
      const parts = unite(drawn.map(onGrid))?.map((part) => drawnPart(part, frame.origin));
      if (parts === undefined) continue;
      const drawnMm2 = parts.reduce((total, part) => total + areaOf(part), 0);
      if (leastMm2 <= drawnMm2 && drawnMm2 <= mostMm2) return success(parts);
    }
  }
  return failure([{ code: 'union-not-drawn', path: [], details: { outlines: outlines.length, areaMm2 } }]);
}

const DISC_CORNERS = 64;

function cornersOf(piece: Piece): readonly Vec2[] {
  if (piece.kind === 'polygon') return piece.edges.map(({ ax, ay }): Vec2 => [ax, ay]);
  return Array.from({ length: DISC_CORNERS }, (_, k): Vec2 => {
    const angle = (k * FULL_TURN) / DISC_CORNERS;
    return [xAt(piece.rim, angle), yAt(piece.rim, angle)];
  });
}

/**
 * Between which areas a drawing is believed: no less than the largest ring, no more than all together, and as near to the
 * walked area as 64-gons inside their discs, the weld and the grid allow.
 */
function areaBounds(
  walkedMm2: number,
  pieces: readonly Piece[],
  rings: readonly (readonly Vec2[])[],
  weldMm: number,
): readonly [leastMm2: number, mostMm2: number] {
  const areas = rings.map(signedAreaMm2);
  const movedMm2 = rings.reduce((total, ring) => total + ringLengthMm(ring), 0) * (weldMm + DRAWN_GRID_MM);
  const besideDiscsMm2 = pieces.reduce(
    (total, piece) => total + (piece.kind === 'disc' ? outside64(piece.areaMm2) : 0),
    0,
  );
  return [
    Math.max(walkedMm2 - besideDiscsMm2 - movedMm2, Math.max(0, ...areas) - movedMm2),
    Math.min(walkedMm2 + movedMm2, areas.reduce((total, area) => total + area, 0) + movedMm2),
  ];
}

/** What a disc has more than the polygon of DISC_CORNERS corners on its rim. */
const outside64 = (discMm2: number): number =>
  discMm2 * (1 - (DISC_CORNERS / FULL_TURN) * Math.sin(FULL_TURN / DISC_CORNERS));

const onGrid = (ring: readonly Vec2[]): GridRing =>
  ring.map(([x, y]) => [Math.round(x / DRAWN_GRID_MM), Math.round(y / DRAWN_GRID_MM)]);

function drawnPart(rings: ClippedUnion[number], [originX, originY]: Vec2): DrawnPart {
  const [outer, ...holes] = rings.map((ring) =>
    counterClockwise(
      ring.slice(0, -1).map(([x, y]): Vec2 => [x * DRAWN_GRID_MM + originX, y * DRAWN_GRID_MM + originY]),
    ),
  );
  return { outer: outer ?? [], holes: holes.map((hole) => [...hole].reverse()) };
}

function areaOf({ outer, holes }: DrawnPart): number {
  return holes.reduce((total, hole) => total + signedAreaMm2(hole), signedAreaMm2(outer));
}
