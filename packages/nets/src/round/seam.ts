// The tab that closes the wall of a round solid: along its right side, glued behind the left one. mm, rad.

import type { Vec2, Vec3 } from '@cairnmark/geometry';
import { add3, cross2, scale3, sub2 } from '@cairnmark/geometry';
import type { NetTab } from '../net.ts';
import { straightPath } from '../path/path.ts';
import type { TabShape } from '../tabs/tab-shape.ts';
import { deepestMm, tabShape } from '../tabs/tab-shape.ts';
import { DEEPEST_SHARE, SCISSORS_GAP_RAD, STEEPEST_BEVEL_RAD } from '../tolerance.ts';
import type { Wall } from './wall.ts';
import { onSheet, onSolid } from './wall.ts';

export function seamTab(wall: Wall, wallFace: number, tabDepthMm: number): NetTab {
  const shape = seamShape(wall, tabDepthMm);
  const landing = shape.ring.map((corner) => onLeftSide(wall, corner));
  return {
    kind: 'flap',
    outline: straightPath(shape.ring, true),
    areaMm2: shape.areaMm2,
    depthMm: shape.depthMm,
    host: wallFace,
    mate: wallFace,
    landing,
    centroid: curledCentroid(wall, landing),
  };
}

/** At the tip of a cone the tab shares the turn with the sector, and must land within it too. */
function seamShape(wall: Wall, tabDepthMm: number): TabShape {
  const [a, b] = [onSheet(wall, 1, 0), onSheet(wall, 1, wall.slantMm)];
  const round = roundTip(wall);
  const atB = wall.kind === 'sector' ? Math.min(STEEPEST_BEVEL_RAD, round) : STEEPEST_BEVEL_RAD;
  const bevels = { atA: STEEPEST_BEVEL_RAD, atB };
  let depthMm = Math.min(tabDepthMm, DEEPEST_SHARE * wall.slantMm, deepestMm(wall.slantMm, bevels));
  if (wall.kind === 'rectangle') depthMm = Math.min(depthMm, Math.PI * wall.lower.radiusMm);
  const alongMm = wall.reachMm - wall.slantMm;
  while (wall.kind === 'ring-sector' && Math.atan2(depthMm, alongMm + depthMm / Math.tan(atB)) > round)
    depthMm *= SHRINK;
  return tabShape(a, b, bevels, depthMm);
}

const SHRINK = 0.9;

/** The angle at the tip of the cone that a tab may take: what the sector leaves, less a gap, and no more than the sector. */
function roundTip({ openRad }: Wall): number {
  const free = 2 * Math.PI - openRad;
  return Math.min(openRad, Math.max(free - SCISSORS_GAP_RAD, free / 2));
}

/** From the right side of the wall to the left one: once round. */
function onLeftSide(wall: Wall, [x, y]: Vec2): Vec2 {
  if (wall.kind === 'rectangle') return [x - 2 * Math.PI * wall.lower.radiusMm, y];
  const [cos, sin] = [Math.cos(wall.openRad), Math.sin(wall.openRad)];
  return [cos * x + sin * y, cos * y - sin * x];
}

/**
 * The centre of a trapezoid curled with the wall, by Gauss's rule with five points each way: on a cylinder exact to
 * rounding, at the tip of a cone, where the wall is no smooth surface, to a few thousandths of a millimetre. Nodes and weights: Abramowitz and Stegun, table 25.4 (from memory).
 */
function curledCentroid(wall: Wall, [a, farA, farB, b]: readonly Vec2[]): Vec3 {
  if (a === undefined || farA === undefined || farB === undefined || b === undefined)
    throw new RangeError('no trapezoid');
  let [areaMm2, moment]: [number, Vec3] = [0, [0, 0, 0]];
  for (const [s, across] of GAUSS) {
    for (const [t, up] of GAUSS) {
      const [near, far] = [between(a, b, s), between(farA, farB, s)];
      const alongNear = between(sub2(b, a), sub2(farB, farA), t);
      const weight = across * up * Math.abs(cross2(alongNear, sub2(far, near)));
      areaMm2 += weight;
      moment = add3(moment, scale3(onSolid(wall, between(near, far, t)), weight));
    }
  }
  return scale3(moment, 1 / areaMm2);
}

const GAUSS: readonly (readonly [at: number, weight: number])[] = [
  [-0.906179845938664, 0.236926885056189],
  [-0.538469310105683, 0.478628670499366],
  [0, 0.568888888888889],
  [0.538469310105683, 0.478628670499366],
  [0.906179845938664, 0.236926885056189],
].map(([x = 0, w = 0]) => [(1 + x) / 2, w / 2]);

const between = (a: Vec2, b: Vec2, share: number): Vec2 => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
