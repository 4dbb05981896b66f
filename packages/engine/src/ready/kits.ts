// A kit to begin with: eight solids that a sheet of paper makes and a hand can hold. Their names are words of the class's
// language, and are handed in. Sizes invented to stack well together, round ones for the rulers of the class.

import type { SolidSpec } from '@cairnmark/geometry';
import { MM_PER_INCH, MOST_PIECES } from '@cairnmark/geometry';
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
export function readyKit(
  name: string,
  kindNames: Readonly<Record<ReadyKind, string>>,
  groups: number,
  units: 'cm' | 'in',
): Kit {
  return {
    id: 'kit',
    name,
    kinds: READY_KINDS.map((id) => kindOf(id, kindNames[id], groups, units)),
    frictions: [],
  };
}

function kindOf(id: ReadyKind, name: string, groups: number, units: 'cm' | 'in'): KindOfPiece {
  const { each, [units]: solid } = KINDS[id];
  const made = id === 'ball' ? USUAL_FOAM : USUAL_PAPER;
  return { id, name, solid, stock: Math.min(each * groups, MOST_PIECES), ...made };
}

/** Thin card, as school printers take it; how card grips card is a guess. */
export const USUAL_PAPER = {
  material: { kind: 'folded-paper', gramsPerM2: 160, base: 'closed', printedNet: true },
  surface: 'paper',
  friction: 0.4,
} as const;

/** Paper makes no ball; a bought one is of foam. From memory: about 2.7 g at a diameter of 4 cm. */
export const USUAL_FOAM = { material: { kind: 'full', densityGPerCm3: 0.08 }, surface: 'foam', friction: 0.4 } as const;

/** mm. */
const inches = (count: number): number => count * MM_PER_INCH;

interface ReadySolid {
  readonly cm: SolidSpec;
  /** Of whole, half and quarter inches; no net larger than that of the one in cm by more than a few mm. */
  readonly in: SolidSpec;
  readonly each: number;
}

const KINDS: Readonly<Record<ReadyKind, ReadySolid>> = {
  cube: {
    cm: { solid: 'cube', sizes: { edge: 50 } },
    in: { solid: 'cube', sizes: { edge: inches(2) } },
    each: 4,
  },
  cuboid: {
    cm: { solid: 'rectangular-prism', sizes: { length: 50, width: 50, height: 100 } },
    in: { solid: 'rectangular-prism', sizes: { length: inches(2), width: inches(2), height: inches(4) } },
    each: 3,
  },
  'triangular-prism': {
    cm: { solid: 'regular-prism', sizes: { sides: 3, edge: 60, height: 80 } },
    in: { solid: 'regular-prism', sizes: { sides: 3, edge: inches(2.25), height: inches(3) } },
    each: 3,
  },
  'hexagonal-prism': {
    cm: { solid: 'regular-prism', sizes: { sides: 6, edge: 35, height: 70 } },
    in: { solid: 'regular-prism', sizes: { sides: 6, edge: inches(1.25), height: inches(3) } },
    each: 2,
  },
  'square-pyramid': {
    cm: { solid: 'regular-pyramid', sizes: { sides: 4, edge: 60, height: 70 } },
    in: { solid: 'regular-pyramid', sizes: { sides: 4, edge: inches(2.25), height: inches(2.75) } },
    each: 2,
  },
  cylinder: {
    cm: { solid: 'cylinder', sizes: { diameter: 50, height: 90 } },
    in: { solid: 'cylinder', sizes: { diameter: inches(2), height: inches(3.5) } },
    each: 3,
  },
  cone: {
    cm: { solid: 'cone', sizes: { diameter: 50, height: 80 } },
    in: { solid: 'cone', sizes: { diameter: inches(2), height: inches(3) } },
    each: 2,
  },
  ball: {
    cm: { solid: 'sphere', sizes: { diameter: 40 } },
    in: { solid: 'sphere', sizes: { diameter: inches(1.5) } },
    each: 1,
  },
};
