// A kind of piece to begin with, when a solid is added: sizes that paper makes and a hand can hold, in whole steps of the
// class's ruler (half cm, or quarter inches), and a name, number and material that go with the rest of the kit.

import type { ClassRecord, KindOfPiece, Kit } from '@cairnmark/engine';
import { USUAL_FOAM, USUAL_PAPER } from '@cairnmark/engine';
import type { Ruler, Sizes, SolidId, SolidSpec } from '@cairnmark/geometry';
import { CATALOGUE, MM_PER_INCH, makeSolid } from '@cairnmark/geometry';
import { idFor } from '../../store/ids.ts';

/** All solids, in the order of the catalogue. */
export const SOLIDS = Object.keys(CATALOGUE) as readonly SolidId[];

export const usualSolid = (solid: SolidId, ruler: Ruler): SolidSpec => ({ solid, sizes: usualSizes(solid, ruler) });

/** `name`: the solid's own. */
export function newKind(record: ClassRecord, kit: Kit, solid: SolidSpec, name: string): KindOfPiece {
  const [pattern] = kit.kinds.filter(({ material }) => material.kind === 'folded-paper');
  const made = rolls(solid) ? USUAL_FOAM : { ...USUAL_PAPER, ...(pattern === undefined ? {} : stuffOf(pattern)) };
  return { id: idFor(name, kindIds(record), 'kind'), name: freeName(name, kit), solid, stock: STOCK, ...made };
}

/** Kinds of other challenges have ids too, and groups have measured them. */
const kindIds = ({ challenges, groups }: ClassRecord): ReadonlySet<string> =>
  new Set([
    ...challenges.flatMap(({ kit }) => kit.kinds.map(({ id }) => id)),
    ...groups.flatMap(({ measured }) => Object.keys(measured)),
  ]);

function freeName(name: string, { kinds }: Kit): string {
  const taken = new Set(kinds.map((kind) => kind.name));
  let [free, number] = [name, 2];
  while (taken.has(free)) {
    free = `${name} ${number}`;
    number += 1;
  }
  return free;
}

const stuffOf = ({ material, surface, friction }: KindOfPiece) => ({ material, surface, friction });

/** What cannot be cut from flat paper comes as foam. */
function rolls(spec: SolidSpec): boolean {
  const made = makeSolid(spec);
  return made.ok && made.value.curvedSurfaces.some(({ net }) => net === 'none');
}

/** As many as one group needs. */
const STOCK = 4;
function usualSizes(solid: SolidId, { unit }: Ruler): Sizes {
  const stepMm = unit === 'in' ? MM_PER_INCH / 4 : HALF_CM_MM;
  return Object.fromEntries(
    Object.entries(STEPS[solid]).map(([name, steps]) => [name, name === 'sides' ? steps : steps * stepMm]),
  );
}

const HALF_CM_MM = 5;

/** In half centimetres or quarter inches; `sides` is a count. */
const STEPS: Readonly<Record<SolidId, Sizes>> = {
  cube: { edge: 10 },
  'rectangular-prism': { length: 16, width: 10, height: 6 },
  'triangular-prism': { a: 10, b: 12, c: 14, height: 16 },
  'regular-prism': { sides: 6, edge: 6, height: 14 },
  'rectangular-pyramid': { length: 14, width: 10, height: 12 },
  'regular-pyramid': { sides: 4, edge: 12, height: 12 },
  'rectangular-frustum': { length: 16, width: 12, topLength: 8, height: 10 },
  'regular-frustum': { sides: 4, edge: 12, topEdge: 8, height: 10 },
  tetrahedron: { edge: 14 },
  octahedron: { edge: 12 },
  dodecahedron: { edge: 6 },
  icosahedron: { edge: 8 },
  antiprism: { sides: 4, edge: 8 },
  cuboctahedron: { edge: 8 },
  cylinder: { diameter: 10, height: 16 },
  cone: { diameter: 10, height: 16 },
  'cone-frustum': { diameter: 14, topDiameter: 8, height: 10 },
  sphere: { diameter: 10 },
  hemisphere: { diameter: 12 },
};
