// A formula as a line of text: "1/3 × B × h". Symbols stand as they are, or with their numbers put in. Parentheses stand
// where the order of operations needs them and nowhere else.

import type { Expr } from '@cairnmark/geometry';
import { trimmed } from './numbers.ts';

/** How tightly an expression holds together, loosest first. */
const LOOSENESS = { sum: 0, product: 1, power: 2, atom: 3 } as const;
type Tightness = (typeof LOOSENESS)[keyof typeof LOOSENESS];

/** What stands for a symbol: its name, or the number put in. `apart` marks one that a power must not cling to. */
export interface Written {
  readonly text: string;
  readonly apart: boolean;
}

interface Piece {
  readonly text: string;
  readonly tightness: Tightness;
}

/** A factor is written in full: 2, 0.5; one that no short decimal gives is cut here. */
const MOST_DECIMALS = 6;

const POWERS = { 2: '²', 3: '³' } as const;

/** The formula as text, each symbol written by `write`. */
export function formulaText(expr: Expr, write: (name: string) => Written, mark: string): string {
  return piece(expr, write, mark).text;
}

function piece(expr: Expr, write: (name: string) => Written, mark: string): Piece {
  const of = (e: Expr): Piece => piece(e, write, mark);
  switch (expr.op) {
    case 'number':
      return {
        text: trimmed(expr.value, 0, MOST_DECIMALS, mark),
        tightness: expr.value < 0 ? LOOSENESS.sum : LOOSENESS.atom,
      };
    case 'pi':
      return atom('π');
    case 'symbol': {
      const { text, apart } = write(expr.name);
      return { text, tightness: apart ? LOOSENESS.power : LOOSENESS.atom };
    }
    case 'sum':
      return sumLike(
        expr.terms.map((term, k) => (k === 0 ? of(term).text : held(of(term), LOOSENESS.product))).join(' + '),
      );
    case 'difference':
      return sumLike(`${of(expr.from).text} − ${held(of(expr.less), LOOSENESS.product)}`);
    case 'product':
      return {
        text: expr.terms.map((term) => held(of(term), LOOSENESS.product)).join(' × '),
        tightness: LOOSENESS.product,
      };
    case 'fraction':
      return fraction(of(expr.over), of(expr.under), isNumber(expr.over) && isNumber(expr.under));
    case 'power':
      return { text: `${held(of(expr.base), LOOSENESS.atom)}${POWERS[expr.exponent]}`, tightness: LOOSENESS.power };
    case 'root':
      return atom(`√(${of(expr.of).text})`);
    case 'sin':
    case 'cos':
    case 'tan':
      return atom(`${expr.op}(${of(expr.of).text})`);
  }
}

const atom = (text: string): Piece => ({ text, tightness: LOOSENESS.atom });
const sumLike = (text: string): Piece => ({ text, tightness: LOOSENESS.sum });

/** In parentheses unless it holds together at least as tightly as `needed`. */
function held({ text, tightness }: Piece, needed: Tightness): string {
  return tightness >= needed ? text : `(${text})`;
}

/** Plain numbers close up, "1/3"; anything else keeps its distance, "a / 2". Below the line only a single thing stands bare. */
function fraction(above: Piece, under: Piece, ofNumbers: boolean): Piece {
  const [top, bottom] = [held(above, LOOSENESS.product), held(under, LOOSENESS.power)];
  return { text: ofNumbers ? `${top}/${bottom}` : `${top} / ${bottom}`, tightness: LOOSENESS.product };
}

const isNumber = (expr: Expr): boolean => expr.op === 'number' && expr.value >= 0;
