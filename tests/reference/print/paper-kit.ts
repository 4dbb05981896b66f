// The nets of a kit of twelve paper solids in whole centimetres, which a class of six groups cuts out. mm.

import type { SolidSpec } from '@cairnmark/geometry';
import { makeSolid } from '@cairnmark/geometry';
import { flattenPath, makeNet } from '@cairnmark/nets';
import type { Item } from '@cairnmark/print';

const SOLIDS: Readonly<Record<string, SolidSpec>> = {
  cube: { solid: 'cube', sizes: { edge: 50 } },
  cuboid: { solid: 'rectangular-prism', sizes: { length: 80, width: 50, height: 30 } },
  'triangular-prism': { solid: 'regular-prism', sizes: { sides: 3, edge: 50, height: 80 } },
  'hexagonal-prism': { solid: 'regular-prism', sizes: { sides: 6, edge: 30, height: 80 } },
  'square-pyramid': { solid: 'rectangular-pyramid', sizes: { length: 50, width: 50, height: 60 } },
  tetrahedron: { solid: 'tetrahedron', sizes: { edge: 70 } },
  octahedron: { solid: 'octahedron', sizes: { edge: 50 } },
  'square-frustum': { solid: 'rectangular-frustum', sizes: { length: 60, width: 60, topLength: 40, height: 50 } },
  cylinder: { solid: 'cylinder', sizes: { diameter: 50, height: 80 } },
  cone: { solid: 'cone', sizes: { diameter: 60, height: 40 } },
  dodecahedron: { solid: 'dodecahedron', sizes: { edge: 30 } },
  icosahedron: { solid: 'icosahedron', sizes: { edge: 40 } },
};

/** mm. Tabs for most hands, and how far straight pieces may be off a curve. */
const [TAB_MM, FLAT_MM] = [8, 0.02];

/** Every piece to cut out, of so many sets. */
export function paperKit(sets: number): readonly Item[] {
  const one = Object.entries(SOLIDS).flatMap(([kind, spec]) => {
    const solid = makeSolid(spec);
    const net = solid.ok ? makeNet(solid.value, { tabDepthMm: TAB_MM }) : solid;
    if (!net.ok) throw new Error(`${kind}: ${JSON.stringify(net.issues)}`);
    return net.value.parts.map(({ cut }, part) => ({ kind, part, outline: flattenPath(cut, FLAT_MM) }));
  });
  return Array.from({ length: sets }, (_, set) =>
    one.map(({ kind, part, outline }) => ({ id: `${kind} ${part + 1}, set ${set + 1}`, kind, outline })),
  ).flat();
}
