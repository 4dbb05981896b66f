// Slants of the pieces of a build. A volume does not need them, but the paper does: there they stand beside the height.
// mm.

import type { Fact, Step } from '@cairnmark/geometry';

/** By kind of piece. */
export type Slants = ReadonlyMap<string, Slant>;

interface Slant {
  readonly heightMm: number;
  /** Up the middle of a side: one, or two over a rectangle. */
  readonly first: number;
  readonly second: number;
}

/** The slants that the working of the paper knows. */
export function slantsOf(facts: readonly Fact[]): Slants {
  const paper = facts.find(({ id }) => id === 'paper');
  if (paper?.status !== 'measured') return new Map();
  return new Map(
    paper.working.parts.flatMap(({ kind, steps }): [string, Slant][] => {
      const [one, other] = steps.filter(isSlant);
      const heightMm = one?.inputs['h']?.value;
      if (one === undefined || heightMm === undefined) return [];
      return [[kind, { heightMm, first: one.result.value, second: (other ?? one).result.value }]];
    }),
  );
}

/** The line of a slant: `s`, or `s1` and `s2`. */
export const isSlant = ({ symbol }: Pick<Step, 'symbol'>): boolean => /^s[12]?$/.test(symbol);
