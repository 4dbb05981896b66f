// What the bars show, and in how many digits.

import type { Earned } from '@cairnmark/scoring';
import type { Cost, Lab } from './lab.ts';

/** null: it is known of no solid. */
export const earnedFor = (cost: Cost, { earnings }: Pick<Lab, 'earnings'>): Earned | null =>
  ({ piece: earnings.perPiece, paper: earnings.per100Cm2, minutes: earnings.per10Minutes })[cost];

/** Points for paper or minutes are quotients: a hundredth is more than anybody talks about. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;

/** How many decimals every value of one column has: as many as one of them needs, so that none looks less exact. */
export function decimalsOf(values: readonly (number | null)[]): number {
  const fits = (decimals: number): boolean =>
    values.every((value) => value === null || Number.isInteger(rounded(rounded(value) * 10 ** decimals)));
  return fits(0) ? 0 : fits(1) ? 1 : 2;
}
