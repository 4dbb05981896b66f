// The round cone of Coulomb friction as a cone with flat sides: a few edges, all on the true cone, so that it never
// promises more than the friction gives. With 48 edges it gives at least cos(pi / 48) = 0.998 of it in any direction.

import type { Vec3 } from '../kernel/vec.ts';
import { add3, cross3, scale3, unit3 } from '../kernel/vec.ts';

/**
 * Edges of the cone about the unit vector `normal`, each with normal part 1 and tangential part `friction`; one of them
 * leans towards `turnRad` in plan. Without friction the cone is the normal alone; when nothing can slide (infinite
 * friction) it is the half-space over the surface, whose edges are the normal and four directions along the surface.
 */
export function coneEdges(normal: Vec3, friction: number, edges: number, turnRad: number): readonly Vec3[] {
  if (friction === 0) return [normal];
  const towards: Vec3 = [Math.cos(turnRad), Math.sin(turnRad), 0];
  const across = cross3(normal, Math.abs(normal[2]) > 0.1 ? towards : [0, 0, 1]);
  const second = unit3(across);
  const first = cross3(second, normal);
  if (friction === Number.POSITIVE_INFINITY) return [normal, first, scale3(first, -1), second, scale3(second, -1)];
  return Array.from({ length: edges }, (_, k) => {
    const angle = (2 * Math.PI * k) / edges;
    const lean = add3(scale3(first, Math.cos(angle)), scale3(second, Math.sin(angle)));
    return add3(normal, scale3(lean, friction));
  });
}
