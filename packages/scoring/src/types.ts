// What scoring knows of a build: named numbers. It imports nothing: the facts it needs are stated here.
// Values are in mm, mm2, mm3 or counts, as the fact's unit says; rates and limits are in the same unit.

export interface ScoringFact {
  readonly id: string;
  /** null: not measured. It earns nothing, keeps no requirement, and is told as such; it is never 0. */
  readonly value: number | null;
  readonly unit: string;
  /** Expanded uncertainty in the fact's unit. */
  readonly tolerance: number;
  /**
   * The parts of the tolerance by the reading they come from, signed, in the fact's unit. The same reading in another
   * build errs alike, so that it cancels in the difference. Their squares sum to no more than the tolerance squared;
   * what is left is the build's own. {} when nothing is shared.
   */
  readonly errors: Readonly<Record<string, number>>;
  /** Of the points alone: what of them follows other facts in steps, which neither tolerance nor errors hold. */
  readonly steps?: readonly SteppedPoints[];
}

export type Facts = ReadonlyMap<string, ScoringFact>;

export type Rounding = 'none' | 'down' | 'nearest' | 'up';

/** `points` for each `per` of the measure; the number of times `per` goes into the value is rounded first. */
export interface PointsRow {
  readonly id: string;
  readonly measure: string;
  readonly points: number;
  readonly per: number;
  readonly rounding: Rounding;
  /** The row never gives more than this, nor less than `floorPoints`. */
  readonly capPoints?: number;
  readonly floorPoints?: number;
}

/** Points that follow a measured fact in steps: an error of the fact makes nothing of them, or whole steps. */
export interface SteppedPoints {
  readonly fact: ScoringFact;
  /** The rows of the points table on this measure. */
  readonly rows: readonly PointsRow[];
  /** The rules on this measure that cost or earn points. */
  readonly rules: readonly MeasuredRule[];
}

export interface PointsLine {
  readonly row: string;
  readonly measure: string;
  /** null when the fact was not measured. */
  readonly value: number | null;
  /** How many times `per` goes into the value, after rounding. */
  readonly times: number | null;
  /** null: not known, since the row may take points and its measure was not measured. */
  readonly points: number | null;
  readonly limited: 'cap' | 'floor' | null;
}

export type Comparison = 'exactly' | 'at-least' | 'at-most';

/** A rule that a build must keep, or pays for. */
export type Requirement =
  | MeasuredRule
  | {
      readonly id: string;
      /** A yes/no rule that a person judges, such as "no tape". */
      readonly kind: 'judged';
      readonly text: string;
      readonly consequence: Consequence;
    }
  | {
      readonly id: string;
      /** Only pieces of these kinds may be used. */
      readonly kind: 'only-kinds';
      readonly kinds: readonly string[];
      readonly consequence: Consequence;
    }
  | {
      readonly id: string;
      /** No more pieces of a kind than the group earned. */
      readonly kind: 'only-earned';
      readonly consequence: Consequence;
    };

export interface MeasuredRule {
  readonly id: string;
  readonly kind: 'measured';
  readonly measure: string;
  readonly comparison: Comparison;
  readonly limit: number;
  readonly consequence: Consequence;
}

/**
 * must: a build that breaks it is out of the ranking. costs: it loses these points (a positive number).
 * earns: a build that keeps it gets these points (a positive number).
 */
export type Consequence =
  | { readonly kind: 'must' }
  | { readonly kind: 'costs'; readonly points: number }
  | { readonly kind: 'earns'; readonly points: number };

/** What a person said of a yes/no rule. */
export interface Answer {
  readonly kept: boolean;
  readonly note?: string;
}

/** Pieces by kind id; a kind that is not listed counts 0. null: not known. */
export type Pieces = Readonly<Record<string, number>> | null;

/** More pieces of a kind than a rule allows. */
export interface PieceBreach {
  readonly kind: string;
  readonly used: number;
  readonly allowed: number;
}

export type Verdict = 'kept' | 'broken' | 'not-measured' | 'not-judged';

export interface RequirementLine {
  readonly requirement: string;
  readonly verdict: Verdict;
  readonly measure: string | null;
  readonly value: number | null;
  readonly comparison: Comparison | null;
  readonly limit: number | null;
  /** Of a rule about pieces: each kind of which there are too many. */
  readonly breaches: readonly PieceBreach[];
  /** Of a yes/no rule: what the person noted. */
  readonly note: string | null;
  readonly consequence: Consequence;
}

/** One thing to order by: a measure or the points (id "points"). Rounded once, before comparing, to whole `roundTo`. */
export interface RankingKey {
  readonly by: string;
  readonly better: 'more' | 'less';
  /** In the unit of the measure; 0 leaves the value as it is (fixed to 1e-6 all the same). */
  readonly roundTo: number;
}

export interface RankingRule {
  readonly first: RankingKey;
  readonly tieBreaks: readonly RankingKey[];
}

/** One build as the ranking sees it. */
export interface Entry {
  readonly group: string;
  /** Values by key id ("points" or a measure). */
  readonly values: Facts;
  /** Every reason why it takes no place; [] where there is none. */
  readonly out: readonly OutReason[];
}

export type OutReason =
  | { readonly code: 'rule-broken'; readonly requirements: readonly string[] }
  | { readonly code: 'more-than-the-kit-has'; readonly kinds: readonly string[] }
  | { readonly code: 'absent' }
  | { readonly code: 'not-taking-part' }
  | { readonly code: 'fell' }
  | { readonly code: 'not-confirmed' }
  | { readonly code: 'no-attempt' }
  | { readonly code: 'not-measured'; readonly measures: readonly string[] };

export interface Standing {
  readonly group: string;
  /** Standard competition place (1, 2, 2, 4), or null when out. */
  readonly place: number | null;
  /** The rounded values that decided it, in the order of the keys. */
  readonly decidedBy: readonly { readonly by: string; readonly value: number | null }[];
  /** Groups with the same place. */
  readonly sharedWith: readonly string[];
  /** Groups at another place whose first key, before rounding, differs by no more than the error of the difference. */
  readonly withinErrorOf: readonly string[];
  /** Why it takes no place; [] of one that takes one. */
  readonly out: readonly OutReason[];
}

export interface DayRule {
  readonly kind: 'sum-of-points' | 'sum-of-place-points' | 'mean-place';
  /** Points for place 1, 2, 3 ...; places beyond the list get 0. For 'sum-of-place-points'. */
  readonly placePoints: readonly number[];
  /** Weight by challenge id; 1 where not listed. */
  readonly weights: Readonly<Record<string, number>>;
  /** true: the mean of a group's results stands in for its missing ones. false: it is listed below without a place. */
  readonly meanOfThosePresent: boolean;
}

export interface DayStanding {
  readonly group: string;
  readonly place: number | null;
  readonly total: number | null;
  /** What each challenge counts, before its weight: points, place points or the place. null: no result. */
  readonly results: readonly { readonly challenge: string; readonly counts: number | null }[];
  /** Results present, of how many challenges. */
  readonly present: number;
  readonly of: number;
  readonly sharedWith: readonly string[];
}

/** What a class should know of its day before it reads the places. Nothing is changed by it. */
export type DayWarning =
  /** Points of these challenges come from measures of different units, and are added up raw. */
  | {
      readonly code: 'points-of-different-units';
      readonly challenges: readonly string[];
      readonly units: readonly string[];
    }
  /** Not all judges of the criterion marked the same groups: a strict one may have met only some of them. */
  | {
      readonly code: 'judges-of-different-groups';
      readonly challenge: string;
      readonly criterion: string;
      readonly judges: readonly { readonly judge: string; readonly groups: readonly string[] }[];
    };
