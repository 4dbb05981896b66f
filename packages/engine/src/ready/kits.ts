// A kit to begin with: eight solids that a sheet of paper makes and a hand can hold. Their names are words of the class's
// language, and are handed in. Sizes in mm, invented to stack well together.

import type { SolidSpec } from '@cairnmark/geometry';
import { MOST_PIECES } from '@cairnmark/geometry';
import type { KindOfPiece, Kit } from '../types.ts';

export const READY_KINDS = [
  'cube',
  'cuboid',
  'triangular-prism',
  'hexagonal-prism',
  'square-pyramid',
  'cylinder',
  'cone',
  'ball',
] as const;
export type ReadyKind = (typeof READY_KINDS)[number];

/** `groups`: how many share the kit. Each gets what a tower of five or a small wall needs. */
export function readyKit(name: string, kindNames: Readonly<Record<ReadyKind, string>>, groups: number): Kit {
  return {
    id: 'kit',
    name,
    kinds: READY_KINDS.map((id) => kindOf(id, kindNames[id], groups)),
    frictions: [],
  };
}

function kindOf(id: ReadyKind, name: string, groups: number): KindOfPiece {
  const { solid, each } = KINDS[id];
  const made = id === 'ball' ? FOAM : PAPER;
  return { id, name, solid, stock: Math.min(each * groups, MOST_PIECES), ...made };
}

const PAPER = {
  // Thin card, as school printers take it.
  material: { kind: 'folded-paper', gramsPerM2: 160, base: 'closed', printedNet: true },
  surface: 'paper',
  friction: 0.4,
} as const;

/** Paper makes no ball; a bought one is of foam. From memory: about 2.7 g at a diameter of 4 cm. */
const FOAM = { material: { kind: 'full', densityGPerCm3: 0.08 }, surface: 'foam', friction: 0.4 } as const;

const KINDS: Readonly<Record<ReadyKind, { readonly solid: SolidSpec; readonly each: number }>> = {
  cube: { solid: { solid: 'cube', sizes: { edge: 50 } }, each: 4 },
  cuboid: { solid: { solid: 'rectangular-prism', sizes: { length: 50, width: 50, height: 100 } }, each: 3 },
  'triangular-prism': { solid: { solid: 'regular-prism', sizes: { sides: 3, edge: 60, height: 80 } }, each: 3 },
  'hexagonal-prism': { solid: { solid: 'regular-prism', sizes: { sides: 6, edge: 35, height: 70 } }, each: 2 },
  'square-pyramid': { solid: { solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 70 } }, each: 2 },
  cylinder: { solid: { solid: 'cylinder', sizes: { diameter: 50, height: 90 } }, each: 3 },
  cone: { solid: { solid: 'cone', sizes: { diameter: 50, height: 80 } }, each: 2 },
  ball: { solid: { solid: 'sphere', sizes: { diameter: 40 } }, each: 1 },
};
