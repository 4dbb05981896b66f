// Slips in the lines of the build as a whole: a piece forgotten in a sum, a contact taken off once in place of twice,
// something added that should be taken off.

import type { Expr } from '@cairnmark/geometry';
import { rewritten, sum } from '@cairnmark/geometry';
import type { Slip } from '../report-types.ts';
import type { SlipValue } from './slips.ts';
import type { Term, Worked } from './working-tree.ts';
import { edited, isKnown, isWorked, worth } from './working-tree.ts';

/** The values with each of these slips; where a slip changes nothing, the value as it was. */
export function buildSlips(tree: Term, pi: number): readonly SlipValue[] {
  const most = partsIn(tree);
  const forgotten = Array.from({ length: most }, (_, index): readonly Edit[] => [
    (line) => withoutPart(line, index),
    (line) => withOneLess(line, index),
  ]).flat();
  const edits: readonly (readonly [Slip, Edit])[] = [
    ...forgotten.map((edit) => ['piece-forgotten', edit] as const),
    ['contact-counted-once', contactOnce],
    ...ADDED.map((edit) => ['added-for-subtracted', edit] as const),
  ];
  return edits.map(([slip, edit]) => {
    const wrong = edited(tree, (line) => (line.kind === null ? edit(line) : line));
    return { slip, value: worth(wrong, pi) };
  });
}

type Edit = (line: Worked) => Worked;

/** The most terms that a sum over pieces in the working has. */
function partsIn(term: Term): number {
  if (isKnown(term)) return 0;
  return Math.max(partNames(term).length, 0, ...Object.values(term.inputs).map(partsIn));
}

/** Symbols in a sum over pieces that stand for a piece of a kind, in their order. */
function partNames({ kind, formula, inputs }: Worked): readonly string[] {
  if (kind !== null || formula.op !== 'sum') return [];
  return Object.entries(inputs).flatMap(([name, term]) => (isWorked(term) && term.kind !== null ? [name] : []));
}

/** The sum without its term for that part; the only one stays. */
function withoutPart(line: Worked, index: number): Worked {
  const name = partNames(line)[index];
  if (name === undefined || line.formula.op !== 'sum' || line.formula.terms.length === 1) return line;
  return { ...line, formula: sum(...line.formula.terms.filter((term) => !mentions(term, name))) };
}

/** The sum with one piece less of a kind of which there are several. */
function withOneLess(line: Worked, index: number): Worked {
  const times = `n${index + 1}`;
  const count = line.inputs[times];
  if (partNames(line)[index] === undefined || !isKnown(count)) return line;
  return { ...line, inputs: { ...line.inputs, [times]: { value: count.value - 1 } } };
}

const isSymbol = (expr: Expr, name: string): boolean => expr.op === 'symbol' && expr.name === name;

/** A term of a sum over pieces is a symbol, or a number of times that symbol. */
const mentions = (term: Expr, name: string): boolean =>
  isSymbol(term, name) || (term.op === 'product' && term.terms.some((factor) => isSymbol(factor, name)));

/** Both sides of a contact are gone: 2 x C. */
function contactOnce(line: Worked): Worked {
  const formula = rewritten(line.formula, (part) =>
    part.op === 'product' && part.terms.some((factor) => isSymbol(factor, 'C'))
      ? { ...part, terms: part.terms.filter((factor) => factor.op !== 'number') }
      : part,
  );
  return { ...line, formula };
}

/** One of the two things that are taken off the surface is added, or both are. */
const ADDED: readonly Edit[] = [['C'], ['T'], ['C', 'T']].map((names) => (line) => ({
  ...line,
  formula: rewritten(line.formula, (part) =>
    part.op === 'difference' && names.some((name) => mentions(part.less, name)) ? sum(part.from, part.less) : part,
  ),
}));
