// Unions with a known area and perimeter: closed forms and values worked out elsewhere, each with its source; any unit.
// "quadrature": worked out outside this project with 40 digits and held against quadrature. "lattice": polygons on whole
// numbers, by hand and by Pick's theorem. W: Weisstein, "Circle-Circle Intersection" (CRC Concise Encyclopedia).

import type { Outline, Vec2 } from '@cairnmark/geometry';
import { box, disc, moved, ngon, polygon, shift, turn } from './outline-shapes.ts';

export interface UnionFigure {
  readonly name: string;
  readonly source: string;
  readonly outlines: readonly Outline[];
  readonly area: number;
  readonly outer: number;
  readonly inner: number;
}

const { PI, sin, cos, sqrt } = Math;
const ring = (...points: Vec2[]): Outline => polygon(points);

/** A ring with a round hole, both as polygons of `n` corners, traced as one line that goes in and out at one place. */
export function tracedAnnulus(radius: number, hole: number, n: number): Outline {
  const around = (r: number): Vec2[] =>
    Array.from({ length: n + 1 }, (_, k): Vec2 => [r * cos((2 * PI * k) / n), r * sin((2 * PI * k) / n)]);
  return polygon([...around(radius), ...around(hole).reverse()]);
}

const annulus = (radius: number, hole: number, n: number): UnionFigure => ({
  name: `a traced ring of ${n} corners, radii ${radius} and ${hole}`,
  source: 'regular polygons, closed form',
  outlines: [tracedAnnulus(radius, hole, n)],
  area: (n / 2) * sin((2 * PI) / n) * (radius ** 2 - hole ** 2),
  outer: 2 * n * sin(PI / n) * radius,
  inner: 2 * n * sin(PI / n) * hole,
});

const lens = (r1: number, r2: number, d: number, area: number, outer: number): UnionFigure => ({
  name: `circles ${r1} and ${r2}, centres ${d} apart`,
  source: 'W, quadrature',
  outlines: [disc(0, 0, r1), disc(d, 0, r2)],
  area,
  outer,
  inner: 0,
});

const regular = (n: number, area: number): UnionFigure => ({
  name: `regular polygon, ${n} sides of 1`,
  source: 'quadrature',
  outlines: [ngon(3, 5, 1 / (2 * sin(PI / n)), n, 0.7)],
  area,
  outer: n,
  inner: 0,
});

const lattice = (name: string, outlines: readonly Outline[], area: number, outer: number, inner = 0): UnionFigure => ({
  name,
  source: 'lattice',
  outlines,
  area,
  outer,
  inner,
});

export const UNION_FIGURES: readonly UnionFigure[] = [
  lens(1, 1, 1, 5.05481560857083, 8.37758040957278),
  lens(1, 2, 2, 14.3048968282632, 14.1918817370965),
  lens(5, 5, 6, 134.714871779409, 44.2859487117636),
  lens(3, 4, 5, 71.8981416370378, 33.2705169719012),
  lens(2, 3, 3.5, 37.26120137242, 23.668808360179),
  lens(1, 3, 10, 10 * PI, 8 * PI),
  lens(1, 1, 0.807945506599034, (3 * PI) / 2, 7.94660769433898),
  {
    name: 'three unit discs through each other’s centres',
    source: 'quadrature; perimeter three half circles',
    outlines: [disc(0, 0, 1), disc(1, 0, 1), disc(0.5, sqrt(3) / 2, 1)],
    area: 6.44443978795357,
    outer: 3 * PI,
    inner: 0,
  },
  {
    name: 'square of 2 with a unit disc on a corner',
    source: 'closed form',
    outlines: [box(-1, -1, 2, 2), disc(1, 1, 1)],
    area: 4 + (3 * PI) / 4,
    outer: 6 + (3 * PI) / 2,
    inner: 0,
  },
  {
    name: 'square of 2 crossed eight times by a disc of 1.2',
    source: 'quadrature',
    outlines: [box(-1, -1, 2, 2), disc(0, 0, 1.2)],
    area: 4.72024889802887,
    outer: 8.31598155262001,
    inner: 0,
  },
  {
    name: 'running track, 105 by 68 with round ends',
    source: 'closed form',
    outlines: [box(0, 0, 105, 68), disc(0, 34, 34), disc(105, 34, 34)],
    area: 105 * 68 + PI * 34 ** 2,
    outer: 210 + 2 * PI * 34,
    inner: 0,
  },
  {
    name: 'window 6 by 12 with a round top',
    source: 'OpenStax Contemporary Mathematics prints the perimeter as 39.4',
    outlines: [box(0, 0, 6, 12), disc(3, 12, 3)],
    area: 72 + 4.5 * PI,
    outer: 30 + 3 * PI,
    inner: 0,
  },
  annulus(5, 2, 30),
  annulus(10, 9, 100),
  regular(3, 0.433012701892219),
  regular(5, 1.72047740058897),
  regular(6, 2.59807621135332),
  regular(8, 4.82842712474619),
  regular(10, 7.69420884293813),
  regular(12, 11.1961524227066),
  regular(100, 795.512898844349),
  lattice('triangle 3-4-5', [ring([0, 0], [4, 0], [0, 3])], 6, 12),
  lattice('L, clockwise', [ring([0, 0], [0, 6], [3, 6], [3, 3], [6, 3], [6, 0])], 27, 24),
  lattice('dart', [ring([0, 0], [4, 0], [1, 1], [0, 4])], 4, 14.3245553203368),
  lattice(
    'pentagon (from memory: a textbook example)',
    [ring([3, 4], [5, 11], [12, 8], [9, 5], [5, 6])],
    30,
    26.0900564326276,
  ),
  lattice('pentagon 2', [ring([2, 1], [4, 5], [7, 8], [9, 3], [5, 0])], 29, 22.2622191094217),
  lattice('U fort, traced', [ring([0, 0], [10, 0], [10, 8], [7, 8], [7, 3], [3, 3], [3, 8], [0, 8])], 60, 46),
  lattice('U fort of three boxes', [box(0, 0, 10, 3), box(0, 0, 3, 8), box(7, 3, 3, 5)], 60, 46),
  lattice(
    'plus of five cells',
    [
      [2, 0],
      [0, 2],
      [2, 2],
      [4, 2],
      [2, 4],
    ].map(([x = 0, y = 0]) => box(x, y, 2, 2)),
    20,
    24,
  ),
  lattice('two squares of 4 overlapping 2 by 2', [box(0, 0, 4, 4), box(2, 2, 4, 4)], 28, 24),
  lattice(
    'four walls, 10 by 8, 1 thick',
    [box(0, 0, 10, 1), box(0, 7, 10, 1), box(0, 1, 1, 6), box(9, 1, 1, 6)],
    32,
    36,
    28,
  ),
  {
    name: 'hexagram of two triangles of side 3',
    source: 'closed form',
    outlines: [ngon(0, 0, sqrt(3), 3, 0.4), ngon(0, 0, sqrt(3), 3, 0.4 + PI)],
    area: 3 * sqrt(3),
    outer: 12,
    inner: 0,
  },
  {
    name: 'five-pointed star traced in one stroke',
    source: 'ten triangles at the centre, closed form',
    outlines: [moved(polygon(ngon(0, 0, 5, 5, 0).points.map((_, k, all) => all[(2 * k) % 5]!)), shift(3, 7))],
    area: 25 * 5 * sin(PI / 5) * starInner(),
    outer: 10 * 5 * sqrt(1 + starInner() ** 2 - 2 * starInner() * cos(PI / 5)),
    inner: 0,
  },
  {
    name: 'four boxes meeting corner to corner round a hole, turned',
    source: 'closed form',
    outlines: [box(0, 0, 3, 3), box(6, 0, 3, 3), box(3, 3, 3, 3), box(3, -3, 3, 3)].map((one) => moved(one, turn(0.3))),
    area: 36,
    outer: 36,
    inner: 12,
  },
  {
    name: 'six tangent unit discs round a hole',
    source: 'closed form: half of each rim on either side, less a sixth',
    outlines: Array.from({ length: 6 }, (_, k) => disc(2 * cos((k * PI) / 3), 2 * sin((k * PI) / 3), 1)),
    area: 6 * PI,
    outer: 8 * PI,
    inner: 4 * PI,
  },
];

/** Distance of the inner corners of a five-pointed star over that of its points. */
function starInner(): number {
  return cos((2 * PI) / 5) / cos(PI / 5);
}
