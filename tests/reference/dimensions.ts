// Second look at a formula: its dimension. A length times an area must come out as a volume, and a sum must add like to
// like. A formula with a factor left out or a wrong power fails here without any number being known.

import type { Expr, Unit } from '@cairnmark/geometry';

/** Powers of a millimetre. Angles and counts have none. */
export const DIMENSION: Readonly<Record<Unit, number>> = { mm: 1, mm2: 2, mm3: 3, count: 0, rad: 0, ratio: 0, s: 0 };

/** The power of a millimetre that `formula` has; throws when it adds unlike things or takes the sine of a length. */
export function dimensionOf(formula: Expr, units: Readonly<Record<string, Unit>>): number {
  const of = (expr: Expr): number => dimensionOf(expr, units);
  switch (formula.op) {
    case 'number':
    case 'pi':
      return 0;
    case 'symbol': {
      const unit = units[formula.name];
      if (unit === undefined) throw new Error(`no unit for ${formula.name}`);
      return DIMENSION[unit];
    }
    case 'sum':
      return alike(formula.terms.map(of));
    case 'difference':
      return alike([of(formula.from), of(formula.less)]);
    case 'product':
      return formula.terms.reduce((total, term) => total + of(term), 0);
    case 'fraction':
      return of(formula.over) - of(formula.under);
    case 'power':
      return of(formula.base) * formula.exponent;
    case 'root':
      return of(formula.of) / 2;
    case 'sin':
    case 'cos':
    case 'tan':
      return alike([0, of(formula.of)]);
  }
}

function alike(dimensions: readonly number[]): number {
  const [first = 0, ...others] = dimensions;
  if (others.some((dimension) => dimension !== first)) throw new Error(`unlike terms: ${dimensions.join(', ')}`);
  return first;
}
