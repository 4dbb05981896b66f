// A hemisphere on its dome neither stands on a point nor rolls away: its centre of mass lies below the centre of the ball,
// so that it rocks back. On a slope it leans until the centre of mass is over the contact again, which it can as long as
// r sin(slope) is no more than the distance e between the two centres: it tips at asin(e / r), 22.0 degrees when full.
// For the equations it therefore stands like a piece whose foot is a disc that tips at that slope. Frame of the table, mm.

import { LEVEL_NORMAL } from '../kernel/tolerance.ts';
import type { Vec3 } from '../kernel/vec.ts';
import type { PlacedPiece } from '../stack/types.ts';
import { RIM_CORNERS } from './feature.ts';
import type { BodyMass, Patch } from './types.ts';

/** The patch of a hemisphere that rights itself, or null when this one does not: something else carries or loads it. */
export function selfRighting(piece: PlacedPiece, mass: BodyMass, patches: readonly Patch[]): Patch | null {
  const [dome] = piece.body.flatMap((primitive) => (primitive.kind === 'half-ball' ? [primitive] : []));
  const touching = patches.filter(({ upper, lower }) => upper === piece.index || lower === piece.index);
  const [patch] = touching;
  if (dome === undefined || patch === undefined || touching.length > 1 || patch.upper !== piece.index) return null;
  const [foot] = patch.points;
  if (foot === undefined || patch.points.length > 1 || patch.normal[2] < LEVEL_NORMAL) return null;
  const belowMm = dome.centre[2] - mass.centre[2];
  if (belowMm <= 0 || dome.axis[2] > -LEVEL_NORMAL) return null;
  const heightMm = mass.centre[2] - foot[2];
  const reachMm = heightMm * Math.tan(Math.asin(Math.min(1, belowMm / dome.radiusMm)));
  return { ...patch, points: discAround(foot, reachMm), disc: { centre: foot, radiusMm: reachMm } };
}

/** Corners on the circle. */
function discAround(middle: Vec3, radiusMm: number): readonly Vec3[] {
  return Array.from({ length: RIM_CORNERS }, (_, k) => {
    const angle = (2 * Math.PI * k) / RIM_CORNERS;
    return [middle[0] + radiusMm * Math.cos(angle), middle[1] + radiusMm * Math.sin(angle), middle[2]];
  });
}
