// What the bars show, and in how many digits.

import type { Earned } from '@cairnmark/scoring';
import type { Cost, Lab } from './lab.ts';

/** null: it is known of no solid. */
export const earnedFor = (cost: Cost, { earnings }: Pick<Lab, 'earnings'>): Earned | null =>
  ({ piece: earnings.perPiece, paper: earnings.per100Cm2, minutes: earnings.per10Minutes })[cost];

/** Points for paper or minutes are quotients: a hundredth is more than anybody talks about. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;
