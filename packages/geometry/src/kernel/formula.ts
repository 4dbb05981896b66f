// Formulas as data: written once, they give the number, and a screen can show the working from them.
// A formula is an expression over named symbols. A step names its result, the numbers put in, and their units.

export type Unit = 'mm' | 'mm2' | 'mm3' | 'count' | 'rad' | 'ratio' | 's';

export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

export type Expr =
  | { readonly op: 'number'; readonly value: number }
  | { readonly op: 'pi' }
  | { readonly op: 'symbol'; readonly name: string }
  | { readonly op: 'sum'; readonly terms: readonly Expr[] }
  | { readonly op: 'product'; readonly terms: readonly Expr[] }
  | { readonly op: 'difference'; readonly from: Expr; readonly less: Expr }
  | { readonly op: 'fraction'; readonly over: Expr; readonly under: Expr }
  | { readonly op: 'power'; readonly base: Expr; readonly exponent: 2 | 3 }
  | { readonly op: 'root'; readonly of: Expr }
  | { readonly op: 'sin' | 'cos' | 'tan'; readonly of: Expr };

/** One line of a working: `symbol` = `formula` with `inputs` put in = `result`. */
export interface Step {
  readonly symbol: string;
  readonly formula: Expr;
  readonly inputs: Readonly<Record<string, Quantity>>;
  readonly result: Quantity;
}

/**
 * The value of `expr` with its symbols replaced by `values`.
 * `pi` is handed in, so that a class that counts with 3.14 gets the same number from the same formula.
 * Throws RangeError when a symbol has no value: a formula and its inputs belong together in one file.
 */
export function evaluate(expr: Expr, values: Readonly<Record<string, number>>, pi: number = Math.PI): number {
  const of = (e: Expr): number => evaluate(e, values, pi);
  switch (expr.op) {
    case 'number':
      return expr.value;
    case 'pi':
      return pi;
    case 'symbol':
      return symbolValue(expr.name, values);
    case 'sum':
      return expr.terms.reduce((total, term) => total + of(term), 0);
    case 'product':
      return expr.terms.reduce((total, term) => total * of(term), 1);
    case 'difference':
      return of(expr.from) - of(expr.less);
    case 'fraction':
      return of(expr.over) / of(expr.under);
    case 'power':
      return of(expr.base) ** expr.exponent;
    case 'root':
      return Math.sqrt(of(expr.of));
    case 'sin':
      return Math.sin(of(expr.of));
    case 'cos':
      return Math.cos(of(expr.of));
    case 'tan':
      return Math.tan(of(expr.of));
  }
}

function symbolValue(name: string, values: Readonly<Record<string, number>>): number {
  const value = values[name];
  if (value === undefined) throw new RangeError(`no value for the symbol ${name}`);
  return value;
}

/** The formula with `change` made at every place in it, from the innermost outwards. */
export function rewritten(expr: Expr, change: (part: Expr) => Expr): Expr {
  const inside = (part: Expr): Expr => rewritten(part, change);
  switch (expr.op) {
    case 'number':
    case 'pi':
    case 'symbol':
      return change(expr);
    case 'sum':
    case 'product':
      return change({ ...expr, terms: expr.terms.map(inside) });
    case 'difference':
      return change({ ...expr, from: inside(expr.from), less: inside(expr.less) });
    case 'fraction':
      return change({ ...expr, over: inside(expr.over), under: inside(expr.under) });
    case 'power':
      return change({ ...expr, base: inside(expr.base) });
    default:
      return change({ ...expr, of: inside(expr.of) });
  }
}

/** A step worked out: evaluates the formula on the inputs and records all of it. */
export function step(symbol: string, formula: Expr, inputs: Readonly<Record<string, Quantity>>, unit: Unit): Step {
  const values = Object.fromEntries(Object.entries(inputs).map(([name, q]) => [name, q.value]));
  return { symbol, formula, inputs, result: { value: evaluate(formula, values), unit } };
}

// Short names for writing formulas down.
export const num = (value: number): Expr => ({ op: 'number', value });
export const PI: Expr = { op: 'pi' };
export const sym = (name: string): Expr => ({ op: 'symbol', name });
export const sum = (...terms: readonly Expr[]): Expr => ({ op: 'sum', terms });
export const times = (...terms: readonly Expr[]): Expr => ({ op: 'product', terms });
export const minus = (from: Expr, less: Expr): Expr => ({ op: 'difference', from, less });
export const over = (above: Expr, under: Expr): Expr => ({ op: 'fraction', over: above, under });
export const squared = (base: Expr): Expr => ({ op: 'power', base, exponent: 2 });
export const cubed = (base: Expr): Expr => ({ op: 'power', base, exponent: 3 });
export const root = (of: Expr): Expr => ({ op: 'root', of });
export const tan = (of: Expr): Expr => ({ op: 'tan', of });
export const sin = (of: Expr): Expr => ({ op: 'sin', of });
export const cos = (of: Expr): Expr => ({ op: 'cos', of });
