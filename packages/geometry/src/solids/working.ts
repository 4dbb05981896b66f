// Workings: the trade's formulas as data, written once, from which come both the number and the lines on the screen.
// Symbols: a, b edges; l, w, h length, width, height; r, R radii; s slant; B base area, P perimeter of the base,
// L lateral area, S surface, V volume; n sides of a regular polygon and t half the angle that one side takes (180/n).

import type { Expr, Quantity, Step, Unit } from '../kernel/formula.ts';
import { num, over, PI, root, squared, step, sum, sym, times } from '../kernel/formula.ts';

/** A line still to be worked out: `symbol` = `formula`, in `unit`. */
export type Line = readonly [symbol: string, formula: Expr, unit: Unit];

/** Works the lines out from the top; each may use the sizes and the results above it. */
export function work(sizes: Readonly<Record<string, Quantity>>, lines: readonly Line[]): readonly Step[] {
  let known = sizes;
  return lines.map(([symbol, formula, unit]) => {
    const used = symbolsOf(formula);
    const inputs = Object.fromEntries(Object.entries(known).filter(([name]) => used.has(name)));
    const done = step(symbol, formula, inputs, unit);
    known = { ...known, [symbol]: done.result };
    return done;
  });
}

/** The result of the line for `symbol`. Throws RangeError when the working has none: they belong in one file. */
export function resultOf(steps: readonly Step[], symbol: string): number {
  const found = steps.find((line) => line.symbol === symbol);
  if (found === undefined) throw new RangeError(`no step for the symbol ${symbol}`);
  return found.result.value;
}

export const count = (value: number): Quantity => ({ value, unit: 'count' });
export const rad = (value: number): Quantity => ({ value, unit: 'rad' });

const [B, B1, B2, L, P, h, r, s] = [
  sym('B'),
  sym('B1'),
  sym('B2'),
  sym('L'),
  sym('P'),
  sym('h'),
  sym('r'),
  sym('s'),
] as const;
const HALF = over(num(1), num(2));
const THIRD = over(num(1), num(3));

// Lines that several solids share. Sources: OpenStax Prealgebra 2e, section 9.6 (prism, cylinder); Euclid, Elements
// XII.7 and XII.10 (pyramid and cone are a third); Moscow papyrus, problem 14 (frustum).
export const PRISM_VOLUME: Line = ['V', times(B, h), 'mm3'];
export const PRISM_LATERAL: Line = ['L', times(P, h), 'mm2'];
export const PRISM_SURFACE: Line = ['S', sum(times(num(2), B), L), 'mm2'];
export const PYRAMID_VOLUME: Line = ['V', times(THIRD, B, h), 'mm3'];
export const PYRAMID_LATERAL: Line = ['L', times(HALF, P, s), 'mm2'];
export const PYRAMID_SURFACE: Line = ['S', sum(B, L), 'mm2'];
export const FRUSTUM_VOLUME: Line = ['V', times(THIRD, h, sum(B1, root(times(B1, B2)), B2)), 'mm3'];
export const FRUSTUM_SURFACE: Line = ['S', sum(B1, B2, L), 'mm2'];
/** B = pi x r^2. */
export const DISC_BASE: Line = ['B', times(PI, squared(r)), 'mm2'];

/** The long side of a right triangle over `run` and the height h: a slant. */
export const slantOver = (symbol: string, run: Expr): Line => [symbol, root(sum(squared(h), squared(run))), 'mm'];

function symbolsOf(formula: Expr): ReadonlySet<string> {
  switch (formula.op) {
    case 'number':
    case 'pi':
      return new Set();
    case 'symbol':
      return new Set([formula.name]);
    case 'sum':
    case 'product':
      return new Set(formula.terms.flatMap((term) => [...symbolsOf(term)]));
    case 'difference':
      return new Set([...symbolsOf(formula.from), ...symbolsOf(formula.less)]);
    case 'fraction':
      return new Set([...symbolsOf(formula.over), ...symbolsOf(formula.under)]);
    case 'power':
      return symbolsOf(formula.base);
    default:
      return symbolsOf(formula.of);
  }
}
