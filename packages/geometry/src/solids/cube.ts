// Cube of edge a, mm. Formulas: OpenStax Prealgebra 2e, section 9.6.

import { cubed, num, squared, sym, times } from '../kernel/formula.ts';
import { prismBetween, rectangle } from './bands.ts';
import { defineSolid } from './define.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField } from './sizes.ts';
import { mm } from './types.ts';
import { work } from './working.ts';

const a = sym('a');

export const cube = defineSolid<'edge'>({
  id: 'cube',
  fields: [lengthField('edge')],
  example: { edge: 35 },
  build: ({ edge }) =>
    flatFaced(prismBetween(rectangle(edge, edge, 0), rectangle(edge, edge, edge)), {
      volume: work({ a: mm(edge) }, [['V', cubed(a), 'mm3']]),
      surface: work({ a: mm(edge) }, [['S', times(num(6), squared(a)), 'mm2']]),
      lateralMm2: 4 * edge ** 2,
      slantMm: null,
      hasBase: true,
      sides: { base: 0 },
    }),
});
