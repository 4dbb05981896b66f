// The round cone of Coulomb friction as a cone with flat sides: a few edges, all on the true cone, so that it never
// promises more than the friction gives. With 48 edges it gives at least cos(pi / 48) = 0.998 of it in any direction.

import { CONE_EDGES } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add3, cross3, scale3, unit3 } from '../kernel/vec.ts';

export interface ConeChoice {
  /** How many edges stand for the round cone of friction. */
  readonly edges: number;
  /** One edge points this way in plan, rad. */
  readonly turnRad: number;
}

/** As good as round; one edge of every cone points along `turnRad` in plan. */
export const frictionCone = (turnRad: number): ConeChoice => ({ edges: CONE_EDGES, turnRad });

/**
 * Edges of the cone about the unit vector `normal`, each with normal part 1 and tangential part `friction`. Without
 * friction the cone is the normal alone.
 */
export function coneEdges(normal: Vec3, friction: number, { edges, turnRad }: ConeChoice): readonly Vec3[] {
  if (friction === 0) return [normal];
  const [first, second] = alongSurface(normal, turnRad);
  return Array.from({ length: edges }, (_, k) => {
    const [x, y] = leanOf(k, edges);
    const lean = add3(scale3(first, x), scale3(second, y));
    return add3(normal, scale3(lean, friction));
  });
}

/** Two unit vectors along the surface, square to each other; the first leans towards `turnRad` in plan. */
export function alongSurface(normal: Vec3, turnRad: number): readonly [Vec3, Vec3] {
  const towards: Vec3 = [Math.cos(turnRad), Math.sin(turnRad), 0];
  const across = cross3(normal, Math.abs(normal[2]) > 0.1 ? towards : [0, 0, 1]);
  const second = unit3(across);
  return [cross3(second, normal), second];
}

/** Which way edge `k` leans along the surface: shares of the two vectors of `alongSurface`. */
export function leanOf(k: number, edges: number): Vec2 {
  const angle = (2 * Math.PI * k) / edges;
  return [Math.cos(angle), Math.sin(angle)];
}
