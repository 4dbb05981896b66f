// The pieces of a build counted by kind, in order of first use, and sums over them with their working.

import type { Expr, Quantity, Step, Unit } from '../kernel/formula.ts';
import { step, sum, sym, times } from '../kernel/formula.ts';
import type { Solid } from '../solids/types.ts';
import type { SolidsByKind } from '../stack/types.ts';
import type { Working } from './types.ts';

/** How many pieces of one kind there are. */
export interface KindTally {
  readonly kind: string;
  readonly solid: Solid;
  readonly times: number;
}

/** Tally of the pieces, named by kind, one entry a piece. Every kind must be among `solids`. */
export function tallyOf(pieces: readonly string[], solids: SolidsByKind): readonly KindTally[] {
  const times = new Map<string, number>();
  for (const kind of pieces) times.set(kind, (times.get(kind) ?? 0) + 1);
  return [...times].map(([kind, count]) => {
    const solid = solids.get(kind);
    if (solid === undefined) throw new RangeError(`no solid for the kind ${kind}`);
    return { kind, solid, times: count };
  });
}

/** What one piece of a kind adds to a sum, with the steps that lead to it. */
export interface Share {
  readonly value: number;
  readonly steps: readonly Step[];
}

/**
 * The sum over all pieces: `symbol` = n1 x `symbol`1 + n2 x `symbol`2 + ..., one term a kind; a
 * kind of which there is one piece stands without its 1. The value is the result of that line.
 */
export function sumOverPieces(
  tally: readonly KindTally[],
  symbol: string,
  unit: Unit,
  method: Working['method'],
  share: (solid: Solid) => Share,
): { value: number; working: Working } {
  const parts = tally.map(({ kind, solid, times: count }) => {
    const { value, steps } = share(solid);
    return { kind, times: count, each: value, unit, steps };
  });
  const terms: Expr[] = [];
  const inputs: Record<string, Quantity> = {};
  for (const [index, part] of parts.entries()) {
    const [count, each] = [`n${index + 1}`, `${symbol}${index + 1}`];
    inputs[each] = { value: part.each, unit };
    if (part.times === 1) {
      terms.push(sym(each));
      continue;
    }
    terms.push(times(sym(count), sym(each)));
    inputs[count] = { value: part.times, unit: 'count' };
  }
  const total = step(symbol, sum(...terms), inputs, unit);
  return { value: total.result.value, working: { method, steps: [total], parts } };
}
