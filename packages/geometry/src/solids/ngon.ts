// Regular polygons: the numbers that place their corners (mm) and the formulas that pupils write for them.
// n sides of length a; t is half the angle one side takes at the centre, so tan t = (a / 2) / in-radius.
// It is put in as an angle (180 / n degrees), so that a class's own value of pi leaves polygons alone.

import type { Expr, Quantity } from '../kernel/formula.ts';
import { num, over, root, squared, sym, tan, times } from '../kernel/formula.ts';
import { count, rad } from './working.ts';

/** Centre to corner. */
export const circumradius = (sides: number, edgeMm: number): number => edgeMm / (2 * Math.sin(Math.PI / sides));

/** Centre to the middle of a side. */
export const inradius = (sides: number, edgeMm: number): number => edgeMm / (2 * Math.tan(Math.PI / sides));

/** n and t, as every formula below needs them. */
export const ngonQuantities = (sides: number): Readonly<Record<'n' | 't', Quantity>> => ({
  n: count(sides),
  t: rad(Math.PI / sides),
});

/** Area: the form that schools know for 3, 4 and 6 sides, else n a^2 / (4 tan t). */
export function ngonArea(sides: number, edge: Expr): Expr {
  if (sides === 3) return times(over(root(num(3)), num(4)), squared(edge));
  if (sides === 4) return squared(edge);
  if (sides === 6) return times(over(times(num(3), root(num(3))), num(2)), squared(edge));
  return over(times(sym('n'), squared(edge)), times(num(4), tan(sym('t'))));
}

/** In-radius of a polygon of this edge, likewise. */
export function ngonInradius(sides: number, edge: Expr): Expr {
  if (sides === 3) return times(over(root(num(3)), num(6)), edge);
  if (sides === 4) return over(edge, num(2));
  if (sides === 6) return times(over(root(num(3)), num(2)), edge);
  return over(edge, times(num(2), tan(sym('t'))));
}
