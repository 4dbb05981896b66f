// Pyramid over a regular polygon of n sides of length a, apex above its middle, mm; r is the in-radius of the base.
// Volume: Euclid, Elements XII.7; L = half P times s: Standard Mathematical Tables (from memory), checked in the tests.

import { sym, times } from '../kernel/formula.ts';
import { pyramidOver, ring } from './bands.ts';
import { defineSolid } from './define.ts';
import { circumradius, inradius, ngonArea, ngonInradius, ngonQuantities } from './ngon.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField, SIDES_FIELD } from './sizes.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { PYRAMID_LATERAL, PYRAMID_SURFACE, PYRAMID_VOLUME, resultOf, slantOver, work } from './working.ts';

const [a, n, r] = [sym('a'), sym('n'), sym('r')] as const;

export const regularPyramid = defineSolid<'sides' | 'edge' | 'height'>({
  id: 'regular-pyramid',
  fields: [
    SIDES_FIELD,
    lengthField('edge'),
    {
      name: 'height',
      unit: 'mm',
      ways: {
        slant: { run: ({ sides, edge }) => inradius(sides, edge) },
        slantEdge: { run: ({ sides, edge }) => circumradius(sides, edge) },
      },
    },
  ],
  example: { sides: 5, edge: 30, height: 70 },
  build: ({ sides, edge, height }) => {
    const sizes = { ...ngonQuantities(sides), a: mm(edge), h: mm(height) };
    const base: Line = ['B', ngonArea(sides, a), 'mm2'];
    const surface = work(sizes, [
      base,
      ['r', ngonInradius(sides, a), 'mm'],
      slantOver('s', r),
      ['P', times(n, a), 'mm'],
      PYRAMID_LATERAL,
      PYRAMID_SURFACE,
    ]);
    return flatFaced(pyramidOver(ring(sides, circumradius(sides, edge), 0), [0, 0, height]), {
      volume: work(sizes, [base, PYRAMID_VOLUME]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: resultOf(surface, 's'),
      hasBase: true,
      sides: { base: 0, side: 1 },
    });
  },
});
