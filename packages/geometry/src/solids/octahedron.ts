// Regular octahedron of edge a, mm, on a face: the antiprism over a triangle.
// Formulas: Weisstein, MathWorld (from memory), held against the values of an independent table in the tests.

import { cubed, num, over, root, squared, sym, times } from '../kernel/formula.ts';
import { antiprismBetween, ring } from './bands.ts';
import { defineSolid } from './define.ts';
import { circumradius } from './ngon.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField } from './sizes.ts';
import { mm } from './types.ts';
import { work } from './working.ts';

const a = sym('a');

export const octahedron = defineSolid<'edge'>({
  id: 'octahedron',
  fields: [lengthField('edge')],
  example: { edge: 50 },
  build: ({ edge }) => {
    const radius = circumradius(3, edge);
    const top = ring(3, radius, Math.sqrt(2 / 3) * edge, Math.PI / 3);
    return flatFaced(antiprismBetween(ring(3, radius, 0), top), {
      volume: work({ a: mm(edge) }, [['V', times(over(root(num(2)), num(3)), cubed(a)), 'mm3']]),
      surface: work({ a: mm(edge) }, [['S', times(num(2), root(num(3)), squared(a)), 'mm2']]),
      lateralMm2: null,
      slantMm: null,
      hasBase: false,
      sides: { face: 0 },
    });
  },
});
