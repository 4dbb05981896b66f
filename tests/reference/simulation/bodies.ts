// The table and the pieces of a build as bodies of the simulation. Masses in grams, lengths in its units.

import type { OwnMass, PlacedPiece, Stack, Vec3 } from '@cairnmark/geometry';
import { bodyBox, scale3, sub3 } from '@cairnmark/geometry';
import Rapier from '@dimforge/rapier3d-compat';
import { colliderOf, inUnits, SKIN_MM, touching, UNIT_MM } from './colliders.ts';
import { partsOf } from './parts.ts';
import type { Pose } from './pose.ts';
import { AT_REST, turnOf } from './pose.ts';

export interface Build {
  readonly stack: Stack;
  readonly massOf: (piece: PlacedPiece) => OwnMass;
  /** Coefficient of friction of a piece or of the table; of two that touch the smaller counts. */
  readonly frictionOf: (touching: PlacedPiece | 'table') => number;
}

export function tableIn(world: Rapier.World, { frictionOf }: Build): void {
  const table = world.createRigidBody(Rapier.RigidBodyDesc.fixed());
  const [side, half] = [3000, 100];
  const block = Rapier.ColliderDesc.cuboid(...inUnits([side, side, half]));
  const below = block.setTranslation(...inUnits([0, 0, -half - SKIN_MM]));
  world.createCollider(touching(below, 'whole', frictionOf('table')), table);
}

export function bodyIn(world: Rapier.World, piece: PlacedPiece, { massOf, frictionOf }: Build): Rapier.RigidBody {
  const { massG, centre } = massOf(piece);
  const description = Rapier.RigidBodyDesc.dynamic()
    .setTranslation(...inUnits(piece.shift))
    .setRotation(turnOf(piece.rotation))
    .setCanSleep(false)
    .setAdditionalMassProperties(massG, vector(inUnits(centre)), inertiaOf(piece, massG), AT_REST.turn);
  const body = world.createRigidBody(description);
  for (const part of partsOf(piece)) world.createCollider(colliderOf(part, piece.solid, frictionOf(piece)), body);
  return body;
}

export function poseOf(body: Rapier.RigidBody): Pose {
  const { x, y, z } = body.translation();
  return { place: scale3([x, y, z], UNIT_MM), turn: body.rotation() };
}

/** As of a box of its size about its own axes: how fast a piece falls hangs on it, whether it falls does not. */
function inertiaOf({ solid }: PlacedPiece, massG: number): Rapier.Vector {
  const { min, max } = bodyBox(solid.body);
  const [xx, yy, zz] = inUnits(sub3(max, min)).map((length) => (massG * length ** 2) / 12) as unknown as Vec3;
  return vector([yy + zz, zz + xx, xx + yy]);
}

const vector = ([x, y, z]: Vec3): Rapier.Vector => ({ x, y, z });
