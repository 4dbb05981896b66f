// Regular tetrahedron of edge a, mm, on a face: the triangular pyramid with all edges equal.
// Formulas: Weisstein, MathWorld (from memory), held against the values of an independent table in the tests.

import { cubed, num, over, root, squared, sym, times } from '../kernel/formula.ts';
import { pyramidOver, ring } from './bands.ts';
import { defineSolid } from './define.ts';
import { circumradius } from './ngon.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField } from './sizes.ts';
import { mm } from './types.ts';
import { work } from './working.ts';

const a = sym('a');

export const tetrahedron = defineSolid<'edge'>({
  id: 'tetrahedron',
  fields: [lengthField('edge')],
  example: { edge: 70 },
  build: ({ edge }) =>
    flatFaced(pyramidOver(ring(3, circumradius(3, edge), 0), [0, 0, Math.sqrt(2 / 3) * edge]), {
      volume: work({ a: mm(edge) }, [['V', times(over(root(num(2)), num(12)), cubed(a)), 'mm3']]),
      surface: work({ a: mm(edge) }, [['S', times(root(num(3)), squared(a)), 'mm2']]),
      lateralMm2: ((3 * Math.sqrt(3)) / 4) * edge ** 2,
      slantMm: (Math.sqrt(3) / 2) * edge,
      hasBase: true,
      sides: { face: 0 },
    }),
});
