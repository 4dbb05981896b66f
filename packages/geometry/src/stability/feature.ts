// The part of a body that reaches furthest in a direction: a flat face, an edge or line, or a single point.
// Frame of the table, mm.

import type { Vec3 } from '../kernel/vec.ts';
import { add3, cross3, dot3, scale3, unit3 } from '../kernel/vec.ts';
import type { Body, Primitive } from '../solids/body.ts';
import { supportPoint } from '../solids/body.ts';
import type { Disc } from './types.ts';

export interface Feature {
  /** Points whose hull is the feature. */
  readonly points: readonly Vec3[];
  /** True when the surface is curved there, so that the body can roll over it: no flat face, no straight edge, no corner. */
  readonly curved: boolean;
  /** The circle on which the points lie when the feature is the whole face of a disc. */
  readonly disc: Disc | null;
}

/** Corners that stand for the rim of a disc in a contact. The polygon lies inside the disc: 0.2 % short at the middle of a side. */
export const RIM_CORNERS = 48;

/** What of the body lies within `withinMm` of its furthest reach along the unit vector `direction`. */
export function featureAlong(body: Body, direction: Vec3, withinMm: number): Feature {
  const reach = dot3(supportPoint(body, direction), direction) - withinMm;
  const touching = body
    .map((primitive) => ({
      primitive,
      points: candidates(primitive, direction).filter((point) => dot3(point, direction) >= reach),
    }))
    .filter(({ points }) => points.length > 0);
  const points = touching.flatMap((part) => part.points);
  const [only, ...others] = touching;
  const isFace = only !== undefined && others.length === 0 && points.length === RIM_CORNERS;
  return {
    points,
    curved: points.length < 3 && touching.some(({ primitive }) => primitive.kind !== 'points'),
    disc: isFace && 'axis' in only.primitive ? only.primitive : null,
  };
}

function candidates(primitive: Primitive, direction: Vec3): readonly Vec3[] {
  switch (primitive.kind) {
    case 'points':
      return primitive.points;
    case 'ball':
      return [supportPoint([primitive], direction)];
    case 'disc':
      return rim(primitive, direction);
    case 'half-ball':
      return dot3(direction, primitive.axis) > -FACING
        ? [supportPoint([primitive], direction)]
        : rim(primitive, direction);
  }
}

/** No unit: the cosine from which a disc counts as facing a direction (1e-5 rad). */
const FACING = 1 - 5e-11;

/** The whole rim when the disc faces the direction, else its furthest point. */
function rim(
  disc: { readonly centre: Vec3; readonly axis: Vec3; readonly radiusMm: number },
  direction: Vec3,
): readonly Vec3[] {
  if (Math.abs(dot3(direction, disc.axis)) < FACING) return [supportPoint([{ ...disc, kind: 'disc' }], direction)];
  const aside: Vec3 = Math.abs(disc.axis[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const first = unit3(cross3(disc.axis, aside));
  const second = cross3(disc.axis, first);
  return Array.from({ length: RIM_CORNERS }, (_, k) => {
    const angle = (2 * Math.PI * k) / RIM_CORNERS;
    const out = add3(scale3(first, Math.cos(angle)), scale3(second, Math.sin(angle)));
    return add3(disc.centre, scale3(out, disc.radiusMm));
  });
}
