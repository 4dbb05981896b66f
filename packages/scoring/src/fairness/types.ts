// The points lab: what a points table makes of single pieces, and which whole-number points favour a solid or treat all
// alike. Rules [F..] of RULES.md. What it knows of a kit is stated here: a table of whole numbers, kinds by rows.

/** Kinds of pieces in the order of the kit, each with its measure under every row. */
export interface LabData {
  /** Ids of what points may be given for, such as `faces`; a rate stands for each of them. */
  readonly rows: readonly string[];
  readonly kinds: readonly LabKind[];
}

export interface LabKind {
  readonly id: string;
  /** How often it has what each row counts, in the order of the rows: whole numbers from 0 on, save for `whoEarns`. */
  readonly measures: readonly number[];
  /** Paper of one piece, mm2, without tabs; null: not known. */
  readonly paperMm2: number | null;
  /** Minutes to fold one, as the teacher says; null: not told. */
  readonly minutes: number | null;
}

/** What pieces earn under a points table, counted in one way. */
export interface Earned {
  /** In the order of the kit; null: its paper or its minutes are not known. */
  readonly values: readonly (number | null)[];
  /** The kinds that earn most, in the order of the kit. */
  readonly favourites: readonly string[];
  /** How much more they earn than the next below them; 0 when all earn alike. */
  readonly lead: number;
  /** Highest less lowest. */
  readonly gap: number;
  /** Lowest over highest, 0 to 1; null where a rate is below 0 or nobody earns anything: then only the gap is told. */
  readonly share: number | null;
}

export interface Earnings {
  readonly perPiece: Earned;
  /** null where it is known of no kind. */
  readonly per100Cm2: Earned | null;
  readonly per10Minutes: Earned | null;
}

/** Points in whole numbers, or in halves. */
export type PointStep = 1 | 0.5;

/** Points for each row, rechecked from the kit. */
export interface LabRule {
  /** In the order of the rows. */
  readonly rates: readonly number[];
  /** The rows whose rate is not 0. */
  readonly rows: readonly string[];
  /** Of the rates without their signs. */
  readonly sum: number;
  /** What each kind earns, in the order of the kit. */
  readonly scores: readonly number[];
}

/** How far a search may go, and who is told of it. */
export interface Work {
  /** Branches that may be opened; beyond it the answer is `not-settled`. */
  readonly branchesMost: number;
  /** Called from time to time with the branches opened so far; true: give up. */
  readonly stop?: (branches: number) => boolean;
}

/** The work limit was reached, or the caller gave up: neither found nor shown to be impossible. */
export interface NotSettled {
  readonly status: 'not-settled';
  readonly branches: number;
}
