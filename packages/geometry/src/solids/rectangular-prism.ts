// Rectangular prism (cuboid, box), mm: length along x, width along y, height up. Formulas: OpenStax Prealgebra 2e,
// section 9.6. On its long side it is as high as it is wide, on its short side as high as it is long.

import { num, sum, sym, times } from '../kernel/formula.ts';
import { prismBetween, rectangle } from './bands.ts';
import { defineSolid } from './define.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField } from './sizes.ts';
import { mm } from './types.ts';
import { PRISM_LATERAL, PRISM_SURFACE, resultOf, work } from './working.ts';

const [l, w, h] = [sym('l'), sym('w'), sym('h')] as const;

export const rectangularPrism = defineSolid<'length' | 'width' | 'height'>({
  id: 'rectangular-prism',
  fields: [lengthField('length'), lengthField('width'), lengthField('height')],
  example: { length: 70, width: 50, height: 30 },
  build: ({ length, width, height }) => {
    const sizes = { l: mm(length), w: mm(width), h: mm(height) };
    const surface = work(sizes, [
      ['B', times(l, w), 'mm2'],
      ['P', times(num(2), sum(l, w)), 'mm'],
      PRISM_LATERAL,
      PRISM_SURFACE,
    ]);
    return flatFaced(prismBetween(rectangle(length, width, 0), rectangle(length, width, height)), {
      volume: work(sizes, [['V', times(l, w, h), 'mm3']]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: null,
      hasBase: true,
      sides: { base: 0, 'long-side': 2, 'short-side': 3 },
    });
  },
});
