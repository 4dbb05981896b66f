// The records the engine works on. A challenge says what is measured and how it is scored; an attempt is what one group
// built, with what people observed and decided; a report is the outcome. Lengths mm, areas mm2, volumes mm3.

import type {
  BaseDefinition,
  CountingConvention,
  Layout,
  Material,
  MeasureId,
  PairFriction,
  RulerId,
  Sizes,
  SolidSpec,
} from '@cairnmark/geometry';
import type { Answer, DayRule, PointsRow, RankingRule, Requirement, SupplyEvent, SupplyRule } from '@cairnmark/scoring';

export interface KindOfPiece {
  readonly id: string;
  /** The name the class uses, as typed by the teacher. */
  readonly name: string;
  readonly solid: SolidSpec;
  /** Pieces of this kind that the class has made. */
  readonly stock: number;
  /** Of these, pieces that are crushed and out of use until somebody repairs them; absent: none. */
  readonly crushed?: number;
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
  /** Ids of measures that are not shown to this class, unless places, points or rules depend on them. */
  readonly hidden: readonly string[];
  /** Curriculum codes or words of the teacher's own, as typed. */
  readonly labels: readonly string[];
  /** Whether a group is told, as a part of the whole, how near it comes to the best possible build; absent: it is not. */
  readonly bestShown?: boolean;
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

/** A person sets a value. The latest decision on a measure that was not taken back counts; the old values stay. */
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
