// Points that favour a chosen kind: what is asked, what is found, and why it cannot be done.

import type { LabData, LabRule, NotSettled, PointStep } from './types.ts';

export interface FavourTask {
  /** At least two kinds; measures are whole. */
  readonly data: LabData;
  /** The kind that is to earn most. */
  readonly favourite: string;
  /** How much more than every other it must earn at least, points: a multiple of the step, above 0. */
  readonly lead: number;
  /** No rate is above this, nor below its opposite; a multiple of the step, above 0. */
  readonly most: number;
  /** Whether rates below 0 are allowed: rows that take points. */
  readonly negative: boolean;
  readonly step: PointStep;
}

export interface FavouringRule extends LabRule {
  /** What the chosen kind earns more than the best of the others. */
  readonly lead: number;
}

/**
 * Of several rules the first is the one with fewest rows, then the smallest sum; or the one with the smallest sum, then
 * fewest rows. Then the rows that stand first, and the rates as they stand.
 */
export type RuleOrder = 'fewest-rows' | 'smallest-sum';

export type Favouring =
  | {
      readonly status: 'possible';
      /** Different rules, the first in the order asked for: none holds all the rows of another before it. */
      readonly rules: readonly FavouringRule[];
      /** True: there is no further one that differs in this way. False: there may be. */
      readonly complete: boolean;
      readonly branches: number;
    }
  | { readonly status: 'impossible'; readonly why: WhyNot; readonly branches: number }
  | NotSettled;

export interface Times {
  readonly kind: string;
  /** Whole, above 0. */
  readonly times: number;
}

/** Why no points favour the kind: each is a proof that anybody can add up. In the order in which they are looked for. */
export type WhyNot =
  /** It has none of what the rows count, and no row takes points from the others. */
  | { readonly code: 'zero' }
  /** This kind has the same counts, so it always earns the same. */
  | { readonly code: 'twin'; readonly by: string }
  /** This kind has at least as much in every row, and no row takes points. */
  | { readonly code: 'dominated'; readonly by: string }
  /**
   * `times` pieces of it against as many of the others: in every row the others have at least as much together (with rates
   * below 0: exactly as much), so one of them always earns at least as much as it does.
   */
  | {
      readonly code: 'mix';
      readonly times: number;
      readonly others: readonly Times[];
      /** In the order of the rows. */
      readonly totalOfFavourite: readonly number[];
      readonly totalOfOthers: readonly number[];
    }
  /** It can be favoured, but not by so much with rates so small. */
  | {
      readonly code: 'lead-out-of-reach';
      /** The most it can lead by within the limit of the rates, with the rule; null where it cannot lead at all. */
      readonly greatestLead: number;
      readonly atGreatest: FavouringRule | null;
      /** The limit of the rates from which on the lead can be had, with the rule; null: the work limit was reached. */
      readonly maxNeeded: number | null;
      readonly atNeeded: FavouringRule | null;
      readonly proof: ReachProof;
    };

/** That no more lead can be had within the limit of the rates, and no such lead within a smaller limit than `maxNeeded`. */
export interface ReachProof {
  readonly noMoreLead: NoRule;
  readonly noSmallerMost: NoRule | null;
}

/**
 * Why no whole rates between the limits give a lead: either the limits are parted at a rate (up to `upTo`, and above), or
 * the others' shares tell. With shares y the lead is at most the sum over rows of the best rate times the sum over the
 * others of y x (measure of the favourite less theirs), over the sum of y. In steps of the points, not in points.
 */
export type NoRule =
  | { readonly row: number; readonly upTo: number; readonly below: NoRule; readonly above: NoRule }
  /** Shares of the other kinds, in the order of the kit with the favourite left out. */
  | { readonly shares: readonly bigint[] };

/** Something that would make a task possible. */
export interface Offer {
  /** Rows to add, behind those of the task; [] where none is needed. */
  readonly rows: readonly string[];
  /** Whether rows that take points are to be allowed, which the task did not. */
  readonly negative: boolean;
  /** The task with what is added, and what was found for it. */
  readonly task: FavourTask;
  readonly rule: FavouringRule;
}

export type Offers =
  /** [] where nothing that was tried helps. */
  { readonly status: 'tried'; readonly offers: readonly Offer[]; readonly branches: number } | NotSettled;
