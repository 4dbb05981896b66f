// The shape of a piece as the convex hull of a few primitives. Every solid of the catalogue is convex, so its support
// function, its shadow and its lowest point all come from this one description, exactly, curved or not.

import type { Rotation } from '../kernel/rotation.ts';
import { rotate } from '../kernel/rotation.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { add3, cross3, dot3, length3, scale3, unit3 } from '../kernel/vec.ts';

/** `axis` is a unit vector; of a half ball it points from the flat side to the dome. Lengths in mm. */
export type Primitive =
  | { readonly kind: 'points'; readonly points: readonly Vec3[] }
  | { readonly kind: 'disc'; readonly centre: Vec3; readonly axis: Vec3; readonly radiusMm: number }
  | { readonly kind: 'ball'; readonly centre: Vec3; readonly radiusMm: number }
  | { readonly kind: 'half-ball'; readonly centre: Vec3; readonly axis: Vec3; readonly radiusMm: number };

/** The convex hull of its primitives. */
export type Body = readonly Primitive[];

/** A point of the body that lies furthest along `direction` (not null, any length). */
export function supportPoint(body: Body, direction: Vec3): Vec3 {
  let best: Vec3 = [0, 0, 0];
  let furthest = Number.NEGATIVE_INFINITY;
  for (const primitive of body) {
    const point = primitiveSupport(primitive, direction);
    const reach = dot3(point, direction);
    if (reach > furthest) {
      furthest = reach;
      best = point;
    }
  }
  return best;
}

/** The body turned by `turn` about the origin, then moved by `shift`. */
export function moveBody(body: Body, turn: Rotation, shift: Vec3): Body {
  const move = (p: Vec3): Vec3 => add3(rotate(turn, p), shift);
  return body.map((primitive): Primitive => {
    switch (primitive.kind) {
      case 'points':
        return { kind: 'points', points: primitive.points.map(move) };
      case 'ball':
        return { ...primitive, centre: move(primitive.centre) };
      default:
        return { ...primitive, centre: move(primitive.centre), axis: rotate(turn, primitive.axis) };
    }
  });
}

function primitiveSupport(primitive: Primitive, direction: Vec3): Vec3 {
  switch (primitive.kind) {
    case 'points':
      return furthestOf(primitive.points, direction);
    case 'disc':
      return rimPoint(primitive.centre, primitive.axis, primitive.radiusMm, direction);
    case 'ball':
      return add3(primitive.centre, scale3(direction, primitive.radiusMm / length3(direction)));
    case 'half-ball':
      return dot3(direction, primitive.axis) >= 0
        ? add3(primitive.centre, scale3(direction, primitive.radiusMm / length3(direction)))
        : rimPoint(primitive.centre, primitive.axis, primitive.radiusMm, direction);
  }
}

function furthestOf(points: readonly Vec3[], direction: Vec3): Vec3 {
  let best: Vec3 = [0, 0, 0];
  let furthest = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const reach = dot3(point, direction);
    if (reach > furthest) {
      furthest = reach;
      best = point;
    }
  }
  return best;
}

/**
 * The point of a disc furthest along `direction`; its centre when the disc is square to it. Measured along two vectors
 * in the disc's plane: what is left of `direction` after taking away its share along the axis is only rounding when the
 * disc is nearly square to it, and would lead off the plane.
 */
function rimPoint(centre: Vec3, axis: Vec3, radiusMm: number, direction: Vec3): Vec3 {
  const [u, v] = squareTo(axis);
  const [alongU, alongV] = [dot3(direction, u), dot3(direction, v)];
  const length = Math.hypot(alongU, alongV);
  if (length === 0) return centre;
  return add3(centre, add3(scale3(u, (radiusMm * alongU) / length), scale3(v, (radiusMm * alongV) / length)));
}

/** Two unit vectors square to the unit vector `axis` and to each other. */
function squareTo(axis: Vec3): readonly [Vec3, Vec3] {
  const u = unit3(Math.abs(axis[2]) < Math.abs(axis[0]) ? [-axis[1], axis[0], 0] : [0, -axis[2], axis[1]]);
  return [u, cross3(axis, u)];
}
