// Frustum of a pyramid over a regular polygon (mm): n sides of length a below, b above. d is how far each side leans
// in: the in-radius of a polygon of side a - b. Volume: Moscow papyrus, problem 14; the sides are n trapezia.

import { minus, num, over, sum, sym, times } from '../kernel/formula.ts';
import { prismBetween, ring } from './bands.ts';
import { defineSolid } from './define.ts';
import { circumradius, inradius, ngonArea, ngonInradius, ngonQuantities } from './ngon.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField, notUpsideDown, SIDES_FIELD } from './sizes.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { FRUSTUM_SURFACE, FRUSTUM_VOLUME, resultOf, slantOver, work } from './working.ts';

const [a, b, d, n, s, P1, P2] = [sym('a'), sym('b'), sym('d'), sym('n'), sym('s'), sym('P1'), sym('P2')] as const;

export const regularFrustum = defineSolid<'sides' | 'edge' | 'topEdge' | 'height'>({
  id: 'regular-frustum',
  fields: [
    SIDES_FIELD,
    lengthField('edge'),
    lengthField('topEdge'),
    {
      name: 'height',
      unit: 'mm',
      ways: {
        slant: { run: ({ sides, edge, topEdge }) => inradius(sides, edge - topEdge) },
        slantEdge: { run: ({ sides, edge, topEdge }) => circumradius(sides, edge - topEdge) },
      },
    },
  ],
  example: { sides: 5, edge: 50, topEdge: 30, height: 70 },
  rules: ({ edge, topEdge }) => notUpsideDown('topEdge', topEdge, edge),
  build: ({ sides, edge, topEdge, height }) => {
    const sizes = { ...ngonQuantities(sides), a: mm(edge), b: mm(topEdge), h: mm(height) };
    const ends: readonly Line[] = [
      ['B1', ngonArea(sides, a), 'mm2'],
      ['B2', ngonArea(sides, b), 'mm2'],
    ];
    const surface = work(sizes, [
      ...ends,
      ['d', ngonInradius(sides, minus(a, b)), 'mm'],
      slantOver('s', d),
      ['P1', times(n, a), 'mm'],
      ['P2', times(n, b), 'mm'],
      ['L', times(over(num(1), num(2)), sum(P1, P2), s), 'mm2'],
      FRUSTUM_SURFACE,
    ]);
    const base = ring(sides, circumradius(sides, edge), 0);
    return flatFaced(prismBetween(base, ring(sides, circumradius(sides, topEdge), height)), {
      volume: work(sizes, [...ends, FRUSTUM_VOLUME]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: resultOf(surface, 's'),
      hasBase: true,
      sides: { base: 0, top: 1, side: 2 },
    });
  },
});
