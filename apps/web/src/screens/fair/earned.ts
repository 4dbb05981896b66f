// What the bars show, for how much paper, and in how many digits.

import type { Earned } from '@cairnmark/scoring';
import type { Cost, Lab } from './lab.ts';

/** null: it is known of no solid. */
export function earnedFor(cost: Cost, { earnings, inClass }: Pick<Lab, 'earnings' | 'inClass'>): Earned | null {
  const { perPiece, per100Cm2, per10Minutes } = earnings;
  if (cost === 'piece') return perPiece;
  if (cost === 'minutes') return per10Minutes;
  const { share } = paperOf({ inClass });
  return per100Cm2 === null
    ? null
    : { ...per100Cm2, values: per100Cm2.values.map((value) => (value === null ? null : value * share)) };
}

/** So much paper as a class reads it, mm2, and what part of 100 cm2 that is: 10 in2 where lengths are in inches. */
export function paperOf({ inClass }: Pick<Lab, 'inClass'>): { readonly areaMm2: number; readonly share: number } {
  const areaMm2 = inClass.unit('paper').name === 'in²' ? TEN_IN2 : HUNDRED_CM2;
  return { areaMm2, share: areaMm2 / HUNDRED_CM2 };
}

/** mm2: 10 x 25.4 x 25.4; an inch is 25.4 mm (international yard and pound agreement, 1959). */
const TEN_IN2 = 6451.6;
const HUNDRED_CM2 = 10_000;

/** "one piece", "100 cm² of paper", "10 minutes of folding". */
export const costText = (cost: Cost, { say, inClass }: Pick<Lab, 'say' | 'inClass'>): string =>
  cost === 'paper'
    ? say('lab.for-paper', { area: inClass.exactAmount('paper', paperOf({ inClass }).areaMm2) })
    : say(`lab.for-${cost}`);

/** Points for paper or minutes are quotients: a hundredth is more than anybody talks about. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;

/** How many decimals every value of one column has: as many as one of them needs, so that none looks less exact. */
export function decimalsOf(values: readonly (number | null)[]): number {
  const fits = (decimals: number): boolean =>
    values.every((value) => value === null || Number.isInteger(rounded(rounded(value) * 10 ** decimals)));
  return fits(0) ? 0 : fits(1) ? 1 : 2;
}
