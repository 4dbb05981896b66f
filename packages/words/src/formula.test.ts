import type { Expr } from '@cairnmark/geometry';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulaText } from './formula.ts';

const num = (value: number): Expr => ({ op: 'number', value });
const sym = (name: string): Expr => ({ op: 'symbol', name });
const sum = (...terms: Expr[]): Expr => ({ op: 'sum', terms });
const times = (...terms: Expr[]): Expr => ({ op: 'product', terms });
const minus = (from: Expr, less: Expr): Expr => ({ op: 'difference', from, less });
const over = (above: Expr, under: Expr): Expr => ({ op: 'fraction', over: above, under });
const power = (base: Expr, exponent: 2 | 3): Expr => ({ op: 'power', base, exponent });
const root = (of: Expr): Expr => ({ op: 'root', of });
const PI: Expr = { op: 'pi' };
const [a, b, h, r] = [sym('a'), sym('b'), sym('h'), sym('r')];

const symbols = (expr: Expr): string => formulaText(expr, (name) => ({ text: name, apart: false }), '.');

describe('a formula in symbols', () => {
  it('is written as in a school book', () => {
    expect(symbols(times(over(num(1), num(3)), sym('B'), h))).toBe('1/3 × B × h');
    expect(symbols(times(over(num(4), num(3)), PI, power(r, 3)))).toBe('4/3 × π × r³');
    expect(symbols(root(sum(power(h, 2), power(over(a, num(2)), 2))))).toBe('√(h² + (a / 2)²)');
    expect(symbols(times(num(0.5), sum(a, b), h))).toBe('0.5 × (a + b) × h');
    expect(symbols({ op: 'tan', of: over(PI, sym('n')) })).toBe('tan(π / n)');
  });

  it('has parentheses where the order of operations needs them', () => {
    expect(symbols(minus(a, minus(b, h)))).toBe('a − (b − h)');
    expect(symbols(minus(minus(a, b), h))).toBe('a − b − h');
    expect(symbols(minus(a, sum(b, h)))).toBe('a − (b + h)');
    expect(symbols(minus(a, times(num(2), b)))).toBe('a − 2 × b');
    expect(symbols(over(a, times(num(2), b)))).toBe('a / (2 × b)');
    expect(symbols(over(sum(a, b), num(2)))).toBe('(a + b) / 2');
    expect(symbols(over(a, over(b, h)))).toBe('a / (b / h)');
    expect(symbols(times(a, num(-3)))).toBe('a × (−3)');
    expect(symbols(power(power(a, 2), 3))).toBe('(a²)³');
    expect(symbols(power(sum(a, b), 2))).toBe('(a + b)²');
    expect(symbols(over(num(-1), num(3)))).toBe('(−1) / 3');
  });
});

describe('a formula with numbers put in', () => {
  it('keeps a number with a unit together under a power', () => {
    const put = (name: string) => ({ text: name === 'n' ? '5' : '2.5 cm', apart: name !== 'n' });
    expect(formulaText(times(PI, power(r, 2)), put, '.')).toBe('π × (2.5 cm)²');
    expect(formulaText(power(sym('n'), 2), put, '.')).toBe('5²');
  });
});

describe('the order of operations', () => {
  const leaf = fc.oneof(fc.constantFrom(a, b, h, r), fc.integer({ min: -5, max: 9 }).map(num));
  const { formula } = fc.letrec<{ formula: Expr }>((tie) => ({
    formula: fc.oneof(
      { maxDepth: 4 },
      leaf,
      fc.array(tie('formula'), { minLength: 2, maxLength: 3 }).map((terms) => sum(...terms)),
      fc.array(tie('formula'), { minLength: 2, maxLength: 3 }).map((terms) => times(...terms)),
      fc.tuple(tie('formula'), tie('formula')).map(([x, y]) => minus(x, y)),
      fc.tuple(tie('formula'), tie('formula')).map(([x, y]) => over(x, y)),
      fc.tuple(tie('formula'), fc.constantFrom(2 as const, 3 as const)).map(([x, e]) => power(x, e)),
      tie('formula').map(root),
    ),
  }));

  it('is that of the tree: the text, read by the rules of arithmetic, has the same value (seed 5305)', () => {
    fc.assert(
      fc.property(formula, (expr) => {
        const [byTree, byText] = [valueOf(expr), valueOfText(symbols(expr))];
        // Sums in another order differ in the last places; not a number and infinity agree with themselves.
        return Object.is(byTree, byText) || Math.abs(byTree - byText) <= 1e-9 * Math.max(Math.abs(byTree), 1);
      }),
      { seed: 5305, numRuns: 500 },
    );
  });
});

const VALUES: Readonly<Record<string, number>> = { a: 1.75, b: 2.5, h: 3.25, r: 0.625 };

function valueOf(expr: Expr): number {
  switch (expr.op) {
    case 'number':
      return expr.value;
    case 'symbol':
      return VALUES[expr.name] ?? Number.NaN;
    case 'sum':
      return expr.terms.map(valueOf).reduce((total, value) => total + value, 0);
    case 'product':
      return expr.terms.map(valueOf).reduce((total, value) => total * value, 1);
    case 'difference':
      return valueOf(expr.from) - valueOf(expr.less);
    case 'fraction':
      return valueOf(expr.over) / valueOf(expr.under);
    case 'power':
      return valueOf(expr.base) ** expr.exponent;
    case 'root':
      return Math.sqrt(valueOf(expr.of));
    default:
      return Number.NaN;
  }
}

/** The text as a line of JavaScript, whose order of operations is that of arithmetic. */
function valueOfText(text: string): number {
  const line = text
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '**2')
    .replaceAll('³', '**3')
    .replaceAll('√', 'Math.sqrt');
  return new Function(...Object.keys(VALUES), `return ${line};`)(...Object.values(VALUES));
}
