// Guess the rule: a few scored pieces from which the rule can be told.

/**
 * one: 1 to 5 for each of one measure. one+c: the same, and 0 to 3 for the piece itself. two: 1 to 3 for each of one
 * measure, and 0 to 3 of another. minus: 1 to 3 for each of one measure, less 0 or 1 for each of another.
 */
export type RuleFamily = 'one' | 'one+c' | 'two' | 'minus';

export interface RiddleRule {
  /** In the order of the rows. */
  readonly rates: readonly number[];
  /** Points for the piece itself. */
  readonly each: number;
}

export interface ScoredPiece {
  readonly kind: string;
  readonly points: number;
}

export interface Riddle {
  readonly family: RuleFamily;
  readonly rule: RiddleRule;
  /** The fewest from which the rule can be told from all rules of the family that score some piece otherwise. */
  readonly examples: readonly ScoredPiece[];
  /** One more to try the guess on; null where every piece is an example. */
  readonly check: ScoredPiece | null;
  /** Every piece of the kit. */
  readonly all: readonly ScoredPiece[];
  /** Other rules of the family that score every piece of this kit alike: nobody can tell them apart. [] is a good riddle. */
  readonly sameAs: readonly RiddleRule[];
}

/** What a kit can tell apart of a family. */
export interface FamilyOnKit {
  readonly family: RuleFamily;
  /** How many rules it has, and how many of them score some piece otherwise than every other. */
  readonly rules: number;
  readonly different: number;
  /** Groups of rules that look the same on this kit, each of two or more. [] : every rule can be told. */
  readonly alike: readonly (readonly RiddleRule[])[];
  /** The fewest kinds by which every rule can be told from every other that can be told from it at all. */
  readonly examplesForAll: readonly string[];
}
