// Points under which all kinds earn as much alike as can be: what is asked, what is found.

import type { Times } from './favour-types.ts';
import type { LabData, LabRule, NotSettled, PointStep } from './types.ts';

export interface EvenTask {
  /** At least two kinds; measures are whole. */
  readonly data: LabData;
  /**
   * share: the lowest over the highest is to be as large as can be, nobody below 0. gap: the highest less the lowest is to
   * be as small as can be, and all together earn something; that may leave most of them with nothing.
   */
  readonly goal: 'share' | 'gap';
  /** What is to be even: the points of a piece, or those for its paper or for the time to fold it. */
  readonly per: EvenPer;
  /** No rate is above this, nor below its opposite; a multiple of the step, above 0. */
  readonly most: number;
  readonly negative: boolean;
  readonly step: PointStep;
}

/** Paper counts in whole cm2 here, at least 1, and time in half minutes; both must be known of every kind. */
export type EvenPer = 'piece' | '100-cm2' | '10-minutes';

export interface EvenRule extends LabRule {
  /** What is to be even, of each kind in the order of the kit: the scores themselves where it is the points of a piece. */
  readonly values: readonly number[];
  readonly lowest: number;
  readonly highest: number;
  readonly gap: number;
  /** null where somebody earns less than 0. */
  readonly share: number | null;
}

export type Evenness =
  | {
      readonly status: 'found';
      /** Of those that are as even, the one with the smallest sum, then the rows that stand first. */
      readonly rule: EvenRule;
      /** Whether points of any size could make it exactly even. */
      readonly exactly: ExactlyEven;
      readonly leftOut: readonly LeftOutRow[];
      readonly branches: number;
    }
  /** Nobody has anything that the rows count. */
  | { readonly status: 'no-rows'; readonly leftOut: readonly LeftOutRow[] }
  | NotSettled;

/** A row that no points are looked for: the same for every piece by its nature, so trivially even; or nobody has any. */
export interface LeftOutRow {
  readonly row: string;
  readonly why: 'per-piece' | 'nobody-has';
}

export type ExactlyEven =
  | { readonly possible: true; readonly rule: EvenRule }
  /**
   * The pieces `these` against `those`, a proof that anybody can add up. Without rates below 0 they are as many (or take
   * as much paper, or time), and `these` have more in every row: so whatever the points, they earn more together. With
   * rates below 0 both have the same in every row, but they are not as many: were all to earn alike, all would earn 0.
   */
  | {
      readonly possible: false;
      readonly these: readonly Times[];
      readonly those: readonly Times[];
      /** In the order of the rows, those left out among them. */
      readonly totalOfThese: readonly number[];
      readonly totalOfThose: readonly number[];
    };
