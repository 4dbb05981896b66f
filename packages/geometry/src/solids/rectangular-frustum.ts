// Frustum of a pyramid over a rectangle (mm): the pyramid cut level, so the top is similar to the base and its width
// follows from its length, w2 = w x l2 / l. Volume: Moscow papyrus, problem 14. s1 is the slant height up the faces on
// the length, s2 up those on the width; the sides are four trapezia. `topWidth` may be given in place of `topLength`.

import { minus, num, over, sum, sym, times } from '../kernel/formula.ts';
import { prismBetween, rectangle } from './bands.ts';
import { defineSolid } from './define.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField, notUpsideDown } from './sizes.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { FRUSTUM_SURFACE, FRUSTUM_VOLUME, resultOf, slantOver, work } from './working.ts';

const [l, w, l2, w2] = [sym('l'), sym('w'), sym('l2'), sym('w2')] as const;
const halfOf = (from: typeof l, less: typeof l) => over(minus(from, less), num(2));
const ENDS: readonly Line[] = [
  ['w2', over(times(w, l2), l), 'mm'],
  ['B1', times(l, w), 'mm2'],
  ['B2', times(l2, w2), 'mm2'],
];

export const rectangularFrustum = defineSolid<'length' | 'width' | 'topLength' | 'height'>({
  id: 'rectangular-frustum',
  fields: [
    lengthField('length'),
    lengthField('width'),
    { name: 'topLength', unit: 'mm', ways: { topWidth: { times: ({ length, width }) => length / width } } },
    {
      name: 'height',
      unit: 'mm',
      ways: {
        slantLength: { run: ({ length, width, topLength }) => (width * (1 - topLength / length)) / 2 },
        slantWidth: { run: ({ length, topLength }) => (length - topLength) / 2 },
        slantEdge: {
          run: ({ length, width, topLength }) => (Math.hypot(length, width) * (1 - topLength / length)) / 2,
        },
      },
    },
  ],
  example: { length: 70, width: 50, topLength: 42, height: 60 },
  rules: ({ length, topLength }) => notUpsideDown('topLength', topLength, length),
  build: ({ length, width, topLength, height }) => {
    const sizes = { l: mm(length), w: mm(width), l2: mm(topLength), h: mm(height) };
    const surface = work(sizes, [
      ...ENDS,
      slantOver('s1', halfOf(w, w2)),
      slantOver('s2', halfOf(l, l2)),
      ['L', sum(times(sum(l, l2), sym('s1')), times(sum(w, w2), sym('s2'))), 'mm2'],
      FRUSTUM_SURFACE,
    ]);
    const top = rectangle(topLength, resultOf(surface, 'w2'), height);
    return flatFaced(prismBetween(rectangle(length, width, 0), top), {
      volume: work(sizes, [...ENDS, FRUSTUM_VOLUME]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: length === width ? resultOf(surface, 's1') : null,
      hasBase: true,
      sides: { base: 0, top: 1, 'side-length': 2, 'side-width': 3 },
    });
  },
});
