// Slips in the working of a piece: the diameter taken for the radius, the slant for the height, a third forgotten. Each
// is made at one kind of piece, or at all kinds alike.

import type { Expr, Fact } from '@cairnmark/geometry';
import { rewritten } from '@cairnmark/geometry';
import type { Slip } from '../report-types.ts';
import type { Slants } from './slants.ts';
import { isSlant, slantsOf } from './slants.ts';
import type { SlipValue } from './slips.ts';
import type { Term, Worked } from './working-tree.ts';
import { EXACT, edited, isKnown, kindsIn, mapped, worth } from './working-tree.ts';

/** The values with each of these slips; where a slip changes nothing, the value as it was. */
export function pieceSlips(tree: Term, facts: readonly Fact[], pi: number): readonly SlipValue[] {
  const kinds = kindsIn(tree);
  const groups = [...kinds.map((kind) => [kind]), kinds];
  return edits(slantsOf(facts)).flatMap(([slip, edit]) =>
    groups.map((group) => {
      const wrong = edited(tree, (line) => (line.kind !== null && group.includes(line.kind) ? edit(line) : line));
      return { slip, value: worth(wrong, pi) };
    }),
  );
}

type Edit = (line: Worked) => Worked;

const edits = (slants: Slants): readonly (readonly [Slip, Edit])[] => [
  ['diameter-for-radius', (line) => withRadiiTimes(2, line)],
  ['radius-for-diameter', (line) => withRadiiTimes(1 / 2, line)],
  ['third-forgotten', withoutThird],
  ['slant-for-height', (line) => withSlant(line, slants, 'first')],
  ['slant-for-height', (line) => withSlant(line, slants, 'second')],
];

/** Radii that were measured; the r of a regular pyramid is worked out, and stays. */
function withRadiiTimes(factor: number, line: Worked): Worked {
  const inputs = mapped(line.inputs, (term, name) =>
    (name === 'r' || name === 'R') && isKnown(term) ? { value: factor * term.value } : term,
  );
  return { ...line, inputs };
}

function withoutThird(line: Worked): Worked {
  const formula = rewritten(line.formula, (part) =>
    part.op === 'product' ? { ...part, terms: part.terms.filter((term) => !isThird(term)) } : part,
  );
  return { ...line, formula };
}

const isThird = (expr: Expr): boolean => expr.op === 'fraction' && isNumber(expr.over, 1) && isNumber(expr.under, 3);

const isNumber = (expr: Expr, value: number): boolean => expr.op === 'number' && expr.value === value;

/** The height of a piece that stands upright, where it is measured; not in the line that leads to the slant. */
function withSlant(line: Worked, slants: Slants, which: 'first' | 'second'): Worked {
  const slant = line.kind === null ? undefined : slants.get(line.kind);
  const height = line.inputs['h'];
  if (slant === undefined || isSlant(line) || !isKnown(height)) return line;
  if (Math.abs(height.value - slant.heightMm) > EXACT) return line;
  return { ...line, inputs: { ...line.inputs, h: { value: slant[which] } } };
}
