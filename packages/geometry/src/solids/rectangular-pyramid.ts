// Pyramid over a rectangle, apex above its middle, mm. It has two slant heights: s1 up the faces that stand on the
// length, s2 up those on the width. A pupil may give either in place of the height: `slantLength`, `slantWidth`.
// Volume: Euclid, Elements XII.7; the sides are four triangles.

import { num, over, sum, sym, times } from '../kernel/formula.ts';
import { pyramidOver, rectangle } from './bands.ts';
import { defineSolid } from './define.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField } from './sizes.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { PYRAMID_SURFACE, PYRAMID_VOLUME, resultOf, slantOver, work } from './working.ts';

const [l, w] = [sym('l'), sym('w')] as const;
const BASE: Line = ['B', times(l, w), 'mm2'];

export const rectangularPyramid = defineSolid<'length' | 'width' | 'height'>({
  id: 'rectangular-pyramid',
  fields: [
    lengthField('length'),
    lengthField('width'),
    {
      name: 'height',
      unit: 'mm',
      ways: {
        slantLength: { run: ({ width }) => width / 2 },
        slantWidth: { run: ({ length }) => length / 2 },
        slantEdge: { run: ({ length, width }) => Math.hypot(length, width) / 2 },
      },
    },
  ],
  example: { length: 70, width: 50, height: 60 },
  build: ({ length, width, height }) => {
    const sizes = { l: mm(length), w: mm(width), h: mm(height) };
    const surface = work(sizes, [
      BASE,
      slantOver('s1', over(w, num(2))),
      slantOver('s2', over(l, num(2))),
      ['L', sum(times(l, sym('s1')), times(w, sym('s2'))), 'mm2'],
      PYRAMID_SURFACE,
    ]);
    return flatFaced(pyramidOver(rectangle(length, width, 0), [0, 0, height]), {
      volume: work(sizes, [BASE, PYRAMID_VOLUME]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: length === width ? resultOf(surface, 's1') : null,
      hasBase: true,
      sides: { base: 0, 'side-length': 1, 'side-width': 2 },
    });
  },
});
