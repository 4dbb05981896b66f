// Parts of pieces as colliders of the simulation. One of its units of length is 100 mm.

import type { Solid, Vec3 } from '@cairnmark/geometry';
import { add3, bodyBox, scale3, sub3 } from '@cairnmark/geometry';
import Rapier from '@dimforge/rapier3d-compat';
import type { Part, Shape } from './parts.ts';

/** mm. The engine's own tolerances suit bodies of about one unit: in metres the worst of 60 builds sags three times as far. */
export const UNIT_MM = 100;

/**
 * mm. Shapes are made smaller by this all round and carry a skin of that thickness instead. Where faces lie on each other
 * exactly, the engine cannot always tell which way they touch, and kicks pieces aside by millimetres.
 */
export const SKIN_MM = 0.02;

/** A part of the solid, without a mass of its own. */
export function colliderOf({ role, shape }: Part, solid: Solid, friction: number): Rapier.ColliderDesc {
  return touching(shape.kind === 'hull' ? hullOf(shape.points, solid) : roundOf(shape), role, friction);
}

/** No bounce, the smaller friction of the two, and only the other parts that its role lets it meet. */
export function touching(shape: Rapier.ColliderDesc, role: Part['role'], friction: number): Rapier.ColliderDesc {
  return shape
    .setDensity(0)
    .setContactSkin(SKIN_MM / UNIT_MM)
    .setRestitution(0)
    .setFriction(friction)
    .setFrictionCombineRule(Rapier.CoefficientCombineRule.Min)
    .setCollisionGroups(MEETS[role]);
}

/** What a part is, in the upper sixteen bits, and what it meets, in the lower ones: 1 whole, 2 span, 4 wedge. */
const MEETS: Readonly<Record<Part['role'], number>> = {
  whole: 0x0001_0007,
  span: 0x0002_0003,
  wedge: 0x0004_0001,
};

export const inUnits = (lengthsMm: Vec3): Vec3 => scale3(lengthsMm, 1 / UNIT_MM);

/** The box around the solid becomes smaller by the skin on all sides, and all within it in proportion. */
function hullOf(points: readonly Vec3[], { body }: Solid): Rapier.ColliderDesc {
  const { min, max } = bodyBox(body);
  const [middle, half] = [scale3(add3(min, max), 1 / 2), scale3(sub3(max, min), 1 / 2)];
  const shrunk = points.map((point): Vec3 => {
    const [x, y, z] = sub3(point, middle);
    return add3(middle, [x * (1 - SKIN_MM / half[0]), y * (1 - SKIN_MM / half[1]), z * (1 - SKIN_MM / half[2])]);
  });
  const hull = Rapier.ColliderDesc.convexHull(new Float32Array(shrunk.flatMap(inUnits)));
  if (hull === null) throw new RangeError('a part without a body');
  return hull;
}

function roundOf({ kind, radiusMm, heightMm }: Exclude<Shape, { kind: 'hull' }>): Rapier.ColliderDesc {
  const [radius, half] = [(radiusMm - SKIN_MM) / UNIT_MM, (heightMm / 2 - SKIN_MM) / UNIT_MM];
  const round = {
    ball: () => Rapier.ColliderDesc.ball(radius),
    cylinder: () => Rapier.ColliderDesc.cylinder(half, radius),
    cone: () => Rapier.ColliderDesc.cone(half, radius),
  };
  return round[kind]()
    .setTranslation(...inUnits([0, 0, heightMm / 2]))
    .setRotation(FROM_Y_TO_Z);
}

/** The engine's round shapes stand along y. */
const FROM_Y_TO_Z = { x: Math.SQRT1_2, y: 0, z: 0, w: Math.SQRT1_2 };
