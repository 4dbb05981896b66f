// The best build that given pieces allow, on plain numbers: what a piece is like in each way up, what the rules ask, what is
// sought, and what came out. Lengths mm, areas mm2, masses g. A push is a sideways share of gravity: the tangent of the tilt
// at which it acts.

import type { PointsRow } from '../types.ts';

/** One way to put a piece down. It rests on a level face. */
export interface WayUp {
  readonly id: string;
  readonly heightMm: number;
  /** Height of its centre of mass over its underside. */
  readonly centreHeightMm: number;
  /**
   * From the upright line through its centre of mass to the nearest edge of its level top face. 0: no such face, or the line
   * misses it, so that it carries nothing centred.
   */
  readonly topInsideMm: number;
  /** The same of the face that it rests on; 0 or less: it does not stand so. */
  readonly bottomInsideMm: number;
  /**
   * The same two where a round face lies only partly on the other: whoever judges builds may take its rim for straight pieces
   * then, which are a little nearer. Of other faces no different.
   */
  readonly topClippedMm: number;
  readonly bottomClippedMm: number;
  /** The ground it takes when it is the lowest, as the challenge defines a base, and its least width. */
  readonly baseMm2: number;
  readonly baseWidthMm: number;
}

/** All pieces of one kind: they are alike. */
export interface BestKind {
  readonly id: string;
  /** Pieces that may be used. */
  readonly stock: number;
  /** Pieces that must be used, by the rules. */
  readonly least: number;
  readonly massG: number;
  readonly ways: readonly WayUp[];
  /** Its height in the highest way it can lie at all, also one in which it would roll or fall. */
  readonly mostHeightMm: number;
  /**
   * The same among ways in which it can be all that carries another piece, centred or not: with a level top face, or with a
   * slope so gentle that what lies on it does not slide. 0: none, so that it carries only together with others.
   */
  readonly aloneHeightMm: number;
  /** Whether it can lie on a line or a point alone, as a ball does: its ground may then be narrower than that of any way up. */
  readonly rolls: boolean;
  /** What one piece adds to a measure that sums over pieces, by the name of the measure; absent: nothing. */
  readonly measures: Readonly<Record<string, number>>;
}

/** Coefficients of friction, by the places of the kinds in the list. */
export interface Grips {
  readonly between: readonly (readonly number[])[];
  readonly onTable: readonly number[];
}

export type BestGoal =
  | { readonly kind: 'tallest' }
  /** Of the tallest, one on the smallest base. */
  | { readonly kind: 'tallest-on-smallest-base' }
  /** Most height for the least width of its base. */
  | { readonly kind: 'tallest-for-width' }
  /**
   * Most points of these rows. Measures are `height` (mm), `base-area` (mm2) and those that the kinds name. Rounding, caps and
   * floors count as they will: the answer is what the rows really give.
   */
  | { readonly kind: 'most-points'; readonly rows: readonly PointsRow[] }
  /** Bears the steepest tilt; asked for an exact number of pieces, since a single piece bears most. */
  | { readonly kind: 'greatest-tilt' };

export interface BestTask {
  readonly kinds: readonly BestKind[];
  /** How many pieces the build has; exactly five: 5 and 5. `most` may be infinite. */
  readonly pieces: { readonly least: number; readonly most: number };
  /**
   * true: pieces that are not in the tower may stand beside it on the table, where height or points are sought. false: one
   * tower of all pieces.
   */
  readonly beside: boolean;
  readonly baseAtMostMm2: number | null;
  /** The push it must bear; 0: it only has to stand by more than nothing. */
  readonly pushAtLeast: number;
  /** null: nothing slides, and only tipping counts. */
  readonly grips: Grips | null;
  readonly goal: BestGoal;
}

/** A kind in a way up. */
export interface PutPiece {
  readonly kind: string;
  readonly way: string;
}

/** A centred tower, and the pieces that stand beside it. */
export interface BestTower {
  /** From the table upwards, every centre of mass over the same spot. */
  readonly pieces: readonly PutPiece[];
  /** Each on the table, by itself. */
  readonly beside: readonly PutPiece[];
  readonly heightMm: number;
  /** Of the tower and of what stands beside it. */
  readonly baseMm2: number;
  /** The push at which something of it tips, with sliding left out. */
  readonly tipsPush: number;
  /** The push up to which all of it stands: the smaller of tipping and sliding. */
  readonly standsPush: number;
}

/**
 * Over which builds it is best. `any`: no build whose pieces lie in their usual ways has more, as a ceiling from chains of
 * support shows. `centred`: of towers with each piece centred on the one below; another build may have more.
 */
export type BestScope = 'any' | 'centred';

export type NoBuild =
  /** There are not so many pieces. */
  | { readonly code: 'too-few-pieces'; readonly pieces: number; readonly needed: number }
  /** So many of them can stand on each other at most. */
  | { readonly code: 'too-few-carriers'; readonly most: number; readonly needed: number }
  /** None stands on so small a base. */
  | { readonly code: 'base-too-small'; readonly smallestMm2: number }
  /** A tower of so many pieces bears this push at most. */
  | { readonly code: 'too-steep'; readonly greatest: BestTower }
  /** Kinds that must be used cannot all be. */
  | { readonly code: 'rules-clash' };

export type BestAnswer =
  | {
      readonly kind: 'best';
      readonly tower: BestTower;
      /** Height in mm, height by width, points, or the push, by what is sought. */
      readonly value: number;
      readonly scope: BestScope;
      /** No build has more than this; null: none was found. Equal to the value where the scope is `any`. */
      readonly ceiling: number | null;
      readonly looked: number;
    }
  | {
      /** The work limit was met. The tower is one that was found, and must not be called the best. */
      readonly kind: 'not-finished';
      readonly tower: BestTower | null;
      readonly value: number | null;
      /** No centred tower has more than this. */
      readonly noMoreThan: number;
      readonly looked: number;
    }
  | { readonly kind: 'none'; readonly why: NoBuild; readonly looked: number };

/** What a search says on its way: how many towers it has looked at, and the value of the best so far. */
export interface BestProgress {
  readonly looked: number;
  readonly value: number | null;
}

/** One corner of the front of height against base: no smaller base bears a centred tower of this height. */
export interface FrontPoint {
  readonly baseMm2: number;
  readonly heightMm: number;
  readonly tower: BestTower;
}

export interface FrontAnswer {
  /** Bases rising, heights rising. */
  readonly points: readonly FrontPoint[];
  /** false: the work limit was met, and a point may lie too low. */
  readonly finished: boolean;
  readonly looked: number;
}
