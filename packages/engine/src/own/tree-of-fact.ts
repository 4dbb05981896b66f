// The working of a fact as one tree. Lines of pieces lead to their sum by its numbered symbols; where a line starts from
// another measure (touchable surface from paper, a ratio from two measures), the working of that one stands in.

import type { Fact, MeasuredFact, MeasureId, Step, WorkingPart } from '@cairnmark/geometry';
import { sym } from '@cairnmark/geometry';
import type { Term } from './working-tree.ts';
import { mapped } from './working-tree.ts';

/** The tree of a fact; its value alone where it has no lines. */
export function treeOf({ id, value, working }: MeasuredFact, facts: readonly Fact[]): Term {
  const { steps, parts } = working;
  const symbol = steps[0]?.symbol ?? '';
  const ofParts = parts.map((part, index) => [`${symbol}${index + 1}`, treeOfPart(part, symbol)] as const);
  const ofMeasures = Object.entries(STARTS_FROM[id] ?? {}).flatMap(([name, other]) => {
    const fact = facts.find((one) => one.id === other);
    return fact?.status === 'measured' ? [[name, treeOf(fact, facts)] as const] : [];
  });
  return chained(steps, null, new Map([...ofParts, ...ofMeasures])) ?? { value };
}

/** Symbols in the line of a measure that stand for another measure. */
const STARTS_FROM: Partial<Record<MeasureId, Readonly<Record<string, MeasureId>>>> = {
  'touchable-surface': { S: 'paper' },
  'height-to-width': { h: 'height', w: 'base-width' },
  'volume-per-paper': { V: 'volume', S: 'paper' },
  'area-to-perimeter': { A: 'footprint-area', P: 'footprint-perimeter' },
};

/** A part without lines is a number read off the piece: `symbol` itself. */
function treeOfPart({ kind, each, steps }: WorkingPart, symbol: string): Term {
  const read = { kind, symbol, formula: sym(symbol), inputs: { [symbol]: { value: each } } };
  return chained(steps, kind, new Map()) ?? read;
}

/** Lines one after the other, each with the results of those above it; null when there are none. */
function chained(steps: readonly Step[], kind: string | null, known: ReadonlyMap<string, Term>): Term | null {
  const results = new Map(known);
  let last: Term | null = null;
  for (const { symbol, formula, inputs } of steps) {
    const terms = mapped(inputs, ({ value }, name): Term => results.get(name) ?? { value });
    last = { kind, symbol, formula, inputs: terms };
    results.set(symbol, last);
  }
  return last;
}
