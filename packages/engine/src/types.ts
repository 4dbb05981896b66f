// The records the engine works on. A challenge says what is measured and how it is scored; an attempt is what one group
// built, with what people observed and decided; a report is the outcome. Lengths mm, areas mm2, volumes mm3.

import type {
  BaseDefinition,
  BuildMeasures,
  CountingConvention,
  Fact,
  Layout,
  Material,
  MeasureId,
  PairFriction,
  RulerId,
  Sizes,
  SolidSpec,
  Stability,
} from '@cairnmark/geometry';
import type {
  Answer,
  DayRule,
  PointsLine,
  PointsRow,
  RankingRule,
  Requirement,
  RequirementLine,
  Supply,
  SupplyEvent,
  SupplyRule,
} from '@cairnmark/scoring';

export interface KindOfPiece {
  readonly id: string;
  /** The name the class uses, as typed by the teacher. */
  readonly name: string;
  readonly solid: SolidSpec;
  /** Pieces of this kind that the class has. */
  readonly stock: number;
  readonly material: Material;
  /** What its faces are of, as the teacher calls it: frictions of pairs are about such names. */
  readonly surface: string;
  /** Friction coefficient against another piece and the table; no unit. Of two pieces the smaller one counts. */
  readonly friction: number;
}

export interface Kit {
  readonly id: string;
  readonly name: string;
  readonly kinds: readonly KindOfPiece[];
  /** Measured for two surfaces on each other; the table's is `table`. Counts before the frictions of the kinds. */
  readonly frictions: readonly PairFriction[];
}

export type GradePreset = 'grades-2-3' | 'grades-4-5' | 'grades-6-8';

export type HeightSource = 'ruler' | 'photo' | 'model';

/** A thing that judges mark from 0 to 4. Its fact id is `judged:` followed by the id. */
export interface Criterion {
  readonly id: string;
  readonly name: string;
}

export interface Challenge {
  readonly id: string;
  readonly name: string;
  readonly kit: Kit;
  readonly gradePreset: GradePreset;
  readonly ruler: RulerId;
  readonly counting: CountingConvention;
  readonly base: BaseDefinition;
  readonly gapAllowanceMm: number;
  /** Pieces that come within this of what is below them rest on it too, mm: measured sizes are never quite equal. */
  readonly slackMm: number;
  /** Which height counts: the first of these that there is. */
  readonly heightCounts: readonly HeightSource[];
  /** Error of one reading of the ruler on a build, mm (about 95 %). */
  readonly measuringErrorMm: number;
  readonly criteria: readonly Criterion[];
  readonly points: readonly PointsRow[];
  readonly requirements: readonly Requirement[];
  readonly ranking: RankingRule;
  readonly attemptCounts: 'best' | 'last' | 'chosen';
  /** What a build that fell counts: nothing at all, stated points in place of its own, or what was measured of it. */
  readonly fallen:
    | { readonly counts: 'out' }
    | { readonly counts: 'points'; readonly points: number }
    | { readonly counts: 'as-measured' };
  /** How pupils' own results are looked at. */
  readonly own: OwnRule;
  /** null: pieces are not earned in a game. */
  readonly supply: SupplyRule | null;
  /** Ids of measures that are not shown to this class; they can still score. */
  readonly hidden: readonly string[];
  /** Curriculum codes or words of the teacher's own, as typed. */
  readonly labels: readonly string[];
}

/** The pi of a class: 'key' is the number of the calculator's key. */
export type ClassPi = '3' | '3.14' | '22/7' | 'key';

export interface OwnRule {
  readonly pi: ClassPi;
  /** A result within the measuring error agrees; one within this share of the value (0.05: 5 %) is close. */
  readonly closeShare: number;
  /** What an own result earns when it agrees, by measure; others earn nothing. */
  readonly rewards: readonly { readonly measure: string; readonly points: number }[];
}

/** A group's own value of a measure, mm, mm2, mm3 or a count. */
export interface OwnResult {
  readonly measure: MeasureId;
  readonly value: number;
}

/** The step of a working that seems to differ: with it done so, the group's value comes out. */
export type Slip =
  | 'diameter-for-radius'
  | 'radius-for-diameter'
  | 'cm-for-mm'
  | 'third-forgotten'
  | 'slant-for-height'
  | 'other-pi'
  | 'piece-forgotten'
  | 'contact-counted-once'
  | 'added-for-subtracted';

export interface OwnLine {
  readonly measure: MeasureId;
  readonly own: number;
  /** Worked out with the class's pi; null: not measured. */
  readonly expected: number | null;
  readonly tolerance: number;
  readonly verdict: 'agrees' | 'close' | 'check-the-working' | 'not-measured';
  readonly slip: Slip | null;
  readonly points: number;
}

export interface Group {
  readonly id: string;
  readonly name: string;
  /** The group's own measured sizes by kind id; a kind that is not listed has the kit's sizes. */
  readonly measured: Readonly<Record<string, Sizes>>;
}

export type AttemptState =
  | { readonly kind: 'stood' }
  | { readonly kind: 'fell-before-measuring' }
  | { readonly kind: 'fell'; readonly afterSeconds: number }
  | { readonly kind: 'not-taking-part' }
  | { readonly kind: 'absent' };

export interface Observed {
  /** Readings of the height with a ruler, mm, in the order taken; may be empty. */
  readonly heightReadingsMm: readonly number[];
  /** Height from the photo of the side, mm. */
  readonly photoHeightMm?: number;
  readonly stoodSeconds?: number;
}

export interface Mark {
  readonly judge: string;
  readonly criterion: string;
  /** 0 to 4. */
  readonly mark: number;
}

/** A person sets a value. The last decision on a measure that was not taken back counts; the old values stay. */
export interface Decision {
  /** A measure, or `stood-seconds` or `stands-to`. */
  readonly measure: string;
  readonly value: number;
  readonly by: string;
  readonly reason: string;
  /** ISO 8601 with zone. */
  readonly at: string;
  readonly takenBack?: { readonly at: string; readonly reason: string };
}

/** Points given or taken by hand, with the reason that stays visible. */
export interface Adjustment {
  readonly points: number;
  readonly by: string;
  readonly reason: string;
  readonly at: string;
}

export interface Attempt {
  readonly id: string;
  readonly group: string;
  readonly challenge: string;
  /** ISO 8601 with zone. */
  readonly at: string;
  readonly state: AttemptState;
  readonly layout: Layout;
  readonly observed: Observed;
  readonly judged: readonly Mark[];
  /** Answers to yes/no requirements by id; one that is not listed has not been judged. */
  readonly answers: Readonly<Record<string, Answer>>;
  /** What the group worked out itself. */
  readonly own: readonly OwnResult[];
  readonly decisions: readonly Decision[];
  readonly adjustments: readonly Adjustment[];
  /** Who has seen the real build and confirmed it; null while provisional. */
  readonly confirmedBy: string | null;
  /** Marked as the one that counts, where the challenge says 'chosen'. */
  readonly chosen: boolean;
}

export type FactSource = 'predicted' | 'observed' | 'decided' | 'judged';

/** A fact with the value that counts and where it came from; the other values stand beside it. */
export interface ReportedFact {
  readonly id: string;
  readonly unit: Fact['unit'];
  /** null: not measured. */
  readonly value: number | null;
  readonly tolerance: number;
  /** Parts of the tolerance that other builds may share, by reading; see ScoringFact. */
  readonly errors: Readonly<Record<string, number>>;
  readonly source: FactSource | null;
  readonly predicted: Fact | null;
  readonly observed: {
    readonly value: number;
    readonly tolerance: number;
    readonly readings: readonly number[];
  } | null;
  readonly decided: Decision | null;
}

/** More pieces of a kind used than the kit has. */
export interface StockBreach {
  readonly kind: string;
  readonly used: number;
  readonly stock: number;
}

export interface Report {
  readonly engineVersion: string;
  readonly challenge: string;
  readonly group: string;
  readonly attempt: string;
  /** When the attempt was made (ISO 8601 with zone), and whether it was chosen: which attempt counts follows from these. */
  readonly at: string;
  readonly chosen: boolean;
  readonly state: AttemptState;
  readonly confirmedBy: string | null;
  readonly facts: readonly ReportedFact[];
  readonly gaps: BuildMeasures['gaps'];
  /** Whether it stands, by how much, and what would mend it; null when there is no drawing of the pieces. */
  readonly stability: Stability | null;
  readonly stockBreaches: readonly StockBreach[];
  readonly requirements: readonly RequirementLine[];
  readonly points: readonly PointsLine[];
  readonly adjustments: readonly Adjustment[];
  readonly own: readonly OwnLine[];
  /** What the group had earned, where the challenge has a supply. */
  readonly supply: Supply | null;
  /** Points of the rows, of requirements kept and broken, of own results and of adjustments; null when nothing counts. */
  readonly total: number | null;
}

/** All that a class keeps. */
export interface ClassRecord {
  readonly name: string;
  /** True for made-up data, which is marked so wherever it is shown. */
  readonly invented: boolean;
  readonly groups: readonly Group[];
  readonly challenges: readonly Challenge[];
  readonly attempts: readonly Attempt[];
  /** Strokes of the supply lists, by challenge id. */
  readonly supplies: Readonly<Record<string, readonly SupplyEvent[]>>;
  readonly day: DayRule;
}
