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
import type { DayRule, PointsLine, PointsRow, RankingRule, Requirement, RequirementLine } from '@cairnmark/scoring';

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
  readonly measure: MeasureId;
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
  readonly answers: Readonly<Record<string, boolean>>;
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
  /** Sum of the points lines, costs of broken requirements and adjustments; null when nothing was built. */
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
  readonly day: DayRule;
}
