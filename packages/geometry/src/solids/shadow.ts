// The shadow that a convex body throws straight down: its outline seen from above, mm, on the plane of the table.
// Points, edge-on discs and upright round ones are exact. A tilted disc throws an ellipse (semi-axes r and r x cosine
// of the tilt); it and round arcs beside corners are drawn as a polygon of ROUND_CORNERS corners on the whole curve.

import { convexHull } from '../kernel/hull.ts';
import type { Outline } from '../kernel/outline.ts';
import { AXIS_NOISE, HULL_NOISE_RELATIVE, ROUND_OUTLINE_RELATIVE } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add2, flatten, length2, scale2, sub2 } from '../kernel/vec.ts';
import type { Body, Primitive } from './body.ts';

/**
 * Corners on a whole circle or ellipse. The polygon has the area of the curve: for n corners they stand outside it by
 * pi^2 / 3n^2 of the radius, and its perimeter is too long by at most as much. That gives n from the tolerance; the
 * multiple of four puts corners on the axes.
 */
export const ROUND_CORNERS = 4 * Math.ceil(Math.PI / Math.sqrt(3 * ROUND_OUTLINE_RELATIVE) / 4);
const STEP_RAD = (2 * Math.PI) / ROUND_CORNERS;
/** Corners stand this factor outside the curve, so that each triangle to the centre has the area of its sector. */
const EQUAL_AREA = Math.sqrt(STEP_RAD / Math.sin(STEP_RAD));

/** The outline of `body` from above: a true disc where it is one, else a polygon without doubled or idle corners. */
export function shadow(body: Body): Outline {
  const disc = body.map(discShadow).find((candidate) => candidate !== null && covers(candidate, body));
  if (disc !== undefined && disc !== null) return disc;
  const points = body.flatMap(shadowPoints);
  const size = points.reduce((most, p) => Math.max(most, Math.abs(p[0]), Math.abs(p[1])), 0);
  return { kind: 'polygon', points: convexHull(points, size * HULL_NOISE_RELATIVE) };
}

type Disc = Extract<Outline, { kind: 'disc' }>;

function discShadow(primitive: Primitive): Disc | null {
  if (primitive.kind === 'points') return null;
  const upright = primitive.kind === 'ball' || length2(flatten(primitive.axis)) <= AXIS_NOISE;
  return upright ? { kind: 'disc', centre: flatten(primitive.centre), radiusMm: primitive.radiusMm } : null;
}

function covers(disc: Disc, body: Body): boolean {
  const reach = (p: Vec3): number => length2(sub2(flatten(p), disc.centre));
  const furthest = body.flatMap((primitive) =>
    primitive.kind === 'points' ? primitive.points.map(reach) : [reach(primitive.centre) + primitive.radiusMm],
  );
  return furthest.every((distance) => distance <= disc.radiusMm * (1 + HULL_NOISE_RELATIVE));
}

function shadowPoints(primitive: Primitive): readonly Vec2[] {
  const whole = 2 * Math.PI;
  switch (primitive.kind) {
    case 'points':
      return primitive.points.map(flatten);
    case 'ball': {
      const r = primitive.radiusMm;
      return arc(flatten(primitive.centre), [r, 0], [0, r], 0, whole);
    }
    case 'disc': {
      const { centre, across, along, squash } = tilted(primitive);
      if (squash <= AXIS_NOISE) return [add2(centre, across), sub2(centre, across)];
      return arc(centre, across, scale2(along, squash), 0, whole);
    }
    case 'half-ball': {
      // On the side that the dome leans to, the ball; on the other, the rim.
      const { centre, across, along, squash } = tilted(primitive);
      return [
        ...arc(centre, across, along, 0, whole / 2),
        ...arc(centre, across, scale2(along, squash), whole / 2, whole),
      ];
    }
  }
}

/**
 * The plan of a tilted circle: two radii at right angles, `across` the tilt (true length) and `along` it, the way the
 * axis leans, which is seen shortened by `squash`.
 */
function tilted({ centre, axis, radiusMm }: { centre: Vec3; axis: Vec3; radiusMm: number }): {
  readonly centre: Vec2;
  readonly across: Vec2;
  readonly along: Vec2;
  readonly squash: number;
} {
  const lean = length2(flatten(axis));
  const [x, y] = lean > AXIS_NOISE ? scale2(flatten(axis), 1 / lean) : [0, 1];
  return {
    centre: flatten(centre),
    across: [y * radiusMm, -x * radiusMm],
    along: [x * radiusMm, y * radiusMm],
    squash: Math.abs(axis[2]),
  };
}

/** Points of centre + cos t u + sin t v, for t in steps from `fromRad` to `toRad`. */
function arc(centre: Vec2, u: Vec2, v: Vec2, fromRad: number, toRad: number): readonly Vec2[] {
  const steps = Math.round((toRad - fromRad) / STEP_RAD);
  return Array.from({ length: steps + 1 }, (_, k) => {
    const t = fromRad + k * STEP_RAD;
    return add2(centre, add2(scale2(u, EQUAL_AREA * Math.cos(t)), scale2(v, EQUAL_AREA * Math.sin(t))));
  });
}
