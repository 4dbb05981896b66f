// The curved surface of a cylinder, a cone or a cone frustum, flat on the sheet: a rectangle, a sector of 360 r / s degrees
// (s the slant) or a ring sector. It is cut open at the back. A point of it has a share `u` of the way round, 0 to 1 from
// left to right on the sheet, and a way `v` up the slant, mm. Seen from inside, left to right is clockwise from above.

import type { Solid, Vec2, Vec3 } from '@cairnmark/geometry';
import { arcSteps } from '../path/arc.ts';
import type { PathStep } from '../path/path.ts';
import { lineTo } from '../path/path.ts';
import type { Room } from '../plane/room.ts';

export interface Wall {
  readonly kind: 'rectangle' | 'sector' | 'ring-sector';
  readonly lower: Rim;
  /** Of radius 0 at the tip of a cone. */
  readonly upper: Rim;
  readonly slantMm: number;
  /** Angle of the sector, rad; 0 for a rectangle. */
  readonly openRad: number;
  /** From the tip of the whole cone to the lower rim; of no use for a rectangle. */
  readonly reachMm: number;
}

interface Rim {
  readonly radiusMm: number;
  readonly zMm: number;
}

/** Throws RangeError when the solid is not round and upright with a rim below. */
export function wallOf({ id, body }: Solid): Wall {
  const [lower, upper] = body.map((part): Rim | undefined => {
    if (part.kind === 'disc') return { radiusMm: part.radiusMm, zMm: part.centre[2] };
    const [tip] = part.kind === 'points' ? part.points : [];
    return tip === undefined ? undefined : { radiusMm: 0, zMm: tip[2] };
  });
  if (lower === undefined || upper === undefined || lower.radiusMm < upper.radiusMm) {
    throw new RangeError(`${id} has no wall that lies flat`);
  }
  const slantMm = Math.hypot(lower.radiusMm - upper.radiusMm, upper.zMm - lower.zMm);
  if (lower.radiusMm === upper.radiusMm) return { kind: 'rectangle', lower, upper, slantMm, openRad: 0, reachMm: 0 };
  const reachMm = (slantMm * lower.radiusMm) / (lower.radiusMm - upper.radiusMm);
  const kind = upper.radiusMm === 0 ? 'sector' : 'ring-sector';
  return { kind, lower, upper, slantMm, openRad: (2 * Math.PI * lower.radiusMm) / reachMm, reachMm };
}

/** Where a point of the wall lies on the sheet; the tip of a cone is its origin, else the lower left corner. */
export function onSheet(wall: Wall, u: number, v: number): Vec2 {
  if (wall.kind === 'rectangle') return [2 * Math.PI * wall.lower.radiusMm * u, v];
  const [angle, along] = [wall.openRad * (u - 1 / 2), wall.reachMm - v];
  return [along * Math.sin(angle), -along * Math.cos(angle)];
}

/** Where a point of the sheet lies on the folded wall, in the solid's own frame. */
export function onSolid(wall: Wall, [x, y]: Vec2): Vec3 {
  const { lower, upper, slantMm, openRad, reachMm } = wall;
  const flat = wall.kind === 'rectangle';
  const u = flat ? x / (2 * Math.PI * lower.radiusMm) : Math.atan2(x, -y) / openRad + 1 / 2;
  const share = (flat ? y : reachMm - Math.hypot(x, y)) / slantMm;
  const radiusMm = lower.radiusMm + (upper.radiusMm - lower.radiusMm) * share;
  const azimuth = azimuthAt(u);
  return [radiusMm * Math.cos(azimuth), radiusMm * Math.sin(azimuth), lower.zMm + (upper.zMm - lower.zMm) * share];
}

/** From above, counter-clockwise from +x; the cut is at the back (+y). */
export const azimuthAt = (u: number): number => Math.PI / 2 - 2 * Math.PI * u;

/** Along a level line of the wall. */
export function levelSteps(wall: Wall, v: number, fromU: number, toU: number): readonly PathStep[] {
  if (wall.kind === 'rectangle') return [lineTo(onSheet(wall, toU, v))];
  if (v >= wall.reachMm) return [];
  const angle = (u: number): number => wall.openRad * (u - 1 / 2) - Math.PI / 2;
  return arcSteps([0, 0], wall.reachMm - v, angle(fromU), angle(toU));
}

export const wallAreaMm2 = ({ lower, upper, slantMm }: Wall): number =>
  Math.PI * (lower.radiusMm + upper.radiusMm) * slantMm;

export function wallCentroid(wall: Wall): Vec2 {
  if (wall.kind === 'rectangle') return onSheet(wall, 1 / 2, wall.slantMm / 2);
  const [outer, inner, half] = [wall.reachMm, wall.reachMm - wall.slantMm, wall.openRad / 2];
  const thirds = (outer ** 2 + outer * inner + inner ** 2) / (outer + inner);
  return [0, (-(2 / 3) * thirds * Math.sin(half)) / half];
}

/** The largest circle: between the two rims where the sides leave room, else touching both sides and the lower rim. */
export function wallRoom(wall: Wall): Room {
  if (wall.kind === 'rectangle') {
    const radiusMm = Math.min(Math.PI * wall.lower.radiusMm, wall.slantMm / 2);
    return { centre: wallCentroid(wall), radiusMm };
  }
  const sine = Math.sin(Math.min(wall.openRad / 2, Math.PI / 2));
  const between = { centreMm: wall.reachMm - wall.slantMm / 2, radiusMm: wall.slantMm / 2 };
  const radiusMm = (wall.reachMm * sine) / (1 + sine);
  const held = { centreMm: wall.reachMm - radiusMm, radiusMm };
  const room = between.centreMm * sine >= between.radiusMm && wall.kind === 'ring-sector' ? between : held;
  return { centre: [0, -room.centreMm], radiusMm: room.radiusMm };
}
