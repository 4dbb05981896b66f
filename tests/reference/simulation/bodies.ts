// The table and the pieces of a build as bodies of the simulation. Masses in grams; one of its units of length is 100 mm.

import type { OwnMass, PlacedPiece, Stack, Vec3 } from '@cairnmark/geometry';
import { bodyBox, scale3, sub3 } from '@cairnmark/geometry';
import Rapier from '@dimforge/rapier3d-compat';
import type { Part, Shape } from './parts.ts';
import { partsOf } from './parts.ts';
import type { Pose } from './pose.ts';
import { AT_REST, turnOf } from './pose.ts';

export interface Build {
  readonly stack: Stack;
  readonly massOf: (piece: PlacedPiece) => OwnMass;
  /** Coefficient of friction of a piece or of the table; of two that touch the smaller counts. */
  readonly frictionOf: (touching: PlacedPiece | 'table') => number;
}

/** mm. The engine's own tolerances suit bodies of about one unit: in metres builds sag five times as far. */
export const UNIT_MM = 100;

export function tableIn(world: Rapier.World, { frictionOf }: Build): void {
  const table = world.createRigidBody(Rapier.RigidBodyDesc.fixed());
  const [side, thickness] = [3000 / UNIT_MM, 100 / UNIT_MM];
  const top = Rapier.ColliderDesc.cuboid(side, side, thickness).setTranslation(0, 0, -thickness);
  world.createCollider(touching(top, frictionOf('table'), 'whole'), table);
}

export function bodyIn(world: Rapier.World, piece: PlacedPiece, { massOf, frictionOf }: Build): Rapier.RigidBody {
  const { massG, centre } = massOf(piece);
  const description = Rapier.RigidBodyDesc.dynamic()
    .setTranslation(...inUnits(piece.shift))
    .setRotation(turnOf(piece.rotation))
    .setCanSleep(false)
    .setAdditionalMassProperties(massG, vector(inUnits(centre)), inertiaOf(piece, massG), AT_REST.turn);
  const body = world.createRigidBody(description);
  for (const { role, shape } of partsOf(piece)) {
    world.createCollider(touching(shapeOf(shape), frictionOf(piece), role), body);
  }
  return body;
}

export function poseOf(body: Rapier.RigidBody): Pose {
  const { x, y, z } = body.translation();
  return { place: scale3([x, y, z], UNIT_MM), turn: body.rotation() };
}

/** No mass of its own, no bounce, the smaller friction of the two, and the other parts that its role lets it meet. */
function touching(shape: Rapier.ColliderDesc, friction: number, role: Part['role']): Rapier.ColliderDesc {
  return shape
    .setDensity(0)
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

function shapeOf(shape: Shape): Rapier.ColliderDesc {
  if (shape.kind === 'hull') {
    const hull = Rapier.ColliderDesc.convexHull(new Float32Array(shape.points.flatMap(inUnits)));
    if (hull === null) throw new RangeError('a part without a body');
    return hull;
  }
  const [radius, half] = [shape.radiusMm / UNIT_MM, shape.heightMm / UNIT_MM / 2];
  const round = {
    ball: () => Rapier.ColliderDesc.ball(radius),
    cylinder: () => Rapier.ColliderDesc.cylinder(half, radius),
    cone: () => Rapier.ColliderDesc.cone(half, radius),
  };
  return round[shape.kind]().setTranslation(0, 0, half).setRotation(FROM_Y_TO_Z);
}

/** The engine's round shapes stand along y. */
const FROM_Y_TO_Z = { x: Math.SQRT1_2, y: 0, z: 0, w: Math.SQRT1_2 };

/** As of a box of its size about its own axes: how fast a piece falls hangs on it, whether it falls does not. */
function inertiaOf({ solid }: PlacedPiece, massG: number): Rapier.Vector {
  const { min, max } = bodyBox(solid.body);
  const [xx, yy, zz] = inUnits(sub3(max, min)).map((length) => (massG * length ** 2) / 12) as unknown as Vec3;
  return vector([yy + zz, zz + xx, xx + yy]);
}

const inUnits = (lengthsMm: Vec3): Vec3 => scale3(lengthsMm, 1 / UNIT_MM);
const vector = ([x, y, z]: Vec3): Rapier.Vector => ({ x, y, z });
