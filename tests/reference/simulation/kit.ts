// The pieces of the random stacks: lopsided solids of most kinds, of foam and of paper, so that they weigh alike within a
// factor of three (a light piece under a heavy one sags in the simulation). mm.

import type { Material, SolidSpec } from '@cairnmark/geometry';
import { OPEN_SHELL, SHELL } from '../judged-builds.ts';
import { box, cone, cube, cylinder, sphere } from '../stacked-builds.ts';

export interface KitPiece {
  readonly spec: SolidSpec;
  readonly resting: string;
  readonly material: Material;
  readonly friction: number;
  /** How far from the middle of its level top others are put, mm; 0 for what ends in a point or is round above. */
  readonly topMm: number;
}

const FOAM: Material = { kind: 'full', densityGPerCm3: 0.04 };

/** What is round is of foam: paper would dent where it rolls, and no statics of stiff bodies is claimed for that. */
export const KIT: Readonly<Record<string, KitPiece>> = {
  cube: { spec: cube(40), resting: 'base', material: FOAM, friction: 0.5, topMm: 20 },
  block: { spec: box(50, 30, 40), resting: 'base', material: SHELL, friction: 0.35, topMm: 20 },
  post: { spec: box(25, 30, 70), resting: 'base', material: SHELL, friction: 0.5, topMm: 13 },
  slab: { spec: box(70, 50, 15), resting: 'base', material: FOAM, friction: 0.4, topMm: 30 },
  lintel: { spec: box(130, 30, 15), resting: 'base', material: FOAM, friction: 0.45, topMm: 40 },
  wedge: piece('triangular-prism', { a: 45, b: 40, c: 50, height: 40 }, OPEN_SHELL, 0.4, 14),
  five: piece('regular-prism', { sides: 5, edge: 26, height: 25 }, FOAM, 0.4, 18),
  nut: piece('regular-prism', { sides: 6, edge: 22, height: 40 }, SHELL, 0.45, 20),
  stump: piece('rectangular-frustum', { length: 55, width: 45, topLength: 35, height: 30 }, FOAM, 0.4, 17),
  bollard: piece('cone-frustum', { radius: 24, topRadius: 15, height: 35 }, FOAM, 0.5, 15),
  drum: { spec: cylinder(20, 40), resting: 'base', material: FOAM, friction: 0.4, topMm: 20 },
  roof: piece('rectangular-pyramid', { length: 50, width: 40, height: 35 }, SHELL, 0.4, 0),
  spire: piece('regular-pyramid', { sides: 6, edge: 18, height: 50 }, OPEN_SHELL, 0.45, 0),
  hat: { spec: cone(18, 40), resting: 'base', material: FOAM, friction: 0.4, topMm: 0 },
  log: { spec: cylinder(14, 60), resting: 'side', material: FOAM, friction: 0.4, topMm: 0 },
  ball: { spec: sphere(17), resting: 'round', material: FOAM, friction: 0.4, topMm: 0 },
};

export const TABLE_FRICTION = 0.5;

function piece(
  solid: SolidSpec['solid'],
  sizes: SolidSpec['sizes'],
  material: Material,
  friction: number,
  topMm: number,
): KitPiece {
  return { spec: { solid, sizes }, resting: 'base', material, friction, topMm };
}

/** The kind of that name. */
export function kindOf(name: string): KitPiece {
  const kind = KIT[name];
  if (kind === undefined) throw new RangeError(`no ${name} in the kit`);
  return kind;
}
