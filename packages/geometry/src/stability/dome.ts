// A hemisphere on its dome neither stands on a point nor rolls away: its centre of mass lies below the centre of the ball,
// so that it rocks back. On a slope it rolls until the centre of mass is over the contact again. With e from one centre to
// the other, a roll by the angle b balances on a slope of tangent sin b / (r / e - cos b): most at cos b = e / r, where the
// slope is asin(e / r), 22.0 degrees when full; at the edge of what it lies on it has to stop sooner.
// For the equations it therefore stands like a piece whose foot is a disc as wide as it rolls, under a centre so high that
// it tips at that slope. Frame of the table, mm.

import { convexHull } from '../kernel/hull.ts';
import { FEATURE_MM, LEVEL_NORMAL, SAME_POINT_MM } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { flatten } from '../kernel/vec.ts';
import type { PlacedPiece, Stack } from '../stack/types.ts';
import { featureAlong, RIM_CORNERS } from './feature.ts';
import { nearestEdgeOf } from './nearest-edge.ts';
import { pieceAt } from './patches.ts';
import type { BodyMass, Patch } from './types.ts';

/** What stands in the equations for a hemisphere on its dome. */
export interface Rocker {
  readonly foot: Patch;
  readonly body: BodyMass;
}

/**
 * The stand-in for a hemisphere that rights itself. null when this one does not: something else carries or loads it, or it
 * lies on an edge, a tip or a round top.
 */
export function selfRighting(
  stack: Stack,
  piece: PlacedPiece,
  body: BodyMass,
  patches: readonly Patch[],
): Rocker | null {
  const [dome] = piece.body.flatMap((primitive) => (primitive.kind === 'half-ball' ? [primitive] : []));
  const touching = patches.filter(({ upper, lower }) => upper === piece.index || lower === piece.index);
  const [patch] = touching;
  if (dome === undefined || patch === undefined || touching.length > 1 || patch.upper !== piece.index) return null;
  const [foot] = patch.points;
  if (foot === undefined || patch.points.length > 1 || patch.normal[2] < LEVEL_NORMAL) return null;
  const belowMm = dome.centre[2] - body.centre[2];
  const roomMm = roomAround(foot, patch.lower === 'table' ? null : pieceAt(stack, patch.lower));
  if (belowMm <= 0 || roomMm <= 0 || dome.axis[2] > -LEVEL_NORMAL) return null;
  const rollRad = Math.min(Math.acos(belowMm / dome.radiusMm), roomMm / dome.radiusMm);
  const push = Math.sin(rollRad) / (dome.radiusMm / belowMm - Math.cos(rollRad));
  const rollMm = rollRad * dome.radiusMm;
  const [x, y, z] = foot;
  return {
    foot: { ...patch, points: discAround(foot, rollMm), disc: { centre: foot, radiusMm: rollMm } },
    body: { ...body, centre: [x, y, z + rollMm / push] },
  };
}

/** How far the flat top of what it lies on reaches on all sides, mm; 0 for an edge, a tip or a round top. null: the table. */
function roomAround(foot: Vec3, lower: PlacedPiece | null): number {
  if (lower === null) return Number.POSITIVE_INFINITY;
  const top = featureAlong(lower.body, [0, 0, 1], FEATURE_MM);
  const points = convexHull(top.points.map(flatten), SAME_POINT_MM).map(([x, y]): Vec3 => [x, y, foot[2]]);
  return points.length < 3 ? 0 : nearestEdgeOf({ points, disc: top.disc }, flatten(foot)).insideMm;
}

/** Corners on the circle. */
function discAround(middle: Vec3, radiusMm: number): readonly Vec3[] {
  return Array.from({ length: RIM_CORNERS }, (_, k) => {
    const angle = (2 * Math.PI * k) / RIM_CORNERS;
    return [middle[0] + radiusMm * Math.cos(angle), middle[1] + radiusMm * Math.sin(angle), middle[2]];
  });
}
