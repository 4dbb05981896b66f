// A working as a tree: a number worked out by a formula from others, down to what was measured. In this form one line
// can be done otherwise and everything above it follows.

import type { Expr } from '@cairnmark/geometry';
import { evaluate } from '@cairnmark/geometry';

/** No unit. Values that should be the same to the last digit differ by rounding alone, which stays far below this. */
export const EXACT = 1e-6;

export type Term = Known | Worked;

/** Measured, or found in a way that no formula gives. */
interface Known {
  readonly value: number;
}

/** `symbol` = `formula` with the inputs put in. */
export interface Worked {
  /** The kind of piece it is about; null: the build as a whole. */
  readonly kind: string | null;
  readonly symbol: string;
  readonly formula: Expr;
  readonly inputs: Inputs;
}

type Inputs = Readonly<Record<string, Term>>;

export const isWorked = (term: Term | undefined): term is Worked => term !== undefined && 'formula' in term;

export const isKnown = (term: Term | undefined): term is Known => term !== undefined && 'value' in term;

/** The number that comes out, with this pi. */
export function worth(term: Term, pi: number): number {
  if (isKnown(term)) return term.value;
  return evaluate(
    term.formula,
    mapped(term.inputs, (input) => worth(input, pi)),
    pi,
  );
}

/** The working with `edit` made at every line of it. */
export function edited(term: Term, edit: (line: Worked) => Worked): Term {
  if (isKnown(term)) return term;
  return edit({ ...term, inputs: mapped(term.inputs, (input) => edited(input, edit)) });
}

/** Kinds of piece that the working is about, each once. */
export function kindsIn(term: Term): readonly string[] {
  if (isKnown(term)) return [];
  const own = term.kind === null ? [] : [term.kind];
  return [...new Set([...own, ...Object.values(term.inputs).flatMap(kindsIn)])];
}

/** The record with every entry changed. */
export function mapped<From, To>(
  record: Readonly<Record<string, From>>,
  change: (entry: From, name: string) => To,
): Readonly<Record<string, To>> {
  return Object.fromEntries(Object.entries(record).map(([name, entry]) => [name, change(entry, name)]));
}
