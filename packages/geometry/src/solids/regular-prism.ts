// Prism over a regular polygon of n sides of length a, mm. Formulas: OpenStax Prealgebra 2e, section 9.6 (V = Bh).

import { sym, times } from '../kernel/formula.ts';
import { prismBetween, ring } from './bands.ts';
import { defineSolid } from './define.ts';
import { circumradius, ngonArea, ngonQuantities } from './ngon.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField, SIDES_FIELD } from './sizes.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { PRISM_LATERAL, PRISM_SURFACE, PRISM_VOLUME, resultOf, work } from './working.ts';

const [a, n] = [sym('a'), sym('n')] as const;

export const regularPrism = defineSolid<'sides' | 'edge' | 'height'>({
  id: 'regular-prism',
  fields: [SIDES_FIELD, lengthField('edge'), lengthField('height')],
  example: { sides: 5, edge: 30, height: 70 },
  build: ({ sides, edge, height }) => {
    const sizes = { ...ngonQuantities(sides), a: mm(edge), h: mm(height) };
    const base: Line = ['B', ngonArea(sides, a), 'mm2'];
    const surface = work(sizes, [base, ['P', times(n, a), 'mm'], PRISM_LATERAL, PRISM_SURFACE]);
    const radius = circumradius(sides, edge);
    return flatFaced(prismBetween(ring(sides, radius, 0), ring(sides, radius, height)), {
      volume: work(sizes, [base, PRISM_VOLUME]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: null,
      hasBase: true,
      sides: { base: 0, side: 2 },
    });
  },
});
