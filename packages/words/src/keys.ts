// What every language must have words for: the codes of all packages below. A code without its word is a type error.

import type {
  Challenge,
  ClassPi,
  EngineIssue,
  FactSource,
  GradePreset,
  OwnLine,
  ReadyId,
  Slip,
} from '@cairnmark/engine';
import type {
  CodeIssueCode,
  EnvelopeIssueCode,
  FileIssueCode,
  Format,
  JsonIssueCode,
  ShapeIssueCode,
} from '@cairnmark/formats';
import type {
  BaseDefinition,
  CountingConvention,
  MeasureId,
  NotMeasuredReason,
  NotPredicted,
  Resting,
  SolidId,
  Stability,
  Unit,
  Working,
} from '@cairnmark/geometry';
import type {
  Comparison,
  Consequence,
  DayRule,
  DayWarning,
  OutReason,
  Rounding,
  SupplyFactId,
  SupplyRule,
  Verdict,
} from '@cairnmark/scoring';
import type { Saying } from './saying.ts';
import type { RestingName, SizeName } from './solid-names.ts';
import type { SideName } from './tilts.ts';

export type IssueCode =
  | FileIssueCode
  | JsonIssueCode
  | EnvelopeIssueCode
  | ShapeIssueCode
  | CodeIssueCode
  | EngineIssue['code'];

/** A sentence that stands for another when the issue tells another limit: "more than" for "or more". */
export type IssueVariant = 'not-above';

export type IssueTexts = Readonly<Record<IssueCode | IssueVariant, string>>;

/** Measures of a build and of a supply, and the points, which are ranked like one. */
export type MeasureName = MeasureId | SupplyFactId | 'stood-seconds' | 'stands-to' | 'full-sets' | 'points';

/** Things that come in whole numbers, besides the measures that are counted. */
export type CountedThing = Exclude<MeasureName, Uncounted> | 'apexes' | 'seconds' | 'minutes' | 'turns';

type Uncounted =
  | 'height'
  | 'footprint-area'
  | 'footprint-perimeter'
  | 'footprint-inner-perimeter'
  | 'base-area'
  | 'base-perimeter'
  | 'courtyard-area'
  | 'hull-area'
  | 'volume'
  | 'paper'
  | 'touchable-surface'
  | 'base-width'
  | 'height-to-width'
  | 'volume-per-paper'
  | 'area-to-perimeter'
  | 'stood-seconds'
  | 'stands-to';

export interface MeasureNames {
  /** What pupils read. */
  readonly measures: Readonly<Record<MeasureName, string>>;
  /** The trade's names, for the teacher. */
  readonly plainMeasures: Readonly<Record<MeasureName, string>>;
  /** One, several. */
  readonly counted: Readonly<Record<CountedThing, readonly [one: string, several: string]>>;
}

export interface NameTables extends MeasureNames {
  readonly solids: Readonly<Record<SolidId, string>>;
  readonly sizes: Readonly<Record<SizeName, string>>;
  readonly restings: Readonly<Record<RestingName, string>>;
  readonly counting: Readonly<Record<CountingConvention, string>>;
  readonly base: Readonly<Record<BaseDefinition, string>>;
  readonly contact: Readonly<Record<Resting['contact'], string>>;
  readonly sources: Readonly<Record<FactSource, string>>;
  readonly rounding: Readonly<Record<Rounding, string>>;
  /** What is measured in a unit: "lengths". */
  readonly units: Readonly<Record<Unit, string>>;
  /** Whether a build stands, in a word or two. */
  readonly stands: Readonly<Record<Stability['verdict'], string>>;
  readonly verdicts: Readonly<Record<Verdict, string>>;
  readonly grades: Readonly<Record<GradePreset, string>>;
  /** The number that a class takes for pi. */
  readonly pi: Readonly<Record<ClassPi, string>>;
  /** Challenges that are ready to run. */
  readonly ready: Readonly<Record<ReadyId, string>>;
  /** Kinds of file. */
  readonly formats: Readonly<Record<Format, string>>;
  /** Kinds of value in a file, as JSON knows them. */
  readonly jsonTypes: Readonly<Record<JsonType, string>>;
}

export type JsonType = 'string' | 'number' | 'boolean' | 'array' | 'object' | 'null';

export type ResultKey =
  | `unmeasured.${NotMeasuredReason}`
  | `method.${Working['method']}`
  | `bound.${Comparison}`
  | `out.${OutReason['code']}`
  | `day.${DayRule['kind']}`
  | `warning.${DayWarning['code']}`
  | `stated.${Consequence['kind']}`
  | `fallen.${Challenge['fallen']['counts']}`
  | `falling.${Challenge['fallen']['counts']}`;

export type OwnKey = `verdict.${OwnLine['verdict']}` | `slip.${Slip}`;

export type SupplyKey =
  | `ends.${SupplyRule['ends']['kind']}`
  | `hand-over.${SupplyRule['handOver']}`
  | `dropped.${SupplyRule['dropped']}`;

export type StabilityKey =
  | `verdict.${Saying}`
  | `without.${Saying}`
  | `why.${NotPredicted['why']}`
  | `side.${SideName}`;

export type CautionId =
  | 'stands-or-falls'
  | 'cutting'
  | 'hot-glue'
  | 'tall-towers'
  | 'running'
  | 'photos'
  | 'school-rules';

export type CautionTexts = Readonly<Record<CautionId, string>>;
