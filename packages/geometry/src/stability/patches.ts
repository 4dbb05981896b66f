// From "this piece rests on that one" to the patch through which the force goes: what the upper piece turns down and what
// the lower one turns up along the contact normal, laid over each other in the plane of contact. Frame of the table, mm.

import { convexHull } from '../kernel/hull.ts';
import { FEATURE_MM, SAME_POINT_MM } from '../kernel/tolerance.ts';
import type { Vec2, Vec3 } from '../kernel/vec.ts';
import { add3, cross3, dot3, length3, scale3, sub3, unit3 } from '../kernel/vec.ts';
import type { PlacedPiece, Stack, Support } from '../stack/types.ts';
import { commonPart } from './common-part.ts';
import { featureAlong, RIM_CORNERS } from './feature.ts';
import type { Disc, Patch } from './types.ts';

/** One patch a support; a support whose surfaces miss each other by rounding alone gives the nearest point. */
export function patchesOf(stack: Stack, frictionOf: (support: Support) => number): readonly Patch[] {
  return stack.supports.map((support) => {
    const { upper, lower, normal } = support;
    const down = featureAlong(pieceAt(stack, upper).body, scale3(normal, -1), FEATURE_MM);
    const friction = frictionOf(support);
    const rollsUpper = down.curved ? [upper] : [];
    if (lower === 'table') {
      const points = hullIn(planeAt(normal, down.points), down.points);
      return { upper, lower, normal, friction, points, disc: down.disc, rolling: rollsUpper };
    }
    const up = featureAlong(pieceAt(stack, lower).body, normal, FEATURE_MM);
    const plane = planeAt(normal, up.points);
    const shared = commonPart(flat(plane, down.points), flat(plane, up.points));
    const points = shared.map((point) => raise(plane, point));
    const disc =
      down.disc !== null && up.disc !== null
        ? smallerDisc(down.disc, up.disc, normal, points)
        : wholeDisc(down.disc ?? up.disc, normal, points);
    return { upper, lower, normal, friction, points, disc, rolling: up.curved ? [...rollsUpper, lower] : rollsUpper };
  });
}

/**
 * The one of two discs that lies wholly on the other, at the height of the contact. Their corners may not say so: those of
 * equal discs need not lie on each other.
 */
function smallerDisc(down: Disc, up: Disc, normal: Vec3, points: readonly Vec3[]): Disc | null {
  const [small, large] = down.radiusMm <= up.radiusMm ? [down, up] : [up, down];
  const between = sub3(large.centre, small.centre);
  const asideMm = length3(sub3(between, scale3(normal, dot3(normal, between))));
  return asideMm + small.radiusMm <= large.radiusMm + ON_RIM_MM ? atContact(small, normal, points) : null;
}

/** The disc, at the height of the contact, when all of it is there: every corner of the contact lies on its rim. */
function wholeDisc(disc: Disc | null, normal: Vec3, points: readonly Vec3[]): Disc | null {
  if (disc === null || points.length !== RIM_CORNERS) return null;
  const raised = atContact(disc, normal, points);
  return points.every((point) => Math.abs(length3(sub3(point, raised.centre)) - disc.radiusMm) <= ON_RIM_MM)
    ? raised
    : null;
}

function atContact({ centre, radiusMm }: Disc, normal: Vec3, [first = centre]: readonly Vec3[]): Disc {
  return { centre: add3(centre, scale3(normal, dot3(normal, sub3(first, centre)))), radiusMm };
}

/** mm. Rounding of a corner that was turned, moved and laid into a plane. */
const ON_RIM_MM = 1e-9;

interface Plane {
  readonly origin: Vec3;
  readonly first: Vec3;
  readonly second: Vec3;
}

/** A right-handed frame in the plane square to `normal` through the first of the points. */
function planeAt(normal: Vec3, points: readonly Vec3[]): Plane {
  const [origin] = points;
  if (origin === undefined) throw new RangeError('a body has a point that reaches furthest');
  const aside: Vec3 = Math.abs(normal[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0];
  const second = unit3(cross3(normal, aside));
  return { origin, first: cross3(second, normal), second };
}

const flat = (plane: Plane, points: readonly Vec3[]): readonly Vec2[] => {
  const to = (point: Vec3): Vec2 => {
    const from = sub3(point, plane.origin);
    return [dot3(from, plane.first), dot3(from, plane.second)];
  };
  const shadow = points.map(to);
  const hull = convexHull(shadow, SAME_POINT_MM);
  return hull.length > 0 ? hull : shadow.slice(0, 1);
};

const raise = (plane: Plane, point: Vec2): Vec3 =>
  add3(plane.origin, add3(scale3(plane.first, point[0]), scale3(plane.second, point[1])));

const hullIn = (plane: Plane, points: readonly Vec3[]): readonly Vec3[] =>
  flat(plane, points).map((point) => raise(plane, point));

/** The piece of that index. */
export function pieceAt(stack: Stack, index: number): PlacedPiece {
  const piece = stack.pieces[index];
  if (piece === undefined) throw new RangeError(`no piece ${index}`);
  return piece;
}
