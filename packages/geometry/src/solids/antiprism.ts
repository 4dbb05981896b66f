// Antiprism with all edges equal, mm: two regular polygons of n sides, the upper turned by half a step, and 2n
// equilateral triangles. Formulas: pages named in the tests (McCooey, Visual Polyhedra, for n = 4). A square antiprism
// is no prism: its volume is not base times height.

import { cos, cubed, minus, num, over, root, sin, squared, sum, sym, times } from '../kernel/formula.ts';
import { antiprismBetween, ring } from './bands.ts';
import { defineSolid } from './define.ts';
import { circumradius, ngonArea, ngonQuantities } from './ngon.ts';
import { flatFaced } from './polyhedron.ts';
import { lengthField, SIDES_FIELD } from './sizes.ts';
import { mm } from './types.ts';
import { resultOf, work } from './working.ts';

const [a, n, t, B, L] = [sym('a'), sym('n'), sym('t'), sym('B'), sym('L')] as const;
const HALF_T = over(t, num(2));
const TRIANGLE = over(times(root(num(3)), squared(a)), num(4));
const VOLUME = times(
  over(
    times(n, root(minus(times(num(4), squared(cos(HALF_T))), num(1))), sin(over(times(num(3), t), num(2)))),
    times(num(12), squared(sin(t))),
  ),
  cubed(a),
);

export const antiprism = defineSolid<'sides' | 'edge'>({
  id: 'antiprism',
  fields: [SIDES_FIELD, lengthField('edge')],
  example: { sides: 5, edge: 30 },
  build: ({ sides, edge }) => {
    const sizes = { ...ngonQuantities(sides), a: mm(edge) };
    const surface = work(sizes, [
      ['B', ngonArea(sides, a), 'mm2'],
      ['L', times(num(2), n, TRIANGLE), 'mm2'],
      ['S', sum(times(num(2), B), L), 'mm2'],
    ]);
    const [radius, step] = [circumradius(sides, edge), Math.PI / sides];
    const top = ring(sides, radius, heightOf(sides, edge), step);
    return flatFaced(antiprismBetween(ring(sides, radius, 0), top), {
      volume: work(sizes, [['V', VOLUME, 'mm3']]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: (Math.sqrt(3) / 2) * edge,
      hasBase: true,
      sides: { base: 0, side: 2 },
    });
  },
});

/** Between the two polygons, so that the triangles come out equilateral. */
const heightOf = (sides: number, edgeMm: number): number =>
  edgeMm * Math.sqrt(1 - 1 / (4 * Math.cos(Math.PI / (2 * sides)) ** 2));
