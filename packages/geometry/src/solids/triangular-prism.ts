// Prism over any triangle with sides a, b, c, mm; its height is the length of the prism. The base stands about its
// centroid, side c at the front, side a at the right, side b at the left. Area by Heron's formula (Metrica I.8).

import { minus, num, over, root, sum, sym, times } from '../kernel/formula.ts';
import type { Vec3 } from '../kernel/vec.ts';
import { prismBetween } from './bands.ts';
import { defineSolid } from './define.ts';
import { flatFaced } from './polyhedron.ts';
import type { SizesOf } from './sizes.ts';
import { lengthField, SMALLEST_SIZE_MM, sizeIssue } from './sizes.ts';
import type { SizeIssue } from './types.ts';
import { mm } from './types.ts';
import type { Line } from './working.ts';
import { PRISM_LATERAL, PRISM_SURFACE, PRISM_VOLUME, resultOf, work } from './working.ts';

const [a, b, c, P, q] = [sym('a'), sym('b'), sym('c'), sym('P'), sym('q')] as const;
/** Heron: q is half the perimeter. */
const HERON: readonly Line[] = [
  ['P', sum(a, b, c), 'mm'],
  ['q', over(P, num(2)), 'mm'],
  ['B', root(times(q, minus(q, a), minus(q, b), minus(q, c))), 'mm2'],
];

export const triangularPrism = defineSolid<'a' | 'b' | 'c' | 'height'>({
  id: 'triangular-prism',
  fields: [lengthField('a'), lengthField('b'), lengthField('c'), lengthField('height')],
  example: { a: 30, b: 40, c: 50, height: 70 },
  rules: triangleCloses,
  build: (given) => {
    const sizes = { a: mm(given.a), b: mm(given.b), c: mm(given.c), h: mm(given.height) };
    const surface = work(sizes, [...HERON, PRISM_LATERAL, PRISM_SURFACE]);
    const shape = prismBetween(triangle(given, 0), triangle(given, given.height));
    return flatFaced(shape, {
      volume: work(sizes, [...HERON, PRISM_VOLUME]),
      surface,
      lateralMm2: resultOf(surface, 'L'),
      slantMm: null,
      hasBase: true,
      sides: { base: 0, 'side-a': 3, 'side-b': 4, 'side-c': 2 },
    });
  },
});

/** The longest side must be shorter than the other two together, by a length that can be cut from paper. */
function triangleCloses({ a, b, c }: SizesOf<'a' | 'b' | 'c'>): readonly SizeIssue[] {
  const longestMm = Math.max(a, b, c);
  const othersMm = a + b + c - longestMm;
  const gapes = othersMm - longestMm < SMALLEST_SIZE_MM;
  const name = longestMm === c ? 'c' : longestMm === b ? 'b' : 'a';
  return gapes ? [sizeIssue('triangle-impossible', name, { longestMm, othersMm })] : [];
}

/** Corners A, B, C at height `zMm`, about the centroid; AB = c lies at the front, parallel to x. */
function triangle({ a, b, c }: SizesOf<'a' | 'b' | 'c'>, zMm: number): readonly Vec3[] {
  const q = (a + b + c) / 2;
  const height = (2 * Math.sqrt(q * (q - a) * (q - b) * (q - c))) / c;
  const foot = ((b - a) * (b + a) + c ** 2) / (2 * c);
  const [x, y] = [(c + foot) / 3, height / 3];
  return [
    [-x, -y, zMm],
    [c - x, -y, zMm],
    [foot - x, height - y, zMm],
  ];
}
